#include "pages.h"

#include <QCoreApplication>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"

namespace shimwright::shell {

namespace {

/// Stands where a page is not built yet.
PluggedPage not_there_yet(const QString& title, QWidget* parent) {
  auto* page = widgets::child_of<QWidget>(parent);
  auto* column = widgets::lay<QVBoxLayout>(page, 12);
  column->setContentsMargins(28, 20, 28, 20);
  column->addWidget(widgets::child_of<widgets::Text>(page, title, "title"));
  column->addStretch();
  return {page};
}

}  // namespace

PluggedPage plug_home(bench::Workbench& /*bench*/, const Settings& /*settings*/, const PageLinks& links,
                      QWidget* parent) {
  PluggedPage page = not_there_yet(QCoreApplication::translate("shell", "On the bench"), parent);
  auto* begin = widgets::child_of<widgets::Button>(page.widget, QCoreApplication::translate("shell", "New job"));
  QObject::connect(begin, &QPushButton::clicked, page.widget, [links] { links.new_job({}); });
  page.widget->layout()->addWidget(begin);
  return page;
}

PluggedPage plug_new_job(bench::Workbench& /*bench*/, const Settings& /*settings*/, const PageLinks& /*links*/,
                         QWidget* parent) {
  return not_there_yet(QCoreApplication::translate("shell", "New job"), parent);
}

PluggedPage plug_job(bench::Workbench& bench, const Settings& /*settings*/, const PageLinks& /*links*/,
                     QWidget* parent) {
  PluggedPage page = not_there_yet(QCoreApplication::translate("shell", "Job"), parent);
  page.heading = [&bench] {
    return bench.has_job() ? Heading{widgets::qt(bench.state().opened->number), {}, {}, true} : Heading{};
  };
  return page;
}

PluggedPage plug_past_jobs(bench::Workbench& /*bench*/, const Settings& /*settings*/, const PageLinks& /*links*/,
                           QWidget* parent) {
  return not_there_yet(QCoreApplication::translate("shell", "Past jobs"), parent);
}

PluggedPage plug_record(bench::Workbench& /*bench*/, const Settings& /*settings*/, const PageLinks& /*links*/,
                        QWidget* parent) {
  return not_there_yet(QCoreApplication::translate("shell", "Record"), parent);
}

PluggedPage plug_workshop(bench::Workbench& /*bench*/, const Settings& /*settings*/, const PageLinks& /*links*/,
                          QWidget* parent) {
  return not_there_yet(QCoreApplication::translate("shell", "Workshop"), parent);
}

const std::vector<PageFactory>& page_table() {
  static const std::vector<PageFactory> table{
      {PageName::home, &plug_home},           {PageName::new_job, &plug_new_job}, {PageName::job, &plug_job},
      {PageName::past_jobs, &plug_past_jobs}, {PageName::record, &plug_record},   {PageName::workshop, &plug_workshop}};
  return table;
}

}  // namespace shimwright::shell
