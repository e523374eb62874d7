#include "float_table.h"

#include <QGridLayout>
#include <algorithm>

#include "judged_words.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

using widgets::child_of;
using widgets::Text;

namespace {

Text* cell(QWidget* parent, const QString& text, const char* part, Qt::Alignment alignment) {
  auto* label = child_of<Text>(parent, text, part);
  label->setWordWrap(false);
  label->setAlignment(alignment | Qt::AlignVCenter);
  return label;
}

void add_rule(QGridLayout* grid, QWidget* parent, int row, int columns) {
  auto* rule = child_of<QFrame>(parent);
  rule->setFixedHeight(1);
  widgets::set_part(rule, "rule");
  grid->addWidget(rule, row, 0, 1, columns);
}

/// In place of the rows there were: an empty grid.
QGridLayout* begin_rows(QWidget* table, QWidget*& rows) {
  if (rows != nullptr) {
    rows->hide();
    rows->deleteLater();
  }
  rows = child_of<QWidget>(table);
  table->layout()->addWidget(rows);
  auto* grid = widgets::lay<QGridLayout>(rows);
  grid->setHorizontalSpacing(22);
  grid->setVerticalSpacing(8);
  return grid;
}

constexpr int head_rows = 2;  // words and rule

}  // namespace

FloatTable::FloatTable(QWidget* parent) : QWidget(parent) {
  static_cast<void>(widgets::lay<QVBoxLayout>(this));
}

void FloatTable::add_head(QGridLayout* grid, int columns) {
  grid->addWidget(cell(rows_, tr("Spot"), "small", Qt::AlignLeft), 0, 0);
  for (int run = 1; run <= columns; ++run) {
    grid->addWidget(cell(rows_, tr("Run %1").arg(run), "small", Qt::AlignRight), 0, run);
  }
  grid->addWidget(cell(rows_, tr("Float"), "small", Qt::AlignRight), 0, columns + 1);
  grid->addWidget(cell(rows_, judges_ ? tr("Verdict") : QString(), "small", Qt::AlignLeft), 0, columns + 2);
  for (int column = 1; column <= columns + 1; ++column) {
    grid->setColumnMinimumWidth(column, 78);
  }
  grid->setColumnStretch(columns + 2, 1);
  add_rule(grid, rows_, 1, columns + 3);
}

void FloatTable::show_runs(const std::vector<std::vector<const job::FloatRun*>>& runs, int least_runs,
                           const std::optional<job::Judgement>& judgement) {
  QGridLayout* grid = begin_rows(this, rows_);
  judges_ = !judgement || judgement->advised.conclusion != job::Conclusion::for_information;
  int columns = std::max(1, least_runs);
  for (const auto& spot : runs) {
    columns = std::max(columns, static_cast<int>(spot.size()));
  }
  add_head(grid, columns);
  const shim::FloatJudgement* judged = judgement ? engine_judgement(*judgement) : nullptr;
  for (std::size_t spot = 0; spot < runs.size(); ++spot) {
    const int row = static_cast<int>(spot) + head_rows;
    grid->setRowMinimumHeight(row, 30);
    grid->addWidget(cell(rows_, QString::number(spot + 1), "echo", Qt::AlignLeft), row, 0);
    for (std::size_t run = 0; run < static_cast<std::size_t>(columns); ++run) {
      const bool there = run < runs[spot].size();
      const QString words = there ? run_words(*runs[spot][run]) : QStringLiteral("\u2013");
      grid->addWidget(cell(rows_, words, there ? "echo" : "soft", Qt::AlignRight), row, static_cast<int>(run) + 1);
    }
    const QString value = judged != nullptr ? length_words(judged->float_mm[spot], 3) : QStringLiteral("\u2013");
    grid->addWidget(cell(rows_, value, judged != nullptr ? "sum-total" : "soft", Qt::AlignRight), row, columns + 1);
    add_verdict(grid, row, columns + 2, judged, spot);
  }
}

void FloatTable::add_verdict(QGridLayout* grid, int row, int column, const shim::FloatJudgement* judged,
                             std::size_t spot) {
  if (!judges_) {
    return;
  }
  if (judged == nullptr) {
    grid->addWidget(cell(rows_, QStringLiteral("\u2013"), "soft", Qt::AlignLeft), row, column);
    return;
  }
  const metrology::Verdict verdict = judged->spot_verdicts[spot];
  const bool off = verdict == metrology::Verdict::too_small || verdict == metrology::Verdict::too_large;
  const char* part = off ? "bad" : verdict == metrology::Verdict::within ? "good" : "strong";
  auto* place = child_of<QWidget>(rows_);
  auto* line = widgets::lay<QHBoxLayout>(place, 8);
  line->addWidget(child_of<widgets::MarkView>(place, mark_of(verdict), 20));
  line->addWidget(cell(place, verdict_words(verdict), part, Qt::AlignLeft));
  line->addStretch(1);
  grid->addWidget(place, row, column);
}

PromiseTable::PromiseTable(QWidget* parent) : QWidget(parent) {
  static_cast<void>(widgets::lay<QVBoxLayout>(this));
}

void PromiseTable::show_promises(const std::vector<ShimPromise>& promises) {
  QGridLayout* grid = begin_rows(this, rows_);
  grid->addWidget(cell(rows_, tr("Shim"), "small", Qt::AlignRight), 0, 0);
  grid->addWidget(cell(rows_, widgets::with_length_unit(tr("Float expected, mm (95 %)")), "small", Qt::AlignRight), 0,
                  1);
  grid->addWidget(cell(rows_, tr("Within at every spot"), "small", Qt::AlignLeft), 0, 2);
  grid->setColumnStretch(3, 1);
  add_rule(grid, rows_, 1, 4);
  int row = head_rows;
  for (const ShimPromise& each : promises) {
    const char* part = each.advised ? "sum-total" : "echo";
    grid->addWidget(cell(rows_, each.shim, part, Qt::AlignRight), row, 0);
    grid->addWidget(cell(rows_, each.expected, part, Qt::AlignRight), row, 1);
    grid->addWidget(cell(rows_, each.chance, part, Qt::AlignLeft), row, 2);
    const QString note = each.advised && each.fitted ? tr("advised, fitted now")
                         : each.advised              ? tr("advised")
                         : each.fitted               ? tr("fitted now")
                                                     : QString();
    grid->addWidget(cell(rows_, note, each.advised ? "good" : "soft", Qt::AlignLeft), row, 3);
    ++row;
  }
}

}  // namespace shimwright::bench
