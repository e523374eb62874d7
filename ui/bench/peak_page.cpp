#include "peak_page.h"

#include "reading_words.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/turning_row.h"
#include "step_pages.h"

namespace shimwright::bench {

using widgets::child_of;

PeakPage::PeakPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : FieldsPage(bench, step, {&std::get<sheet::PeakStep>(step.body).channel}, parent),
      back_off_(child_of<widgets::Box>(this, tr("Back off and inspect"), QString(), "card")),
      attempts_(child_of<widgets::Box>(this, tr("Attempts"), QString(), "card")) {
  auto* column = widgets::lay<QVBoxLayout>(this, 14);
  column->addWidget(left_out());
  auto* row = widgets::lay_in<widgets::TurningRow>(column, 26);
  row->addWidget(fields(), 0, Qt::AlignTop);
  auto* right = widgets::lay_in<QVBoxLayout>(row, 14);
  row->setStretch(1, 1);
  right->addWidget(back_off_);
  right->addWidget(attempts_);
  right->addStretch(1);
  back_off_->setObjectName(QStringLiteral("back-off"));
  refresh();
}

std::vector<const job::Entry*> PeakPage::attempts() const {
  std::vector<const job::Entry*> found;
  for (const job::Entry* entry : state().live(step().id)) {
    if (std::holds_alternative<job::PeakRead>(entry->body)) {
      found.push_back(entry);
    }
  }
  return found;
}

const job::PeakRead* PeakPage::last_here() const {
  const job::PeakRead* last = nullptr;
  for (const job::Entry* entry : job::present_entries(state(), step())) {
    const auto* peak = std::get_if<job::PeakRead>(&entry->body);
    last = peak == nullptr ? last : peak;
  }
  return last;
}

/// A reading within its limit whose step is held all the same was one attempt too many.
bool PeakPage::too_many(const job::PeakRead& peak) const {
  return &peak == last_here() && std::holds_alternative<job::Held>(step_state()) && !is_off(peak.reading.verdict);
}

void PeakPage::refresh() {
  FieldsPage::refresh();
  show_back_off();
  show_attempts();
}

void PeakPage::show_back_off() {
  const job::PeakRead* last = last_here();
  const bool off = last != nullptr && std::holds_alternative<job::Held>(step_state()) && is_off(last->reading.verdict);
  back_off_->setVisible(off);
  if (off) {
    back_off_->set_text(
        tr("The force has gone through the parts already: a second attempt would read lower and hide it. "
           "Find what was in the way and put it right before the next one. That will be attempt %1, "
           "and %2 stays on the record.")
            .arg(attempts().size() + 1)
            .arg(number_words(last->reading.number)));
  }
}

void PeakPage::show_attempts() {
  const auto found = attempts();
  for (KeptLine* line : lines_) {
    line->hide();
  }
  for (std::size_t at = 0; at < found.size(); ++at) {
    if (at >= lines_.size()) {
      lines_.push_back(child_of<KeptLine>(attempts_));
      attempts_->body()->addWidget(lines_.back());
    }
    const auto& peak = std::get<job::PeakRead>(found[at]->body);
    QString words = tr("%1: %2, %3").arg(peak.attempt).arg(reading_words(peak.reading), by_whom(bench(), *found[at]));
    if (peak.reading.instrument) {
      words += tr(", with %1").arg(widgets::qt(peak.reading.instrument->name));
    }
    if (peak.at.assembly != state().assembly) {
      words += tr(", assembly %1").arg(peak.at.assembly);
    }
    if (too_many(peak) && peak.most_attempts) {
      words += tr(". The spec sheet has at most %1 attempts.").arg(*peak.most_attempts);
    }
    lines_[at]->show_words(mark_of(peak.reading.verdict), words, is_off(peak.reading.verdict) || too_many(peak));
  }
  attempts_->setVisible(!found.empty());
}

widgets::StripText PeakPage::strip() const {
  const job::PeakRead* last = last_here();
  if (last == nullptr) {
    return {};
  }
  if (too_many(*last) && last->most_attempts) {
    return {widgets::Mark::too_large, tr("attempt %1, at most %2").arg(last->attempt).arg(*last->most_attempts),
            reading_words(last->reading), true};
  }
  return strip_of(last->reading);
}

/// An attempt that was off asks for a look at the parts before the next one. What is typed all the same is kept.
bool PeakPage::to_back_off() const {
  return !back_off_->isHidden() && fields()->blank() && looked_after_ != attempts().size();
}

void PeakPage::take_focus() {
  if (to_back_off()) {
    back_off_->setFocus(Qt::OtherFocusReason);
  } else {
    FieldsPage::take_focus();
  }
}

std::vector<FootAction> PeakPage::actions() {
  if (finished()) {
    return {};
  }
  if (to_back_off()) {
    return {{"back-off", tr("Back off and inspect"),
             [this] {
               looked_after_ = attempts().size();
               emit look_changed();
               take_focus();
             },
             true}};
  }
  const std::size_t next = attempts().size() + 1;
  const QString text = next == 1 ? tr("Keep the reading") : tr("Keep as attempt %1").arg(next);
  return {{"take", text, [this] { take(); }, true}};
}

job::Command PeakPage::command() const {
  return job::EnterPeak{step().id, fields()->typed().front()};
}

StepPage* make_peak_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<PeakPage>(parent, bench, step);
}

}  // namespace shimwright::bench
