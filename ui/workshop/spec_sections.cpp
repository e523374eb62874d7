#include "spec_sections.h"

#include <QCoreApplication>

#include "register_sections.h"
#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/sheet_text.h"
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
    table->add_row({widgets::say(each.title), qt(each.value), Cell(qt(each.source), "small")});
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
    table->add_row({widgets::say(each.title), qt(each.number), QString::number(each.quantity),
                    each.one_time ? SpecPageWords::tr("at every assembly") : SpecPageWords::tr("once")});
  }
  page.column()->addWidget(table);
}

void add_sizes(widgets::Scroll& page, const QString& side, const sheet::SideSpec& spec) {
  add_heading(page, SpecPageWords::tr("Sizes of the tray “%1”, %2").arg(qt(spec.tray_name), side));
  auto* table = child_of<ValueTable>(page.content(),
                                     std::vector<Column>{{SpecPageWords::tr("Marked"), 1, false},
                                                         {SpecPageWords::tr("Thickness, mm"), 1, true},
                                                         {SpecPageWords::tr("Standard uncertainty, mm"), 1, true}});
  for (const sheet::SpecShim& each : spec.tray) {
    table->add_row({Cell(qt(each.id), "strong"), qt(quantity::millimetre_text(each.thickness, 3)),
                    QString::number(each.u_mm, 'g', 6)});
  }
  page.column()->addWidget(table);
}

}  // namespace

void add_spec_values(widgets::Scroll& page, const sheet::SpecSheet& spec) {
  add_side_values(page, spec);
  add_limits(page, spec);
  add_work_values(page, spec);
  add_parts(page, spec);
  add_sizes(page, SpecPageWords::tr("large bearing"), spec.lower);
  add_sizes(page, SpecPageWords::tr("small bearing"), spec.upper);
}

}  // namespace shimwright::workshop
