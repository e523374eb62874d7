#pragma once

#include <QWidget>

#include "shimwright/shell/stores.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::shell {

/// The very first start: try the demonstration, or begin this workshop's own store.
class FirstPage : public QWidget {
  Q_OBJECT

 public:
  explicit FirstPage(QWidget* parent = nullptr);
  /// Where a workshop would begin, and whether the demonstration is offered beside it.
  void set_offer(const QString& path, bool with_demo);
  void set_fault(const QString& sentence);
  void take_focus();

 signals:
  void demo_wanted();
  void begin_wanted(const Beginning& beginning);

 private:
  void build_demo(QBoxLayout* row);
  void build_own(QBoxLayout* row);
  void begin();

  widgets::Box* demo_ = nullptr;
  widgets::Button* try_ = nullptr;
  QLabel* path_ = nullptr;
  QLabel* fault_ = nullptr;
  widgets::WordField* workshop_ = nullptr;
  widgets::WordField* address_ = nullptr;
  widgets::WordField* person_ = nullptr;
  widgets::WordField* initials_ = nullptr;
};

}  // namespace shimwright::shell
