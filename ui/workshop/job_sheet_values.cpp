#include "job_sheet_values.h"

#include <QCoreApplication>

#include "register_sections.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/sheet_text.h"
#include "value_table.h"

namespace shimwright::workshop {

namespace {

using widgets::child_of;
using widgets::qt;

struct JobSheetWords {
  Q_DECLARE_TR_FUNCTIONS(workshop)
};

void add_channel_limits(QStringList& limits, const std::vector<sheet::Channel>& channels) {
  for (const sheet::Channel& each : channels) {
    if (each.limit) {
      limits << qt(*each.limit);
    }
  }
}

/// The names of the limits that judge a step, as the spec sheet has them.
QString limits_of(const sheet::Step& step) {
  QStringList limits;
  if (const auto* read = std::get_if<sheet::ReadStep>(&step.body)) {
    add_channel_limits(limits, read->channels);
  } else if (const auto* teach_in = std::get_if<sheet::TeachInStep>(&step.body)) {
    add_channel_limits(limits, teach_in->channels);
  } else if (const auto* peak = std::get_if<sheet::PeakStep>(&step.body)) {
    add_channel_limits(limits, {peak->channel});
  }
  return limits.join(QStringLiteral(", "));
}

QString cautions_of(const sheet::Step& step) {
  QStringList cautions;
  for (const sheet::Caution& each : step.cautions) {
    cautions << widgets::say(each.hazard) + QLatin1Char(' ') + widgets::say(each.precaution);
  }
  return cautions.join(QLatin1Char('\n'));
}

void add_stage(widgets::Scroll& page, const sheet::Stage& stage) {
  add_heading(page, widgets::say(stage.title));
  auto* table = child_of<ValueTable>(page.content(), std::vector<Column>{{JobSheetWords::tr("Step"), 4, false},
                                                                         {JobSheetWords::tr("Instruction"), 5, false},
                                                                         {JobSheetWords::tr("Limits"), 2, false},
                                                                         {JobSheetWords::tr("Hold point"), 1, false},
                                                                         {JobSheetWords::tr("Cautions"), 4, false}});
  for (const sheet::Step& each : stage.steps) {
    table->add_row({Cell(widgets::say(each.title), "strong"), widgets::say(each.text), Cell(limits_of(each), "small"),
                    each.hold_point ? JobSheetWords::tr("hold point") : QString(), Cell(cautions_of(each), "small")});
  }
  page.column()->addWidget(table);
}

}  // namespace

void add_job_sheet_values(widgets::Scroll& page, const sheet::JobSheet& sheet) {
  for (const sheet::Stage& each : sheet.stages) {
    add_stage(page, each);
  }
}

void add_losses(widgets::Scroll& page, const std::vector<sheet::TakenAway>& lost) {
  if (lost.empty()) {
    return;
  }
  add_heading(page, JobSheetWords::tr("Taken away against the issue before"));
  auto* table = child_of<ValueTable>(page.content(), std::vector<Column>{{JobSheetWords::tr("Step"), 2, false},
                                                                         {JobSheetWords::tr("What"), 4, false},
                                                                         {JobSheetWords::tr("Why"), 4, false}});
  for (const sheet::TakenAway& each : lost) {
    const QString what = each.guard == sheet::Guard::caution ? JobSheetWords::tr("Caution: %1").arg(qt(each.text))
                                                             : JobSheetWords::tr("Hold point: %1").arg(qt(each.text));
    table->add_row({qt(each.step), what, qt(each.reason)});
  }
  page.column()->addWidget(table);
}

}  // namespace shimwright::workshop
