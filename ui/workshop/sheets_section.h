#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QObject>

#include "shimwright/sheet/draft.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/sheet_drafts.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/workshop/workshop_ways.h"

namespace shimwright::workshop {

class FlowRow;
class SheetForm;

/// The spec sheets or the job sheets of the workshop on one page: the list, one issue, two side by side, or a draft.
class SheetsSection : public QObject {
  Q_OBJECT

 public:
  /// Store and page must outlive it.
  SheetsSection(store::Store& store, WorkshopWays ways, sheet::SheetKind kind, widgets::Scroll& page, QObject* parent);

  /// Draws anew what is shown; a draft in work stays as it is.
  void refresh();
  void show_list();
  /// Whether a draft in work has what the store refused to keep.
  [[nodiscard]] bool has_unsent() const;

 signals:
  void left_sheet();  ///< back to the list: the focus is nowhere

 private:
  struct Opened {
    store::SheetIssue issue;
    bool demonstration = false;
    QString title;
    QString source;
  };

  [[nodiscard]] bool is_job() const { return kind_ == sheet::SheetKind::job_sheet; }
  void begin_page();
  void show_refusal(const Error& error);
  [[nodiscard]] Result<store::SheetIssue> issue_of(const std::string& hash) const;
  [[nodiscard]] Result<std::vector<store::SheetIssue>> issues_named(const std::string& name) const;
  [[nodiscard]] Result<Opened> opened(const store::SheetIssue& issue) const;
  [[nodiscard]] QString title_of(const Opened& sheet) const;
  [[nodiscard]] QString below_title_of(const Opened& sheet) const;
  [[nodiscard]] QString state_of(const Opened& sheet) const;

  /// Where what a button did is said.
  void add_told(int at);
  void add_list_head();
  void add_draft_card(const store::KeptDraft& draft);
  void add_way_out(FlowRow& row, const std::string& id, const QString& name);
  void add_issue_card(const store::SheetIssue& issue);
  void show_issue(const std::string& hash, const QString& focus = {});
  void add_issue_buttons(const Opened& sheet);
  void add_issue_ways(FlowRow& row, const Opened& sheet);
  void show_comparison(const store::SheetIssue& before, const store::SheetIssue& after);
  void show_draft(const std::string& id);

  void begin(sheet::SheetDraft draft, store::Begun how, std::optional<std::string> from = std::nullopt);
  void begin_empty();
  void begin_from_file();
  void begin_next_issue(const store::SheetIssue& issue);
  void check(const std::string& hash);
  void save_file(const store::SheetIssue& issue);
  void save_blank(const store::SheetIssue& issue);
  void tell(const QString& text, bool good);

  store::Store* store_;
  WorkshopWays ways_;
  store::IdSource ids_;
  sheet::SheetKind kind_;
  widgets::Scroll* page_;
  widgets::Text* told_ = nullptr;  ///< as long as the page
  SheetForm* form_ = nullptr;      ///< as long as the page
  std::string shown_;              ///< hash of the issue; blank: the list
};

}  // namespace shimwright::workshop
