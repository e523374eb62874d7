#include "job_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>

#include "judged_words.h"
#include "shimwright/job/judgement.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

using widgets::Mark;
using widgets::qt;

namespace {

struct MarkOf {
  Mark operator()(const job::Open&) const { return Mark::open; }
  Mark operator()(const job::InWork&) const { return Mark::in_work; }
  Mark operator()(const job::Accepted&) const { return Mark::done; }
  Mark operator()(const job::Held&) const { return Mark::held; }
  Mark operator()(const job::DeviationTaken&) const { return Mark::deviation; }
  Mark operator()(const job::SaidNotRequired&) const { return Mark::not_required; }
  Mark operator()(const job::Unproven&) const { return Mark::unproven; }
  Mark operator()(const job::NotAsked&) const { return Mark::none; }
};

bool is_asked(const job::JobState& state, const sheet::Step& step) {
  return !std::holds_alternative<job::NotAsked>(state.step(step.id));
}

Mark stage_mark(const StageProgress& progress, bool begun) {
  if (progress.held) {
    return Mark::held;
  }
  if (progress.passed == progress.asked) {
    return Mark::done;
  }
  return begun || progress.passed > 0 ? Mark::in_work : Mark::open;
}

const sheet::Step* shim_step(const job::JobState& state, job::Side side) {
  for (const sheet::Step* step : asked_steps(state)) {
    const bool finds =
        std::holds_alternative<sheet::GaugeFitStep>(step->body) || std::holds_alternative<sheet::DepthStep>(step->body);
    if (finds && step->side == side) {
      return step;
    }
  }
  return nullptr;
}

const job::Advised* last_float(const job::JobState& state, job::Side side) {
  for (const sheet::Step* step : asked_steps(state)) {
    const auto* body = std::get_if<sheet::FloatStep>(&step->body);
    if (body != nullptr && !body->as_found && step->side == side) {
      return job::latest<job::Advised>(state, step->id, state.assembly);
    }
  }
  return nullptr;
}

PanelNumber shim_number(const job::JobState& state, job::Side side, const QString& title) {
  if (const auto chosen = state.shims.find(side); chosen != state.shims.end()) {
    // What is stamped on a shim is in millimetres, whatever is shown beside it.
    const bool all_mm = widgets::unit_shown(quantity::Unit::millimetre) == quantity::Unit::millimetre;
    return {title, qt(chosen->second) + (all_mm ? QString() : QStringLiteral(" mm")), false};
  }
  const sheet::Step* step = shim_step(state, side);
  const auto* advised = step == nullptr ? nullptr : job::latest<job::Advised>(state, step->id, state.assembly);
  if (advised != nullptr && (advised->conclusion == job::Conclusion::edge || advised->shim)) {
    QStringList shims;
    for (const std::string& each : advised->candidates) {
      shims << qt(each);
    }
    if (advised->conclusion != job::Conclusion::edge || shims.isEmpty()) {
      shims = {qt(advised->shim.value_or(std::string()))};
    }
    return {title, shims.join(QStringLiteral(" / ")) + QStringLiteral(" ?"), false};
  }
  return {title, QStringLiteral("–"), false};
}

PanelNumber float_number(const job::JobState& state, job::Side side, const QString& title) {
  const job::Advised* advised = last_float(state, side);
  if (advised == nullptr || !advised->mean) {
    return {title, QStringLiteral("–"), false};
  }
  const bool bad = std::any_of(advised->spot_verdicts.begin(), advised->spot_verdicts.end(), [](const auto verdict) {
    return verdict == job::ReadingVerdict::too_small || verdict == job::ReadingVerdict::too_large;
  });
  return {title, length_with_unit(quantity::in_millimetres(quantity::Length(*advised->mean)), 2), bad};
}

}  // namespace

Mark mark_of(const job::StepState& state) {
  return std::visit(MarkOf{}, state);
}

StageProgress progress_of(const job::JobState& state, const sheet::Stage& stage) {
  StageProgress progress;
  bool begun = false;
  for (const sheet::Step& step : stage.steps) {
    if (!is_asked(state, step)) {
      continue;
    }
    const job::StepState& at = state.step(step.id);
    ++progress.asked;
    progress.passed += job::passed(at) ? 1 : 0;
    progress.held = progress.held || std::holds_alternative<job::Held>(at);
    begun = begun || !std::holds_alternative<job::Open>(at);
  }
  progress.mark = stage_mark(progress, begun);
  return progress;
}

std::vector<const sheet::Step*> asked_steps(const job::JobState& state) {
  std::vector<const sheet::Step*> steps = state.sheets.job->steps();
  steps.erase(std::remove_if(steps.begin(), steps.end(), [&](const auto* step) { return !is_asked(state, *step); }),
              steps.end());
  return steps;
}

const sheet::Step* step_after(const job::JobState& state, const std::string& step_id) {
  bool behind = false;
  for (const sheet::Step* step : asked_steps(state)) {
    if (behind && !job::passed(state.step(step->id))) {
      return step;
    }
    behind = behind || step->id == step_id;
  }
  return state.next_step();
}

const sheet::Step* step_before(const job::JobState& state, const std::string& step_id) {
  const sheet::Step* before = nullptr;
  for (const sheet::Step* step : asked_steps(state)) {
    if (step->id == step_id) {
      return before;
    }
    before = step;
  }
  return nullptr;
}

const sheet::Step* entrance_of(const job::JobState& state, const std::string& stage_id) {
  const sheet::Step* first = nullptr;
  for (const sheet::Stage& stage : state.sheets.job->stages) {
    for (const sheet::Step& step : stage.steps) {
      if (stage.id != stage_id || !is_asked(state, step)) {
        continue;
      }
      if (!job::passed(state.step(step.id))) {
        return &step;
      }
      first = first == nullptr ? &step : first;
    }
  }
  return first;
}

std::vector<PanelNumber> panel_numbers(const job::JobState& state) {
  return {shim_number(state, job::Side::lower, QCoreApplication::translate("bench", "shim, large bearing")),
          shim_number(state, job::Side::upper, QCoreApplication::translate("bench", "shim, small bearing")),
          float_number(state, job::Side::lower, QCoreApplication::translate("bench", "lower float")),
          float_number(state, job::Side::upper, QCoreApplication::translate("bench", "upper float"))};
}

widgets::PackView pack_view(const job::JobState& state, const job::Context& context, const sheet::Step* step) {
  widgets::PackView view;
  if (step != nullptr) {
    view.part = step->shows;
    view.one_side = step->side.has_value();
    view.live = step->side.value_or(job::Side::lower);
  }
  for (const auto& [side, shim] : state.shims) {
    for (const job::TrayShim& each : job::tray_of(state, side, context)) {
      if (each.id == shim) {
        view.shim_mm[side] = static_cast<double>(each.thickness.count()) / 1000.0;
      }
    }
  }
  return view;
}

QString time_text(const job::Moment& moment) {
  const QDateTime time = QDateTime::fromMSecsSinceEpoch(moment.at_ms, Qt::OffsetFromUTC, moment.offset_min * 60);
  return QLocale().toString(time, QCoreApplication::translate("bench", "d MMM HH:mm"));
}

QString entry_words(const job::JobState& state, const job::Entry& entry, const std::string& language) {
  const job::StepRef* at = job::step_of(entry.body);
  const sheet::Step* step = at == nullptr ? nullptr : state.sheets.job->find(at->step);
  if (step != nullptr) {
    return qt(step->title.in(language));
  }
  if (const auto* note = std::get_if<job::Noted>(&entry.body)) {
    return QCoreApplication::translate("bench", "Note: %1").arg(qt(note->text));
  }
  if (std::holds_alternative<job::Opened>(entry.body)) {
    return QCoreApplication::translate("bench", "Job opened");
  }
  if (const auto* parked = std::get_if<job::Parked>(&entry.body)) {
    return QCoreApplication::translate("bench", "Parked, waiting for %1").arg(qt(parked->waits_for));
  }
  if (std::holds_alternative<job::TakenUp>(entry.body)) {
    return QCoreApplication::translate("bench", "Taken up again");
  }
  if (std::holds_alternative<job::HandedOver>(entry.body)) {
    return QCoreApplication::translate("bench", "Handed over");
  }
  if (const auto* begun = std::get_if<job::AssemblyBegun>(&entry.body)) {
    return QCoreApplication::translate("bench", "Assembly %1 begun").arg(begun->assembly);
  }
  if (std::holds_alternative<job::Sealed>(entry.body)) {
    return QCoreApplication::translate("bench", "Sealed");
  }
  if (const auto* added = std::get_if<job::AddendumAdded>(&entry.body)) {
    return QCoreApplication::translate("bench", "Added after sealing: %1").arg(qt(added->reason));
  }
  return QCoreApplication::translate("bench", "Something taken back");
}

std::vector<QString> parts_to_order(const job::JobState& state, const std::string& language) {
  std::vector<QString> lines;
  for (const sheet::Step* step : asked_steps(state)) {
    if (job::passed(state.step(step->id))) {
      continue;
    }
    for (const std::string& id : job::parts_to_renew(state, *step)) {
      if (const sheet::PartItem* part = state.sheets.spec->part(id)) {
        const QString line = QCoreApplication::translate("bench", "%1 × %2, number %3")
                                 .arg(part->quantity)
                                 .arg(qt(part->title.in(language)), qt(part->number));
        lines.push_back(part->one_time
                            ? QCoreApplication::translate("bench", "%1 (one-time: renewed at every assembly)").arg(line)
                            : line);
      }
    }
  }
  return lines;
}

}  // namespace shimwright::bench
