#include "shimwright/shell/start_window.h"

#include <QCloseEvent>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/giving.h"

namespace shimwright::shell {

StartWindow::StartWindow(Settings& settings)
    : settings_(&settings),
      stack_(widgets::child_of<widgets::PageStack>(this)),
      first_(widgets::child_of<FirstPage>(stack_)),
      hindrance_(widgets::child_of<HindrancePage>(stack_)),
      wait_(widgets::child_of<WaitPage>(stack_)) {
  setObjectName(QStringLiteral("start-window"));
  setWindowTitle(QStringLiteral("Shimwright"));
  widgets::lay<QVBoxLayout>(this)->addWidget(stack_);
  stack_->addWidget(first_);
  stack_->addWidget(hindrance_);
  stack_->addWidget(wait_);
  resize(1366, 768);
  restoreGeometry(settings.geometry());
}

void StartWindow::show_first() {
  stack_->setCurrentWidget(first_);
  show();
  first_->take_focus();
}

void StartWindow::show_hindrance() {
  stack_->setCurrentWidget(hindrance_);
  show();
  hindrance_->take_focus();
}

void StartWindow::show_wait(const QString& doing) {
  wait_->set_doing(doing);
  stack_->setCurrentWidget(wait_);
  show();
}

void StartWindow::closeEvent(QCloseEvent* event) {
  settings_->set_geometry(saveGeometry());
  settings_->sync();
  event->accept();
  emit closed();
}

}  // namespace shimwright::shell
