#include "shimwright/bench/step_page.h"

#include <QLocale>

#include "shimwright/widgets/say.h"

namespace shimwright::bench {

StepPage::StepPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : QWidget(parent), bench_(&bench), step_(&step) {}

QString StepPage::said(const sheet::Text& text) const {
  return widgets::qt(text.in(window_language()));
}

bool StepPage::send(const job::Command& command, bool go_on) {
  const auto entries = bench_->send(command);
  if (!entries) {
    emit refused(entries.error());
    return false;
  }
  if (go_on && job::passed(step_state())) {
    emit leaves();
  }
  return true;
}

std::string window_language() {
  return QLocale().name().section(QLatin1Char('_'), 0, 0).toStdString();
}

}  // namespace shimwright::bench
