#pragma once

#include <functional>
#include <string>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/sheet/draft.h"
#include "shimwright/store/store.h"
#include "shimwright/workshop/workshop_ways.h"

class QStackedWidget;

namespace shimwright::widgets {
class Scroll;
}

namespace shimwright::workshop {

class DataSection;
class InstrumentsSection;
class OwnSection;
class PeopleSection;
class SectionButton;
class SheetsSection;
class TraysSection;

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
  /// Something is typed in a form that is not kept yet.
  [[nodiscard]] bool has_unsent() const;

 signals:
  void backed_up(qint64 at_ms, const QString& file);
  void restore_wanted(const QString& backup);
  void people_changed();
  void jobs_wanted(const QString& heading, const std::vector<std::string>& jobs);

 protected:
  void focusInEvent(QFocusEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Section {
    SectionButton* button;
    widgets::Scroll* page;
    std::function<void()> fill;
    SheetsSection* sheets = nullptr;
  };

  template <class Section>
  [[nodiscard]] Section* add_register(const QString& title, const QString& name);
  void add_section(const QString& title, const QString& name, std::function<void(widgets::Scroll&)> fill);
  void add_sheets(const QString& title, const QString& name, sheet::SheetKind kind);
  void choose(std::size_t section);

  store::Store* store_;
  WorkshopWays ways_;
  widgets::Scroll* list_;
  QStackedWidget* pages_;
  DataSection* data_ = nullptr;
  TraysSection* trays_ = nullptr;
  InstrumentsSection* instruments_ = nullptr;
  PeopleSection* people_ = nullptr;
  OwnSection* own_ = nullptr;
  std::vector<Section> sections_;
  std::size_t chosen_ = 0;
};

}  // namespace shimwright::workshop
