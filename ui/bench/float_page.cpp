#include "float_page.h"

#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "float_words.h"
#include "judged_pages.h"
#include "judged_words.h"
#include "shimwright/job/standing.h"
#include "shimwright/shim/tilt.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::bench {

using widgets::child_of;
using widgets::qt;

FloatPage::FloatPage(Workbench& bench, const sheet::Step& step, QWidget* parent) : StepPage(bench, step, parent) {
  build();
  connect(entry_, &FloatEntry::completed, this, [this] { keep_run(); });
  connect(entry_, &FloatEntry::edited, this, [this] {
    if (const bool now = has_unsent(); now != edited_) {
      edited_ = now;
      emit look_changed();
    }
  });
  connect(entry_, &FloatEntry::spot_wanted, this, [this](int spot) {
    spot_picked_ = spot;
    refresh();
    emit look_changed();
    entry_->take_focus();
  });
  connect(choice_, &ShimChoice::chosen, this, &FloatPage::change_to);
  connect(choice_, &ShimChoice::left, this, &FloatPage::take_focus);
  connect(this, &StepPage::refused, entry_, &FloatEntry::show_refusal);
}

void FloatPage::build() {
  auto* column = widgets::lay<QVBoxLayout>(this, 10);
  choice_ = child_of<ShimChoice>(this);
  column->addWidget(choice_);
  advice_ = child_of<widgets::Box>(this, QString(), QString(), "card");
  advice_->setObjectName(QStringLiteral("float-advice"));
  column->addWidget(advice_);
  promises_ = child_of<PromiseTable>(this);
  promises_->setObjectName(QStringLiteral("float-promises"));
  column->addWidget(promises_);
  entry_ = child_of<FloatEntry>(this, static_cast<int>(float_spec().spot_angles_deg.size()));
  column->addWidget(entry_);
  limits_ = child_of<widgets::LimitStrip>(this);
  column->addWidget(limits_);
  auto* row = widgets::lay_in<widgets::TurningRow>(column, 20);
  disc_ = child_of<widgets::DiscView>(this);
  disc_->setFixedSize(156, 156);
  row->addWidget(disc_, 0, Qt::AlignTop);
  table_ = child_of<FloatTable>(this);
  row->addWidget(table_, 1, Qt::AlignTop);
  facts_ = child_of<widgets::Text>(this, QString(), "soft");
  facts_->setObjectName(QStringLiteral("float-facts"));
  column->addWidget(facts_);
}

/// Runs are asked for until the engine has what it needs.
bool FloatPage::measuring() const {
  if (state().closed || method_forbids() || job::passed(step_state())) {
    return false;
  }
  return !judgement_ || judgement_->advised.conclusion == job::Conclusion::measure_again ||
         job::runs_missing(state(), step());
}

void FloatPage::refresh() {
  auto judged = job::judge(state(), step(), bench().context());
  fault_ = judged ? QString() : widgets::say(judged.error());
  judgement_ = judged ? *std::move(judged) : std::nullopt;
  const Runs runs = job::present_runs(state(), step());
  if (measuring() && !judgement_) {
    choice_->hide();
  }
  show_advice();
  show_entry(runs);
  const bool any = std::any_of(runs.begin(), runs.end(), [](const auto& spot) { return !spot.empty(); });
  limits_->setVisible(any);
  limits_->set_view(float_limits(float_spec(), runs, judgement_));
  show_disc(runs);
  table_->show_runs(runs, as_found() ? 1 : float_spec().least_runs, judgement_);
  table_->setVisible(!method_forbids());
  disc_->setVisible(!method_forbids());
  const QString facts = (judgement_ ? float_facts(*judgement_) : QString()) + earlier_words();
  facts_->setText(facts.trimmed());
  facts_->setVisible(!facts_->text().isEmpty());
  show_promises();
}

void FloatPage::show_advice() {
  if (judgement_) {
    advice_->set_heading(float_heading(*judgement_, step().its_side()));
    advice_->set_text(float_reason_text(*judgement_));
  } else if (method_forbids()) {
    advice_->set_heading(tr("Not measured as found"));
    advice_->set_text(tr("The method of this gearbox has no float as found: leave the step out with that reason."));
  } else {
    advice_->set_heading({});
    advice_->set_text(fault_);
  }
  advice_->setVisible(judgement_ || method_forbids() || !fault_.isEmpty());
}

int FloatPage::next_spot(const Runs& runs) const {
  if (spot_picked_) {
    return *spot_picked_;
  }
  const auto fewest = std::min_element(runs.begin(), runs.end(),
                                       [](const auto& one, const auto& two) { return one.size() < two.size(); });
  return static_cast<int>(std::distance(runs.begin(), fewest)) + 1;
}

void FloatPage::show_entry(const Runs& runs) {
  entry_->setVisible(measuring() && !runs.empty());
  std::string used_last;
  if (const auto* last = job::latest<job::FloatRun>(state(), step().id); last != nullptr && last->instrument) {
    used_last = last->instrument->id;
  }
  entry_->offer(bench().context().instruments, bench().now(), used_last);
  entry_->set_hint_shown(std::all_of(runs.begin(), runs.end(), [](const auto& each) { return each.empty(); }));
  const int spot = next_spot(runs);
  if (spot >= 1 && spot <= static_cast<int>(runs.size())) {
    entry_->show_spot(spot, static_cast<int>(runs[static_cast<std::size_t>(spot) - 1].size()) + 1,
                      as_found() ? 1 : float_spec().least_runs);
  }
}

void FloatPage::show_disc(const Runs& runs) {
  const shim::FloatJudgement* judged = judgement_ ? engine_judgement(*judgement_) : nullptr;
  const bool informs = judgement_ && judgement_->advised.conclusion == job::Conclusion::for_information;
  const bool with_verdicts = judged != nullptr && !informs;
  const auto& angles = float_spec().spot_angles_deg;
  std::vector<widgets::DiscSpot> spots;
  for (std::size_t at = 0; at < angles.size(); ++at) {
    const int number = static_cast<int>(at) + 1;
    spots.push_back({number, angles[at], with_verdicts ? mark_of(judged->spot_verdicts[at]) : widgets::Mark::none,
                     measuring() && number == next_spot(runs)});
  }
  disc_->set_spots(spots, judged != nullptr && shim::tilt_has_direction(*judged) ? judged->high_at_deg : std::nullopt);
}

void FloatPage::show_promises() {
  const auto promises = judgement_ ? shim_promises(*judgement_) : std::vector<ShimPromise>();
  promises_->setVisible(promises_shown_ && !promises.empty());
  if (!promises_->isHidden()) {
    promises_->show_promises(promises);
  }
}

QString FloatPage::earlier_words() const {
  const job::Advised* before = job::advice_before_series(state(), step());
  if (before == nullptr || before->spot_floats.empty()) {
    return {};
  }
  QStringList floats;
  for (const std::int64_t each : before->spot_floats) {
    floats.append(length_words(static_cast<double>(each) / 1000.0, 3));
  }
  return tr(" Measured before: %1.").arg(floats.join(QStringLiteral(", ")));
}

widgets::StripText FloatPage::strip() const {
  if (judgement_) {
    return float_strip(*judgement_, float_spec(), step().its_side());
  }
  if (!measuring()) {
    return {};
  }
  const Runs runs = job::present_runs(state(), step());
  return {widgets::Mark::none, tr("Lift at spot %1").arg(next_spot(runs)), disc_words(step().its_side()), false};
}

std::vector<FootAction> FloatPage::actions() {
  std::vector<FootAction> all;
  if (judgement_ && !shim_promises(*judgement_).empty() && !as_found()) {
    all.push_back({"all-shims", promises_shown_ ? tr("Hide all shims") : tr("All shims and chances"),
                   [this] {
                     promises_shown_ = !promises_shown_;
                     show_promises();
                     emit look_changed();
                   },
                   false, true, true});
  }
  add_one_spot(all);
  if (measuring() && (!judgement_ || has_unsent())) {
    all.push_back({"keep-run", tr("Keep this run"), [this] { keep_run(); }, true});
    return all;
  }
  if (judgement_) {
    add_deciding(all, judgement_->advised.conclusion);
  }
  return all;
}

/// While runs are entered of the spot at hand, afterwards of any: one wrong lift costs that spot alone.
void FloatPage::add_one_spot(std::vector<FootAction>& actions) {
  if (job::passed(step_state()) || state().closed) {
    return;
  }
  const Runs runs = job::present_runs(state(), step());
  for (std::size_t at = 0; at < runs.size(); ++at) {
    const int spot = static_cast<int>(at) + 1;
    if (!runs[at].empty() && (!measuring() || spot == next_spot(runs))) {
      actions.push_back({"spot-again-" + std::to_string(spot), tr("Measure spot %1 again").arg(spot),
                         [this, spot] { begin_series(job::SeriesReason::measure_again, {spot}); }, false, true, true});
    }
  }
}

void FloatPage::add_deciding(std::vector<FootAction>& actions, job::Conclusion conclusion) {
  const bool seat = conclusion == job::Conclusion::seat_again;
  const bool change = conclusion == job::Conclusion::change_shim || conclusion == job::Conclusion::step_shim;
  const bool no_shim = conclusion == job::Conclusion::no_shim;
  const bool open = conclusion == job::Conclusion::decide || no_shim;  // more runs would not answer it
  const bool passed = job::passed(step_state());
  const FootAction measure_again{"measure-again", tr("Measure again"),
                                 [this] { begin_series(job::SeriesReason::measure_again); },
                                 !seat && !change && !open && !passed && !measuring()};
  const FootAction seat_again{"seat-again", seat || no_shim ? tr("Seated again: measure") : tr("Seat again"),
                              [this] { begin_series(job::SeriesReason::seated_again); }, seat || no_shim};
  const FootAction change_shim{"change-shim", tr("Change the shim"), [this] { ask_for_shim(); }, change};
  if (as_found() || passed) {
    actions.push_back(measure_again);
    if (passed) {
      actions.push_back({"go-on", tr("Go on"), [this] { emit leaves(); }, true});
    }
    return;
  }
  // Two at most, so that the foot holds them beside those of the job screen; the main one stands on the right.
  if (seat || no_shim) {
    actions.insert(actions.end(), {change_shim, seat_again});
  } else if (change) {
    actions.insert(actions.end(), {seat_again, change_shim});
  } else if (open) {
    actions.insert(actions.end(), {measure_again, change_shim});
  } else {
    actions.push_back(measure_again);
  }
}

void FloatPage::take_focus() {
  if (!choice_->isHidden()) {
    choice_->take_focus();
  } else if (!entry_->isHidden()) {
    entry_->take_focus();
  } else {
    advice_->setFocus(Qt::OtherFocusReason);
  }
}

bool FloatPage::keep_run() {
  if (entry_->faulty()) {
    entry_->take_focus();
    return false;
  }
  // Ctrl+Enter comes from a field that Enter has not read yet.
  if (!entry_->readable()) {
    return false;
  }
  const int spot = next_spot(job::present_runs(state(), step()));
  const job::EnterFloatRun run{step().id,           spot, entry_->rest(), entry_->lifted(), entry_->zero_after(),
                               entry_->instrument()};
  const auto picked = std::exchange(spot_picked_, std::nullopt);
  if (!send(run, false)) {  // the verdict is seen before the job goes on
    spot_picked_ = picked;
    return false;
  }
  entry_->clear();
  edited_ = false;
  emit look_changed();
  take_focus();
  return true;
}

void FloatPage::begin_series(job::SeriesReason reason, const std::vector<int>& spots) {
  if (send(job::BeginSeries{step().id, spots, reason}, false)) {
    spot_picked_.reset();
    emit look_changed();
    take_focus();
  }
}

void FloatPage::ask_for_shim() {
  const auto advised = judgement_ ? judgement_->advised.shim : std::nullopt;
  QString text = change_words(state(), window_language());
  if (judgement_ && judgement_->advised.trials_agree == false) {
    text = tr("Trials and float disagree: a bearing that is not home would do the same. ") + QLatin1Char('\n') + text;
  }
  choice_->show_tray(tr("Which shim goes under the %1?").arg(bearing_words(step().its_side())), text,
                     job::tray_of(state(), step().its_side(), bench().context()), advised);
  choice_->take_focus();
}

void FloatPage::change_to(const std::string& shim) {
  const QString fitted = judgement_ && judgement_->engine_case.disc_float
                             ? qt(judgement_->engine_case.disc_float->fitted_shim)
                             : QStringLiteral("\u2013");
  const QString what = tr("%1 in place of %2").arg(qt(shim), fitted);
  const auto begin = [this](const QString& reason) {
    const bool kept = send(job::BeginAssembly{{step().its_side()}, widgets::plain(reason)}, false);
    if (kept) {
      choice_->hide();
      emit leaves();
    }
    return kept;
  };
  const bool advised = judgement_ && job::advises(&judgement_->advised, shim) &&
                       judgement_->advised.conclusion != job::Conclusion::seat_again;
  if (advised) {
    begin(tr("float %1: %2").arg(float_strip(*judgement_, float_spec(), step().its_side()).large, what));
    return;
  }
  emit asks({tr("%1 against the advice: why does the pack come off?").arg(what),
             tr("Take the pack off for this reason"), true,
             [begin, what](const std::string& reason) { return begin(what + QStringLiteral(": ") + qt(reason)); }});
}

StepPage* make_float_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return std::make_unique<FloatPage>(bench, step, parent).release();
}

}  // namespace shimwright::bench
