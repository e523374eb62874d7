#pragma once

#include "shimwright/store/restore.h"
#include "shimwright/store/store.h"
#include "shimwright/workshop/data_ways.h"
#include "work_card.h"

namespace shimwright::workshop {

/// Back to a backup, step by step: choose it, see what it holds and what came after it, and only then take it. The
/// window has to let go of the store for that, so it is the window that does it.
class RestoreCard : public WorkCard {
  Q_OBJECT

 public:
  RestoreCard(store::Store& store, DataWays ways, QWidget* parent);

 signals:
  void restore_wanted(const QString& backup);

 private:
  void look();
  void show_offer(const store::BackupOffer& offer);
  void forget();

  store::Store* store_;
  DataWays ways_;
  QString backup_;
  widgets::Button* take_;
  widgets::Button* leave_;
};

}  // namespace shimwright::workshop
