#pragma once

#include <QString>
#include <QWidget>

#include "backup_work.h"
#include "shimwright/store/store.h"
#include "shimwright/workshop/workshop_ways.h"

class QLabel;
class QProgressBar;

namespace shimwright::widgets {
class Button;
}

namespace shimwright::workshop {

/// Where the data lies, how much it is, and its backup, which is made while the window is used.
class DataSection : public QWidget {
  Q_OBJECT

 public:
  DataSection(store::Store& store, WorkshopWays ways, QWidget* parent = nullptr);

  void refresh();
  void set_last_backup(std::int64_t at_ms, const QString& file);

 signals:
  void backed_up(qint64 at_ms, const QString& file);

 private:
  void build();
  void begin_backup();
  void show_progress(qint64 step, qint64 of_all);
  void show_made(const store::BackupReport& report);
  void show_run(bool runs);
  void say_outcome(const QString& text, bool good);

  store::Store* store_;
  WorkshopWays ways_;
  BackupWork* work_;
  QString file_;  ///< of the backup under way
  QLabel* place_ = nullptr;
  QLabel* jobs_ = nullptr;
  QLabel* last_ = nullptr;
  QLabel* outcome_ = nullptr;
  QProgressBar* progress_ = nullptr;
  widgets::Button* begin_ = nullptr;
  widgets::Button* stop_ = nullptr;
};

}  // namespace shimwright::workshop
