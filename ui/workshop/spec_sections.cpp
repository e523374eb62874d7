#include "spec_sections.h"

#include <QCoreApplication>

#include "register_sections.h"
#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "spec_values.h"
#include "value_table.h"

namespace shimwright::workshop {

namespace {

using widgets::child_of;
using widgets::qt;

struct SpecPageWords {
  Q_DECLARE_TR_FUNCTIONS(workshop)
};

void add_spec_refusal(widgets::Scroll& page, const Error& error) {
  page.column()->addWidget(child_of<widgets::Text>(page.content(), widgets::say(error), "error"));
}

QString issue_title(const store::SheetIssue& issue) {
  return SpecPageWords::tr("%1, issue %2").arg(qt(issue.name)).arg(issue.issue);
}

void add_spec_card(widgets::Scroll& page, const store::SheetIssue& issue,
                   const std::function<void(const std::string& hash)>& open) {
  const auto spec = sheet::read_spec_sheet(issue.json);
  if (!spec) {
    add_heading(page, issue_title(issue));
    add_spec_refusal(page, spec.error());
    return;
  }
  auto* card = child_of<widgets::Box>(page.content(), issue_title(issue), qt(spec->title.in_english()), "card");
  auto* row = widgets::lay_in<QHBoxLayout>(card->body(), 14);
  auto* words = widgets::lay_in<QVBoxLayout>(row, 6);
  row->setStretch(0, 1);
  words->addWidget(child_of<widgets::Text>(card, SpecPageWords::tr("Source: %1").arg(qt(spec->source)), "soft"));
  if (spec->demonstration) {
    words->addWidget(widgets::demonstration_mark(card), 0, Qt::AlignLeft);
  }
  auto* button = child_of<widgets::Button>(card, SpecPageWords::tr("Show values"));
  button->setObjectName(QStringLiteral("button-open-%1").arg(qt(issue.name)));
  button->setAccessibleDescription(issue_title(issue));
  QObject::connect(button, &QAbstractButton::clicked, &page, [open, hash = issue.hash] { open(hash); });
  row->addWidget(button, 0, Qt::AlignBottom | Qt::AlignRight);
  page.column()->addWidget(card);
}

void add_side_values(widgets::Scroll& page, const sheet::SpecSheet& spec) {
  auto* table =
      child_of<ValueTable>(page.content(), std::vector<Column>{{SpecPageWords::tr("Value"), 5, false},
                                                               {SpecPageWords::tr("Lower, large bearing"), 3, true},
                                                               {SpecPageWords::tr("Upper, small bearing"), 3, true},
                                                               {SpecPageWords::tr("Unit"), 0, false},
                                                               {SpecPageWords::tr("From"), 5, false}});
  table->setObjectName(QStringLiteral("values-of-sides"));
  for (const SideRow& each : side_rows(spec)) {
    table->add_row({each.name, each.lower, each.upper, Cell(each.unit, "soft"), Cell(each.from, "small")});
  }
  page.column()->addWidget(table);
}

void add_limits(widgets::Scroll& page, const sheet::SpecSheet& spec) {
  add_heading(page, SpecPageWords::tr("Limits of readings"));
  auto* table = child_of<ValueTable>(page.content(), std::vector<Column>{{SpecPageWords::tr("Reading"), 4, false},
                                                                         {SpecPageWords::tr("Limit"), 3, true},
                                                                         {SpecPageWords::tr("Unit"), 1, false},
                                                                         {SpecPageWords::tr("From"), 3, false}});
  table->setObjectName(QStringLiteral("limits"));
  for (const LimitRow& each : limit_rows(spec)) {
    table->add_row({each.name, each.limits, Cell(each.unit, "soft"), Cell(each.from, "small")});
  }
  page.column()->addWidget(table);
}

void add_work_values(widgets::Scroll& page, const sheet::SpecSheet& spec) {
  add_heading(page, SpecPageWords::tr("Values to work to"));
  auto* table = child_of<ValueTable>(page.content(), std::vector<Column>{{SpecPageWords::tr("Value"), 4, false},
                                                                         {SpecPageWords::tr("Work to"), 4, false},
                                                                         {SpecPageWords::tr("From"), 3, false}});
  for (const auto& [key, each] : spec.work_values) {
    table->add_row({qt(each.title.in_english()), qt(each.value), Cell(qt(each.source), "small")});
  }
  page.column()->addWidget(table);
}

void add_parts(widgets::Scroll& page, const sheet::SpecSheet& spec) {
  add_heading(page, SpecPageWords::tr("Parts"));
  auto* table = child_of<ValueTable>(page.content(), std::vector<Column>{{SpecPageWords::tr("Part"), 4, false},
                                                                         {SpecPageWords::tr("Number"), 2, false},
                                                                         {SpecPageWords::tr("Quantity"), 1, true},
                                                                         {SpecPageWords::tr("Renewed"), 3, false}});
  for (const sheet::PartItem& each : spec.parts) {
    table->add_row({qt(each.title.in_english()), qt(each.number), QString::number(each.quantity),
                    each.one_time ? SpecPageWords::tr("at every assembly") : SpecPageWords::tr("once")});
  }
  page.column()->addWidget(table);
}

}  // namespace

void fill_spec_sheets(widgets::Scroll& page, store::Registers& registers,
                      const std::function<void(const std::string& hash)>& open) {
  clear(page);
  const auto sheets = registers.spec_sheets();
  if (!sheets) {
    add_spec_refusal(page, sheets.error());
  } else {
    add_heading(page, SpecPageWords::tr("Spec sheets"));
    for (const store::SheetIssue& each : *sheets) {
      add_spec_card(page, each, open);
    }
  }
  end_page(page);
}

void fill_spec_sheet(widgets::Scroll& page, store::Registers& registers, const std::string& hash,
                     const std::function<void()>& back) {
  clear(page);
  auto* to_list = child_of<widgets::Button>(page.content(), SpecPageWords::tr("All spec sheets"));
  to_list->setObjectName(QStringLiteral("button-all-spec-sheets"));
  QObject::connect(to_list, &QAbstractButton::clicked, &page, [back] { back(); });
  page.column()->addWidget(to_list, 0, Qt::AlignLeft);
  const auto issue = registers.spec_sheet(hash);
  const auto spec = issue ? sheet::read_spec_sheet(issue->json) : tl::make_unexpected(issue.error());
  if (!issue || !spec) {
    add_spec_refusal(page, issue ? spec.error() : issue.error());
    end_page(page);
    return;
  }
  add_heading(page, issue_title(*issue), spec->demonstration);
  add_text(page, SpecPageWords::tr("%1. Source: %2").arg(qt(spec->title.in_english()), qt(spec->source)));
  add_side_values(page, *spec);
  add_limits(page, *spec);
  add_work_values(page, *spec);
  add_parts(page, *spec);
  end_page(page);
}

}  // namespace shimwright::workshop
