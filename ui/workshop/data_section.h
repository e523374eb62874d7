#pragma once

#include <QString>
#include <QWidget>

#include "shimwright/store/store.h"
#include "shimwright/workshop/workshop_ways.h"

namespace shimwright::workshop {

class BackupCard;
class StoreCard;

/// Where the data lies and whether it is whole, its backup and the way back, a job for another workshop, and the move
/// to another machine. What takes its time is done while the window is used.
class DataSection : public QWidget {
  Q_OBJECT

 public:
  DataSection(store::Store& store, WorkshopWays ways, QWidget* parent = nullptr);

  void refresh();
  void set_last_backup(std::int64_t at_ms, const QString& file);

 signals:
  void backed_up(qint64 at_ms, const QString& file);
  void restore_wanted(const QString& backup);

 private:
  StoreCard* where_;
  BackupCard* backup_;
};

}  // namespace shimwright::workshop
