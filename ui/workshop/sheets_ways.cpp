// What a person begins from the page of the sheets.
#include <algorithm>

#include "blank_sheet.h"
#include "register_sections.h"
#include "sheet_files.h"
#include "sheet_form.h"
#include "sheet_words.h"
#include "sheets_section.h"
#include "shimwright/sheet/compare.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/sheet_checks.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "value_table.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::qt;

namespace {

/// Where a value stands and what it is; no heading before a label that begins with its word, as in `Float, at least`.
QString value_words(const sheet::Difference& difference) {
  const QString heading = widgets::say(difference.heading);
  // What a field says of being left blank is for who fills it in.
  const QString label = widgets::say(difference.label).section(QStringLiteral(" ("), 0, 0);
  QStringList where{widgets::say(difference.section), label.startsWith(heading) ? QString() : heading, label};
  where.removeAll(QString());
  where.removeDuplicates();
  return where.join(QStringLiteral(" · "));
}

}  // namespace

void SheetsSection::begin(sheet::SheetDraft draft, store::Begun how, std::optional<std::string> from) {
  const store::By by = by_now(ways_);
  const std::string id = ids_.id(by.moment.at_ms);
  const auto kept = store::keep_draft(*store_, {id, std::move(draft), how, std::move(from), {}, "", 0, "", 0}, by);
  kept ? show_draft(id) : tell(widgets::say(kept.error()), false);
}

void SheetsSection::begin_empty() {
  const std::string id = ids_.id(ways_.clock().at_ms);
  if (is_job()) {
    begin(sheet::empty_job_sheet(id), store::Begun::from_nothing);
    return;
  }
  // The rows are those that jobs by the workshop's job sheet will ask for.
  const auto sheets = store_->registers().job_sheets();
  const auto asks = sheets && !sheets->empty() ? sheet::read_job_sheet(sheets->front().json) : sheet::JobSheet();
  begin(sheet::empty_spec_sheet(id, asks ? *asks : sheet::JobSheet()), store::Begun::from_nothing);
}

void SheetsSection::begin_from_file() {
  const QString path = ways_.choose_sheet ? ways_.choose_sheet() : QString();
  if (path.isEmpty()) {
    return;
  }
  const auto bytes = read_sheet_file(path);
  auto draft = bytes ? sheet::draft_of_file(kind_, *bytes) : tl::make_unexpected(bytes.error());
  if (!draft) {
    tell(widgets::say(draft.error()), false);
    return;
  }
  begin(std::move(*draft), store::Begun::from_file);
}

void SheetsSection::begin_next_issue(const store::SheetIssue& issue) {
  const auto all = issues_named(issue.name);
  const std::int64_t latest = all && !all->empty() ? all->front().issue : issue.issue;
  // What is lost is measured by the issue before, which need not be the one it is begun from.
  const std::string before = all && !all->empty() ? all->front().hash : issue.hash;
  begin(sheet::next_issue_of(kind_, issue.json, ids_.id(ways_.clock().at_ms), latest + 1), store::Begun::as_next_issue,
        before);
}

void SheetsSection::check(const std::string& hash) {
  const store::By by = by_now(ways_);
  const auto checked = store::check_sheet(*store_, ids_.id(by.moment.at_ms), hash, by);
  if (!checked) {
    tell(widgets::say(checked.error()), false);
    return;
  }
  show_issue(hash, QStringLiteral("back"));
  tell(checked->second_person ? tr("Checked. Jobs can be opened on it now.")
                              : tr("Checked, and said that the same person entered it. Jobs can be opened on it now."),
       true);
}

void SheetsSection::save_file(const store::SheetIssue& issue) {
  const QString suggestion = QStringLiteral("%1-%2.json").arg(qt(issue.name)).arg(issue.issue);
  const QString path = ways_.save_sheet ? ways_.save_sheet(suggestion) : QString();
  if (path.isEmpty()) {
    return;
  }
  const auto written = write_sheet_file(path, issue.json);
  tell(written ? tr("Written: %1").arg(path) : widgets::say(written.error()), written.has_value());
}

void SheetsSection::save_blank(const store::SheetIssue& issue) {
  const QString path = ways_.choose_file ? ways_.choose_file(qt(issue.name) + QStringLiteral(".pdf")) : QString();
  if (path.isEmpty()) {
    return;
  }
  const auto sheet = sheet::read_job_sheet(issue.json);
  const auto saved =
      sheet ? save_blank_sheet(*store_, *sheet, widgets::plain(path), ways_.paper) : tl::make_unexpected(sheet.error());
  tell(saved ? tr("Written: %1").arg(path) : widgets::say(saved.error()), saved.has_value());
}

void SheetsSection::tell(const QString& text, bool good) {
  if (told_ == nullptr) {
    return;
  }
  told_->setText(text);
  widgets::set_part(told_, good ? "strong" : "error");
  told_->show();
  page_->show_child(told_);
}

void SheetsSection::show_comparison(const store::SheetIssue& before, const store::SheetIssue& after) {
  const auto comparison = sheet::compare(kind_, before.json, after.json);
  begin_page();
  const auto sheet = opened(after);
  add_heading(*page_, tr("%1: issue %2 beside issue %3").arg(qt(after.name)).arg(before.issue).arg(after.issue),
              sheet && sheet->demonstration);
  add_text(*page_,
           comparison.differences.empty()
               ? tr("All %1 values are the same.").arg(comparison.same)
               : tr("%1 values differ, %2 are the same.").arg(comparison.differences.size()).arg(comparison.same));
  auto* back = child_of<widgets::Button>(page_->content(), tr("Back to issue %1").arg(after.issue));
  back->setObjectName(QStringLiteral("button-back-to-issue"));
  page_->column()->addWidget(back, 0, Qt::AlignLeft);
  connect(back, &QAbstractButton::clicked, this,
          [this, hash = after.hash] { show_issue(hash, QStringLiteral("back")); });
  auto* table = child_of<ValueTable>(page_->content(), std::vector<Column>{{tr("Value"), 5, false},
                                                                           {tr("Issue %1").arg(before.issue), 3, true},
                                                                           {tr("Issue %1").arg(after.issue), 3, true},
                                                                           {tr("Unit"), 1, false}});
  table->setObjectName(QStringLiteral("comparison"));
  for (const sheet::Difference& each : comparison.differences) {
    const QString where = value_words(each);
    const QString language =
        each.language.empty() ? QString() : QStringLiteral(" (%1)").arg(language_name(each.language));
    table->add_row({where + language, each.before ? qt(*each.before) : tr("not there"),
                    Cell(each.after ? qt(*each.after) : tr("not there"), "strong"), Cell(qt(each.unit), "soft")});
  }
  table->setVisible(!comparison.differences.empty());
  page_->column()->addWidget(table);
  end_page(*page_);
  back->setFocus();
}

}  // namespace shimwright::workshop
