#include "glance.h"

#include <QCoreApplication>
#include <algorithm>

#include "days.h"
#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

namespace {

QString title_in_window(const sheet::Text& text) {
  return widgets::qt(text.in(window_language()));
}

QString end_of_key(const std::string& key) {
  constexpr int shown_characters = 5;
  return widgets::qt(key).right(shown_characters);
}

QString conclusion_words(job::Conclusion conclusion) {
  using job::Conclusion;
  switch (conclusion) {
    case Conclusion::try_shim:
      return QCoreApplication::translate("bench", "try the next shim");
    case Conclusion::fit_shim:
      return QCoreApplication::translate("bench", "take the shim");
    case Conclusion::contradiction:
      return QCoreApplication::translate("bench", "the trials contradict each other");
    case Conclusion::tray_too_thick:
    case Conclusion::tray_too_thin:
    case Conclusion::outside:
    case Conclusion::no_shim:
      return QCoreApplication::translate("bench", "no shim of the tray fits");
    case Conclusion::tilted:
      return QCoreApplication::translate("bench", "the places differ too much");
    case Conclusion::impossible:
      return QCoreApplication::translate("bench", "the depths cannot be right");
    case Conclusion::far:
      return QCoreApplication::translate("bench", "a size is missing in the tray");
    case Conclusion::edge:
      return QCoreApplication::translate("bench", "between two shims: choose one");
    case Conclusion::question:
      return QCoreApplication::translate("bench", "a question is open");
    case Conclusion::zero_again:
      return QCoreApplication::translate("bench", "set zero again and measure");
    case Conclusion::keep:
      return QCoreApplication::translate("bench", "within");
    case Conclusion::measure_again:
      return QCoreApplication::translate("bench", "measure again");
    case Conclusion::seat_again:
      return QCoreApplication::translate("bench", "seat it again");
    case Conclusion::change_shim:
    case Conclusion::step_shim:
      return QCoreApplication::translate("bench", "change the shim");
    case Conclusion::decide:
      return QCoreApplication::translate("bench", "on the limit: decide");
    case Conclusion::for_information:
      return QCoreApplication::translate("bench", "for information");
  }
  return {};
}

QString verdict_words(const std::vector<job::Reading>& readings) {
  for (const job::Reading& each : readings) {
    switch (each.verdict) {
      case job::ReadingVerdict::too_small:
        return QCoreApplication::translate("bench", "too small");
      case job::ReadingVerdict::too_large:
        return QCoreApplication::translate("bench", "too large");
      case job::ReadingVerdict::on_limit:
        return QCoreApplication::translate("bench", "on the limit");
      case job::ReadingVerdict::not_equal:
        return QCoreApplication::translate("bench", "the counts differ");
      case job::ReadingVerdict::none:
      case job::ReadingVerdict::within:
        break;
    }
  }
  return QCoreApplication::translate("bench", "not accepted");
}

QString choice_words(const sheet::ChooseStep& asked, const job::Chosen* chosen) {
  for (const sheet::Choice& each : asked.choices) {
    if (chosen != nullptr && each.id == chosen->choice) {
      return QCoreApplication::translate("bench", "answered “%1”").arg(title_in_window(each.title));
    }
  }
  return QCoreApplication::translate("bench", "not accepted");
}

bool has_question(const job::StepState& state) {
  const auto* held = std::get_if<job::Held>(&state);
  return held != nullptr && !held->questions.empty();
}

std::optional<std::size_t> stage_with(const sheet::JobSheet& sheet, const sheet::Step* step) {
  for (std::size_t at = 0; at < sheet.stages.size(); ++at) {
    const auto& steps = sheet.stages[at].steps;
    if (std::any_of(steps.begin(), steps.end(), [&](const sheet::Step& each) { return &each == step; })) {
      return at;
    }
  }
  return std::nullopt;
}

bool wholly_passed(const job::JobState& state, const sheet::Stage& stage) {
  return std::all_of(stage.steps.begin(), stage.steps.end(),
                     [&](const sheet::Step& step) { return job::passed(state.step(step.id)); });
}

QString days_parked(const job::JobState& state, const QDate& today) {
  const auto parked = std::find_if(state.entries.rbegin(), state.entries.rend(), [](const job::Entry& each) {
    return std::holds_alternative<job::Parked>(each.body);
  });
  if (parked == state.entries.rend()) {
    return {};
  }
  const qint64 days = day_of(parked->moment).daysTo(today);
  if (days <= 0) {
    return QCoreApplication::translate("bench", " · parked today");
  }
  return days == 1 ? QCoreApplication::translate("bench", " · parked for 1 day")
                   : QCoreApplication::translate("bench", " · parked for %1 days").arg(days);
}

void add_waiting(Glance& glance, const job::JobState& state, const job::Parked& parked, const job::Moment& now) {
  const QDate today = day_of(now);
  glance.next = QCoreApplication::translate("bench", "waits for: %1").arg(widgets::qt(parked.waits_for));
  if (parked.due) {
    const auto due = day_of(*parked.due);
    glance.bad = due && *due < today;
    glance.next += (glance.bad ? QCoreApplication::translate("bench", ", was due %1")
                               : QCoreApplication::translate("bench", ", due %1"))
                       .arg(day_text(*parked.due));
  }
  glance.next += days_parked(state, today);
}

void add_next_step(Glance& glance, const job::JobState& state, const sheet::Step& step) {
  const QString title = title_in_window(step.title);
  const job::StepState& step_state = state.step(step.id);
  if (std::holds_alternative<job::Held>(step_state)) {
    glance.bad = true;
    glance.urgency = Urgency::off;
    glance.next = QCoreApplication::translate("bench", "%1: %2").arg(title, held_words(state, step));
  } else if (std::holds_alternative<job::Unproven>(step_state)) {
    glance.next = QCoreApplication::translate("bench", "once more after the pause: %1").arg(title);
  } else {
    glance.next = title;
  }
}

Glance glance_of_line(const store::JobSummary& summary) {
  Glance glance;
  glance.job = summary.id;
  glance.number = widgets::qt(summary.number);
  glance.vehicle = QCoreApplication::translate("bench", "VIN ends %1").arg(end_of_key(summary.vehicle_key));
  glance.unit = QCoreApplication::translate("bench", "unit %1").arg(widgets::qt(summary.gearbox));
  return glance;
}

}  // namespace

std::size_t place_among(const std::vector<Urgency>& cards, Urgency urgency) {
  return static_cast<std::size_t>(std::upper_bound(cards.begin(), cards.end(), urgency) - cards.begin());
}

QString held_words(const job::JobState& state, const sheet::Step& step) {
  if (has_question(state.step(step.id))) {
    return QCoreApplication::translate("bench", "a question is open");
  }
  if (const auto* advised = job::latest<job::Advised>(state, step.id)) {
    return conclusion_words(advised->conclusion);
  }
  if (const auto* read = job::latest<job::Read>(state, step.id)) {
    return verdict_words(read->readings);
  }
  if (const auto* peak = job::latest<job::PeakRead>(state, step.id)) {
    return verdict_words({peak->reading});
  }
  if (const auto* asked = std::get_if<sheet::ChooseStep>(&step.body)) {
    return choice_words(*asked, job::latest<job::Chosen>(state, step.id));
  }
  if (job::latest<job::Checked>(state, step.id) != nullptr) {
    return QCoreApplication::translate("bench", "not in order");
  }
  const bool teach_in = job::latest<job::TeachInTried>(state, step.id) != nullptr;
  return teach_in ? QCoreApplication::translate("bench", "not completed")
                  : QCoreApplication::translate("bench", "not accepted");
}

Glance glance_at(const store::JobSummary& summary, const job::JobState& state, const job::Moment& now) {
  Glance glance = glance_of_line(summary);
  if (state.opened && state.opened->chassis_reason) {
    glance.vehicle = QCoreApplication::translate("bench", "chassis ends %1").arg(end_of_key(summary.vehicle_key));
  }
  const sheet::JobSheet& sheet = *state.sheets.job;
  const sheet::Step* next = state.next_step();
  const auto here = stage_with(sheet, next);
  for (const sheet::Stage& stage : sheet.stages) {
    glance.stages.push_back(wholly_passed(state, stage) ? widgets::StageLook::done : widgets::StageLook::to_do);
  }
  if (here) {
    const bool held = std::holds_alternative<job::Held>(state.step(next->id));
    glance.stage = title_in_window(sheet.stages[*here].title);
    glance.stages[*here] = state.parked ? widgets::StageLook::waiting
                           : held       ? widgets::StageLook::held
                                        : widgets::StageLook::here;
  }
  if (state.parked) {
    glance.urgency = Urgency::parked;
    add_waiting(glance, state, *state.parked, now);
  } else if (next != nullptr) {
    add_next_step(glance, state, *next);
  } else {
    glance.next = QCoreApplication::translate("bench", "nothing left to do");
  }
  return glance;
}

Glance glance_without_state(const store::JobSummary& summary, const Error& error) {
  Glance glance = glance_of_line(summary);
  glance.stage = QCoreApplication::translate("bench", "This job cannot be read");
  glance.next = widgets::say(error);
  glance.bad = true;
  return glance;
}

}  // namespace shimwright::bench
