#include "pages.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <utility>

#include "shimwright/bench/job_page.h"
#include "shimwright/bench/surroundings.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"

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

PluggedPage plug_home(const PageHouse& house) {
  PluggedPage page = not_there_yet(QCoreApplication::translate("shell", "On the bench"), house.parent);
  auto* begin = widgets::child_of<widgets::Button>(page.widget, QCoreApplication::translate("shell", "New job"));
  QObject::connect(begin, &QPushButton::clicked, page.widget, [links = house.links] { links.new_job({}); });
  page.widget->layout()->addWidget(begin);
  return page;
}

PluggedPage plug_new_job(const PageHouse& house) {
  return not_there_yet(QCoreApplication::translate("shell", "New job"), house.parent);
}

PluggedPage plug_job(const PageHouse& house) {
  bench::Surroundings surroundings = bench::real_surroundings();
  surroundings.pick_photo = [settings = house.settings, parent = house.parent] {
    return QFileDialog::getOpenFileName(parent, QString(), settings->camera_folder(),
                                        QCoreApplication::translate("shell", "Photos (*.jpg *.jpeg *.png)"));
  };
  auto* page = widgets::child_of<bench::JobPage>(house.parent, *house.bench, std::move(surroundings));
  QObject::connect(page, &bench::JobPage::heading_changed, page, house.links.heading_changed);
  QObject::connect(page, &bench::JobPage::left, page, house.links.home);
  QObject::connect(page, &bench::JobPage::record_wanted, page, house.links.open_record);
  PluggedPage plugged;
  plugged.widget = page;
  plugged.come = [page](const std::string& /*job*/) { page->show_job(); };
  plugged.may_leave = [page] { return page->may_leave(); };
  plugged.heading = [page] {
    const bench::JobHeading heading = page->heading();
    return Heading{heading.job, heading.vehicle, heading.spec, heading.demonstration};
  };
  return plugged;
}

PluggedPage plug_past_jobs(const PageHouse& house) {
  return not_there_yet(QCoreApplication::translate("shell", "Past jobs"), house.parent);
}

PluggedPage plug_record(const PageHouse& house) {
  return not_there_yet(QCoreApplication::translate("shell", "Record"), house.parent);
}

PluggedPage plug_workshop(const PageHouse& house) {
  return not_there_yet(QCoreApplication::translate("shell", "Workshop"), house.parent);
}

const std::vector<PageFactory>& page_table() {
  static const std::vector<PageFactory> table{{PageName::home, &plug_home},     {PageName::new_job, &plug_new_job},
                                              {PageName::job, &plug_job},       {PageName::past_jobs, &plug_past_jobs},
                                              {PageName::record, &plug_record}, {PageName::workshop, &plug_workshop}};
  return table;
}

}  // namespace shimwright::shell
