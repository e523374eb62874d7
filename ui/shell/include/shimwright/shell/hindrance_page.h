#pragma once

#include <optional>

#include <QWidget>

#include "shimwright/store/store.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::shell {

/// The store does not open: why, and what can be done. A lock is broken only after it was shown whose it is.
class HindrancePage : public QWidget {
  Q_OBJECT

 public:
  explicit HindrancePage(QWidget* parent = nullptr);
  void show_hindrance(const Error& error, const QString& path, const std::optional<store::LockHolder>& holder);
  void take_focus();

 signals:
  void retry_wanted();
  void look_wanted();
  void break_wanted(const store::LockHolder& shown);

 private:
  void ask_to_break();

  QLabel* sentence_ = nullptr;
  QLabel* path_ = nullptr;
  widgets::Button* retry_ = nullptr;
  widgets::Button* look_ = nullptr;
  widgets::Button* break_ = nullptr;
  widgets::Box* question_ = nullptr;
  widgets::Button* really_ = nullptr;
  std::optional<store::LockHolder> holder_;
};

}  // namespace shimwright::shell
