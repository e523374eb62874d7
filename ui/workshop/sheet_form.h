#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <QWidget>

#include "sheet_field.h"
#include "shimwright/store/sheet_drafts.h"
#include "shimwright/workshop/workshop_ways.h"

namespace shimwright::workshop {

class FlowRow;

/// A sheet being written, one part of it at a time. Each field is on the disk when it is left; a fault stands beside
/// its field. What may be kept as an issue is decided by the reader of the file and by the store, not here.
class SheetForm : public QWidget {
  Q_OBJECT

 public:
  /// The store must outlive it.
  SheetForm(store::Store& store, WorkshopWays ways, store::KeptDraft draft, QWidget* parent = nullptr);

  [[nodiscard]] const std::string& draft_id() const { return kept_.id; }
  /// What is typed and not kept yet is kept.
  void commit_typed();
  /// What is typed is kept first; true where that was refused, and the form alone has it.
  [[nodiscard]] bool has_unsent();
  void take_focus();

 signals:
  void issued(const std::string& hash);
  void left();
  void thrown_away();
  void wants_sight(QWidget* of);

 private:
  /// What was typed in a field and is not in the draft.
  struct Refused {
    std::string text;
    Error why;
  };

  void build();
  void build_foot(QBoxLayout* column);
  [[nodiscard]] std::vector<sheet::DraftSection> sections() const;
  void fill_parts(const std::vector<sheet::DraftSection>& all);
  void show_part(std::size_t part, const std::string& focus = "");
  void add_group(QBoxLayout* column, const sheet::DraftGroup& group);
  void add_group_buttons(QBoxLayout* rows, FlowRow* side_by_side, const sheet::DraftGroup& group);
  void add_ways(QBoxLayout* column, const sheet::DraftSection& section);
  void add_row(const std::string& place);
  void move_row(const std::string& place, int by);
  void add_tray_row(QBoxLayout* column, sheet::Side side);
  void add_stage_row(QBoxLayout* column);
  void take_over(sheet::MovedRow stage);
  /// Below the buttons of that row, where the hand is.
  void say_moved(const std::string& place, const QString& text, bool good);
  /// The row that was moved, with the focus on the button that moved it.
  void follow(const std::string& place, const QString& button, bool to_its_part);
  void put(const std::string& place, const std::string& text);
  void put_reason(const std::string& place, const std::string& text);
  void change(sheet::SheetDraft draft);
  void rebuild(const std::string& focus);
  /// A refusal is said below as well.
  Result<void> keep();
  void leave();
  void take_up_losses();
  void look_for_faults();
  void show_faults();
  void keep_sought_in_sight();
  [[nodiscard]] std::optional<Error> fault_at(const std::string& place) const;
  void go_on_from(const SheetField* field);
  /// False: it stands at no field.
  bool go_to_first(const std::vector<Error>& faults);
  void make_issue();
  void say_outcome(const QString& text, bool good);

  store::Store* store_;
  WorkshopWays ways_;
  store::KeptDraft kept_;
  std::vector<Error> faults_;
  std::map<std::string, Refused> refused_;  ///< by place
  bool unkept_ = false;                     ///< the draft in the store is older than this one
  bool asked_ = false;                      ///< whether blanks are faults by now
  std::size_t part_ = 0;
  std::vector<SheetField*> fields_;
  widgets::Text* heading_ = nullptr;
  QWidget* mark_ = nullptr;       ///< of a sheet that became one for demonstration
  SheetField* sought_ = nullptr;  ///< the field that was gone to, of those that are shown
  widgets::Text* state_ = nullptr;
  WordPick* parts_ = nullptr;
  QBoxLayout* body_column_ = nullptr;
  QWidget* body_ = nullptr;
  widgets::Button* issue_ = nullptr;
  widgets::Text* outcome_ = nullptr;
};

}  // namespace shimwright::workshop
