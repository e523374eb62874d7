#include "sheets_section.h"

#include <utility>

#include "flow_row.h"
#include "job_sheet_values.h"
#include "register_sections.h"
#include "sheet_files.h"
#include "sheet_form.h"
#include "sheet_words.h"
#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/sheet_checks.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/sheet_text.h"
#include "shimwright/widgets/style.h"
#include "spec_sections.h"

namespace shimwright::workshop {

using widgets::Button;
using widgets::child_of;
using widgets::qt;

SheetsSection::SheetsSection(store::Store& store, WorkshopWays ways, sheet::SheetKind kind, widgets::Scroll& page,
                             QObject* parent)
    : QObject(parent), store_(&store), ways_(std::move(ways)), kind_(kind), page_(&page) {}

void SheetsSection::refresh() {
  if (form_ != nullptr) {
    return;
  }
  shown_.empty() ? show_list() : show_issue(shown_);
}

bool SheetsSection::has_unsent() const {
  return form_ != nullptr && form_->has_unsent();
}

void SheetsSection::begin_page() {
  clear(*page_);
  form_ = nullptr;
  told_ = nullptr;
  page_->show_top();
}

void SheetsSection::show_refusal(const Error& error) {
  page_->column()->addWidget(child_of<widgets::Text>(page_->content(), widgets::say(error), "error"));
}

Result<store::SheetIssue> SheetsSection::issue_of(const std::string& hash) const {
  return is_job() ? store_->registers().job_sheet(hash) : store_->registers().spec_sheet(hash);
}

Result<std::vector<store::SheetIssue>> SheetsSection::issues_named(const std::string& name) const {
  return is_job() ? store::issues_of_job_sheet(*store_, name) : store::issues_of_spec_sheet(*store_, name);
}

Result<SheetsSection::Opened> SheetsSection::opened(const store::SheetIssue& issue) const {
  if (is_job()) {
    const auto sheet = sheet::read_job_sheet(issue.json);
    return sheet ? Result<Opened>(Opened{issue, sheet->demonstration, widgets::say(sheet->title), {}})
                 : tl::make_unexpected(sheet.error());
  }
  const auto spec = sheet::read_spec_sheet(issue.json);
  return spec ? Result<Opened>(Opened{issue, spec->demonstration, widgets::say(spec->title), qt(spec->source)})
              : tl::make_unexpected(spec.error());
}

QString SheetsSection::state_of(const Opened& sheet) const {
  const auto entered = store::sheet_entered_by(*store_, sheet.issue.hash);
  const auto checks = store::checks_of_sheet(*store_, sheet.issue.hash);
  const auto use = store::use_of_sheet(*store_, sheet.issue.hash);
  const auto persons = store_->registers().persons();
  if (!entered || !checks || !use || !persons) {
    return {};
  }
  return use_in_words(*use) + QLatin1Char(' ') + check_in_words(*entered, *checks, *persons, sheet.demonstration);
}

/// A spec sheet is known by its gearbox, a job sheet by its title: its name is for files.
QString SheetsSection::title_of(const Opened& sheet) const {
  return issue_title(is_job() ? widgets::plain(sheet.title) : sheet.issue.name, sheet.issue.issue);
}

QString SheetsSection::below_title_of(const Opened& sheet) const {
  return is_job() ? tr("Name in files: %1").arg(qt(sheet.issue.name)) : sheet.title;
}

void SheetsSection::show_list() {
  begin_page();
  shown_.clear();
  add_heading(*page_, is_job() ? tr("Job sheets") : tr("Spec sheets"));
  add_list_head();
  const auto drafts = store::sheet_drafts(*store_, kind_);
  const auto sheets = is_job() ? store_->registers().job_sheets() : store_->registers().spec_sheets();
  if (!drafts || !sheets) {
    show_refusal(drafts ? sheets.error() : drafts.error());
  } else {
    for (const store::KeptDraft& each : *drafts) {
      add_draft_card(each);
    }
    for (const store::SheetIssue& each : *sheets) {
      add_issue_card(each);
    }
  }
  end_page(*page_);
}

void SheetsSection::add_list_head() {
  auto* row = child_of<FlowRow>(page_->content());
  const auto add = [&](const QString& text, const char* name, auto act) {
    auto* button = child_of<Button>(row, text);
    button->setObjectName(QLatin1String(name));
    button->setEnabled(!store_->looks_only());
    row->add(button);
    connect(button, &QAbstractButton::clicked, this, act);
  };
  add(tr("New, from an empty sheet"), "button-new-sheet", [this] { begin_empty(); });
  add(tr("Bring in a file"), "button-sheet-from-file", [this] { begin_from_file(); });
  page_->column()->addWidget(row);
  add_told(page_->column()->count());
}

void SheetsSection::add_told(int at) {
  told_ = child_of<widgets::Text>(page_->content(), QString());
  told_->setObjectName(QStringLiteral("sheet-told"));
  told_->setVisible(false);
  page_->column()->insertWidget(at, told_);
}

void SheetsSection::add_draft_card(const store::KeptDraft& draft) {
  const sheet::DraftHead head = sheet::head_of(draft.draft);
  const auto persons = store_->registers().persons();
  const std::size_t faults = sheet::faults_of(draft.draft).size();
  auto* card = child_of<widgets::Box>(page_->content(), tr("Being written: %1").arg(issue_title(head.name, head.issue)),
                                      draft_in_words(draft, faults, persons ? *persons : std::vector<store::Person>()),
                                      "notice");
  if (head.demonstration) {
    card->body()->addWidget(widgets::demonstration_mark(card), 0, Qt::AlignLeft);
  }
  auto* row = child_of<FlowRow>(card);
  auto* button = child_of<Button>(row, tr("Go on writing"));
  button->setObjectName(QStringLiteral("button-draft-") + qt(head.name));
  row->add(button);
  button->setEnabled(!store_->looks_only());
  connect(button, &QAbstractButton::clicked, this, [this, id = draft.id] { show_draft(id); });
  add_way_out(*row, draft.id, qt(head.name));
  card->body()->addWidget(row);
  page_->column()->addWidget(card);
}

/// A draft that cannot be gone on with has to be got rid of all the same.
void SheetsSection::add_way_out(FlowRow& row, const std::string& id, const QString& name) {
  auto* away = child_of<Button>(&row, tr("Throw the draft away"));
  away->setObjectName(QStringLiteral("button-throw-away-") + name);
  away->setEnabled(!store_->looks_only());
  row.add(away);
  auto* sure = child_of<Button>(&row, tr("Yes, throw it away"));
  sure->setObjectName(QStringLiteral("button-throw-away-now-") + name);
  sure->hide();
  row.add(sure);
  connect(away, &QAbstractButton::clicked, this, [this, sure] {
    tell(tr("All that was filled in is lost then. Press again to be sure."), false);
    sure->show();
    sure->setFocus();
  });
  connect(
      sure, &QAbstractButton::clicked, this,
      [this, id] {
        if (const auto thrown = store::throw_draft_away(*store_, id); !thrown) {
          tell(widgets::say(thrown.error()), false);
          return;
        }
        show_list();
        emit left_sheet();
      },
      Qt::QueuedConnection);
}

void SheetsSection::add_issue_card(const store::SheetIssue& issue) {
  const auto sheet = opened(issue);
  if (!sheet) {
    add_heading(*page_, issue_title(issue.name, issue.issue));
    show_refusal(sheet.error());
    return;
  }
  auto* card = child_of<widgets::Box>(page_->content(), title_of(*sheet), below_title_of(*sheet), "card");
  if (!sheet->source.isEmpty()) {
    card->body()->addWidget(child_of<widgets::Text>(card, tr("Source: %1").arg(sheet->source), "soft"));
  }
  card->body()->addWidget(child_of<widgets::Text>(card, state_of(*sheet), "soft"));
  if (sheet->demonstration) {
    card->body()->addWidget(widgets::demonstration_mark(card), 0, Qt::AlignLeft);
  }
  auto* row = child_of<FlowRow>(card);
  auto* button = child_of<Button>(row, is_job() ? tr("Show steps") : tr("Show values"));
  button->setObjectName(QStringLiteral("button-open-") + qt(issue.name));
  button->setAccessibleDescription(title_of(*sheet));
  row->add(button);
  connect(button, &QAbstractButton::clicked, this,
          [this, hash = issue.hash] { show_issue(hash, QStringLiteral("back")); });
  if (is_job()) {
    auto* blank = child_of<Button>(row, tr("Save a blank sheet for paper (PDF)"));
    blank->setObjectName(QStringLiteral("button-blank-") + qt(issue.name));
    row->add(blank);
    connect(blank, &QAbstractButton::clicked, this, [this, issue] { save_blank(issue); });
  }
  card->body()->addWidget(row);
  page_->column()->addWidget(card);
}

void SheetsSection::show_issue(const std::string& hash, const QString& focus) {
  begin_page();
  const auto issue = issue_of(hash);
  const auto sheet = issue ? opened(*issue) : tl::make_unexpected(issue.error());
  if (!sheet) {
    show_refusal(sheet.error());
    end_page(*page_);
    return;
  }
  shown_ = hash;
  add_heading(*page_, title_of(*sheet), sheet->demonstration);
  add_text(*page_, below_title_of(*sheet) + QLatin1Char('\n') + state_of(*sheet));
  add_issue_buttons(*sheet);
  if (is_job()) {
    add_losses(*page_, store::lost_by_sheet(*store_, hash).value_or(std::vector<sheet::TakenAway>()));
    add_job_sheet_values(*page_, *sheet::read_job_sheet(issue->json));
  } else {
    add_spec_values(*page_, *sheet::read_spec_sheet(issue->json));
  }
  end_page(*page_);
  if (!focus.isEmpty()) {
    const QString back = is_job() ? QStringLiteral("button-all-job-sheets") : QStringLiteral("button-all-spec-sheets");
    auto* wanted = page_->content()->findChild<QWidget*>(focus == QLatin1String("back") ? back : focus);
    if (wanted != nullptr) {
      wanted->setFocus();
    }
  }
}

void SheetsSection::add_issue_buttons(const Opened& sheet) {
  auto* row = child_of<FlowRow>(page_->content());
  auto* to_list = child_of<Button>(row, is_job() ? tr("All job sheets") : tr("All spec sheets"));
  to_list->setObjectName(is_job() ? QStringLiteral("button-all-job-sheets") : QStringLiteral("button-all-spec-sheets"));
  row->add(to_list);
  connect(to_list, &QAbstractButton::clicked, this, [this] {
    show_list();
    emit left_sheet();
  });
  add_issue_ways(*row, sheet);
  page_->column()->addWidget(row);
  add_told(page_->column()->count());
}

void SheetsSection::add_issue_ways(FlowRow& row, const Opened& sheet) {
  const auto add = [&](const QString& text, const char* name, Button::Kind kind, bool writes, auto act) {
    auto* button = child_of<Button>(&row, text, kind);
    button->setObjectName(QLatin1String(name));
    button->setEnabled(!writes || !store_->looks_only());
    row.add(button);
    connect(button, &QAbstractButton::clicked, this, act);
  };
  const store::SheetIssue& issue = sheet.issue;
  if (!sheet.demonstration) {
    add(tr("I compared every value: checked"), "button-check-sheet", Button::Kind::main, true,
        [this, hash = issue.hash] { check(hash); });
  }
  add(tr("New issue"), "button-next-issue", sheet.demonstration ? Button::Kind::main : Button::Kind::plain, true,
      [this, issue] { begin_next_issue(issue); });
  add(tr("Copy under another name"), "button-copy-sheet", Button::Kind::plain, true, [this, issue] {
    begin(sheet::copy_of(kind_, issue.json, ids_.id(ways_.clock().at_ms)), store::Begun::as_copy, issue.hash);
  });
  const auto others = issues_named(issue.name);
  for (const store::SheetIssue& each : others ? *others : std::vector<store::SheetIssue>()) {
    if (each.issue == issue.issue) {
      continue;
    }
    auto* button = child_of<Button>(&row, tr("Compare with issue %1").arg(each.issue));
    button->setObjectName(QStringLiteral("button-compare-%1").arg(each.issue));
    row.add(button);
    const bool later = each.issue > issue.issue;
    connect(button, &QAbstractButton::clicked, this,
            [this, before = later ? issue : each, after = later ? each : issue] { show_comparison(before, after); });
  }
  add(tr("Save as a file"), "button-save-sheet", Button::Kind::plain, false, [this, issue] { save_file(issue); });
}

void SheetsSection::show_draft(const std::string& id) {
  begin_page();
  const auto draft = store::sheet_draft(*store_, id);
  if (!draft) {
    show_refusal(draft.error());
    end_page(*page_);
    return;
  }
  form_ = child_of<SheetForm>(page_->content(), *store_, ways_, *draft);
  form_->setObjectName(QStringLiteral("sheet-form"));
  page_->column()->addWidget(form_);
  const auto to_list = [this] {
    show_list();
    emit left_sheet();
  };
  connect(form_, &SheetForm::left, this, to_list, Qt::QueuedConnection);
  connect(form_, &SheetForm::thrown_away, this, to_list, Qt::QueuedConnection);
  connect(
      form_, &SheetForm::issued, this, [this](const std::string& hash) { show_issue(hash, QStringLiteral("back")); },
      Qt::QueuedConnection);
  connect(form_, &SheetForm::wants_sight, page_, &widgets::Scroll::show_child);
  end_page(*page_);
  form_->take_focus();
}

}  // namespace shimwright::workshop
