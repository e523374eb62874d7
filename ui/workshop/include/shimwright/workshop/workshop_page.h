#pragma once

#include <functional>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/store/store.h"
#include "shimwright/workshop/workshop_ways.h"

class QStackedWidget;

namespace shimwright::widgets {
class Scroll;
}

namespace shimwright::workshop {

class DataSection;
class SectionButton;

/// What the workshop keeps over all jobs, to look at: people, instruments, trays, sheets, the store and its backup.
class WorkshopPage : public QWidget {
  Q_OBJECT

 public:
  /// The store must outlive it.
  explicit WorkshopPage(store::Store& store, QWidget* parent = nullptr)
      : WorkshopPage(store, usual_workshop_ways(), parent) {}
  WorkshopPage(store::Store& store, WorkshopWays ways, QWidget* parent = nullptr);

  /// Reads what is shown anew. A backup under way goes on.
  void refresh();
  void set_last_backup(std::int64_t at_ms, const QString& file);

 signals:
  void backed_up(qint64 at_ms, const QString& file);
  void restore_wanted(const QString& backup);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Section {
    SectionButton* button;
    widgets::Scroll* page;
    std::function<void()> fill;
  };

  void add_section(const QString& title, const QString& name, std::function<void(widgets::Scroll&)> fill);
  void choose(std::size_t section);
  void show_job_sheets(widgets::Scroll& page);
  void show_spec_sheets(widgets::Scroll& page);
  void show_spec_sheet(widgets::Scroll& page, const std::string& hash);

  store::Store* store_;
  WorkshopWays ways_;
  QWidget* list_;
  QStackedWidget* pages_;
  DataSection* data_ = nullptr;
  std::vector<Section> sections_;
  std::size_t chosen_ = 0;
};

}  // namespace shimwright::workshop
