#pragma once

#include <QStackedWidget>
#include <QWidget>

#include "shimwright/shell/first_page.h"
#include "shimwright/shell/hindrance_page.h"
#include "shimwright/shell/settings.h"
#include "shimwright/shell/wait_page.h"

namespace shimwright::shell {

/// The window as long as no store is open.
class StartWindow : public QWidget {
  Q_OBJECT

 public:
  explicit StartWindow(Settings& settings);
  [[nodiscard]] FirstPage* first() const { return first_; }
  [[nodiscard]] HindrancePage* hindrance() const { return hindrance_; }
  void show_first();
  void show_hindrance();
  void show_wait(const QString& doing);

 signals:
  void closed();

 protected:
  void closeEvent(QCloseEvent* event) override;

 private:
  Settings* settings_;
  QStackedWidget* stack_;
  FirstPage* first_;
  HindrancePage* hindrance_;
  WaitPage* wait_;
};

}  // namespace shimwright::shell
