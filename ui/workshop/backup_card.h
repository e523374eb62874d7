#pragma once

#include "shimwright/store/store.h"
#include "shimwright/workshop/workshop_ways.h"
#include "work_card.h"

namespace shimwright::workshop {

/// The last backup, where backups go and how long they are kept, and one by hand.
class BackupCard : public WorkCard {
  Q_OBJECT

 public:
  BackupCard(store::Store& store, WorkshopWays ways, QWidget* parent);
  void refresh();
  void set_last_backup(std::int64_t at_ms, const QString& file);

 signals:
  void backed_up(qint64 at_ms, const QString& file);

 private:
  void begin_backup();
  void choose_folder();

  store::Store* store_;
  WorkshopWays ways_;
  widgets::Text* last_;
  widgets::Text* folder_;
};

}  // namespace shimwright::workshop
