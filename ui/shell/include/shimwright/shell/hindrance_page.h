#pragma once

#include <optional>

#include <QWidget>

#include "shimwright/store/rescue.h"
#include "shimwright/store/store.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::shell {

/// The store does not open: why, and what can be done. A lock is broken only after it was shown whose it is. In the
/// place of a damaged store its last whole backup is offered, with what would be missing.
class HindrancePage : public QWidget {
  Q_OBJECT

 public:
  explicit HindrancePage(QWidget* parent = nullptr);
  void show_hindrance(const Error& error, const QString& path, const std::optional<store::LockHolder>& holder);
  /// After show_hindrance(): backups are being looked for, and then what was found.
  void show_search(const QString& folder);
  void show_offer(const Result<std::optional<store::BackupOffer>>& found, const QString& folder);
  /// After show_hindrance(): why a backup did not take the place of the store.
  void tell_refused(const Error& error);
  void take_focus();

 signals:
  void retry_wanted();
  void look_wanted();
  void break_wanted(const store::LockHolder& shown);
  void rescue_wanted(const QString& backup);

 private:
  void connect_buttons();
  void ask_to_break();
  void offer_backup(bool offered);

  QLabel* sentence_ = nullptr;
  QLabel* path_ = nullptr;
  QLabel* refused_ = nullptr;
  widgets::Button* retry_ = nullptr;
  widgets::Button* retry_beside_backup_ = nullptr;  ///< the same, where it is not the main one
  widgets::Button* look_ = nullptr;
  widgets::Button* break_ = nullptr;
  widgets::Scroll* scroll_ = nullptr;
  widgets::Box* question_ = nullptr;
  widgets::Button* keep_ = nullptr;
  widgets::Button* really_ = nullptr;
  widgets::Box* rescue_ = nullptr;
  widgets::Button* put_back_ = nullptr;
  bool searches_ = false;
  QString backup_;
  std::optional<store::LockHolder> holder_;
};

}  // namespace shimwright::shell
