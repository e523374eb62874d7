#include <algorithm>
#include <chrono>

#include "advice_wording.h"
#include "desk.h"
#include "round.h"
#include "shimwright/job/evolve.h"
#include "shimwright/vehicle/vehicle_number.h"

namespace shimwright::job {

namespace {

int year_of(const Moment& moment) {
  const auto days = std::chrono::floor<std::chrono::days>(
      std::chrono::sys_time<std::chrono::milliseconds>(std::chrono::milliseconds(moment.at_ms)));
  return static_cast<int>(std::chrono::year_month_day(days).year());
}

std::optional<PrivateReference> reference_to(const std::optional<PrivateText>& text) {
  return text ? std::optional(PrivateReference{text->id, text->digest}) : std::nullopt;
}

std::optional<std::string> unless_blank(const std::string& text) {
  return is_blank(text) ? std::nullopt : std::optional(text);
}

Result<void> take_vehicle(Opened& opened, const OpenJob& command, const Moment& now) {
  if (command.chassis_reason) {
    auto chassis = vehicle::read_chassis_number(command.vehicle_typed, *command.chassis_reason);
    if (!chassis) {
      Error error = chassis.error();
      error.place = "vehicle";
      return tl::make_unexpected(std::move(error));
    }
    opened.vehicle_key = chassis->key;
    opened.chassis_reason = chassis->reason;
    return {};
  }
  auto vin = vehicle::read_vehicle_number(command.vehicle_typed, year_of(now));
  if (!vin) {
    Error error = vehicle::error_of(vin.error());
    error.place = "vehicle";
    return tl::make_unexpected(std::move(error));
  }
  opened.vehicle_key = vin->key;
  return {};
}

}  // namespace

Bodies decide_on(const Desk& desk, const OpenJob& command) {
  const Sheets& sheets = desk.state.sheets;
  if (is_blank(command.number)) {
    return refuse("number_missing", "number", SHIMWRIGHT_TEXT("job", "The job needs a number: give it one."));
  }
  if (auto fit = sheet::fits(*sheets.job, *sheets.spec); !fit) {
    return tl::make_unexpected(fit.error());
  }
  Opened opened;
  opened.number = command.number;
  if (auto taken = take_vehicle(opened, command, desk.context.now); !taken) {
    return tl::make_unexpected(taken.error());
  }
  if (!is_blank(command.odometer)) {
    auto odometer = number_typed("odometer", command.odometer, quantity::Unit::kilometre);
    if (!odometer) {
      return tl::make_unexpected(odometer.error());
    }
    opened.odometer = *odometer;
  }
  if (!is_blank(command.build_date) && !is_date(command.build_date)) {
    return refuse("bad_date", "build_date",
                  SHIMWRIGHT_TEXT("job", "“{0}” is no date: write year-month-day, as in 2019-04-30."),
                  {command.build_date});
  }
  opened.plate = reference_to(command.plate);
  opened.customer_reference = reference_to(command.customer_reference);
  opened.complaint = reference_to(command.complaint);
  opened.gearbox = sheets.spec->gearbox;
  opened.gearbox_serial = unless_blank(command.gearbox_serial);
  opened.build_date = unless_blank(command.build_date);
  opened.sheet_id = sheets.job->id;
  opened.sheet_hash = sheets.job_hash;
  opened.spec_id = sheets.spec->id;
  opened.spec_hash = sheets.spec_hash;
  opened.language = command.language;
  return std::vector<EntryBody>{std::move(opened)};
}

namespace {

/// Readings that stand against their limit, open questions and unproven steps: nothing is signed over them.
std::string open_points(const JobState& state, std::string_view but) {
  std::string list;
  for (const sheet::Step* step : state.sheets.job->steps()) {
    const StepState& step_state = state.step(step->id);
    if (step->id != but && (std::holds_alternative<Held>(step_state) || std::holds_alternative<Unproven>(step_state))) {
      list += (list.empty() ? "“" : ", “") + title_of(*step) + "”";
    }
  }
  return list;
}

const Entry* signature_of(const JobState& state, sheet::Signer signer) {
  const Entry* found = nullptr;
  for (const Entry* entry : state.live()) {
    const auto* signature = std::get_if<Signed>(&entry->body);
    if (signature != nullptr && signature->signer == signer) {
      found = entry;
    }
  }
  return found;
}

/// Nothing is signed, or left unsigned with a reason, over open points; the technician signs first.
Result<void> way_to_signature(const Desk& desk, const sheet::Step& step, sheet::Signer signer) {
  const std::string open = open_points(desk.state, step.id);
  if (!open.empty()) {
    return refuse("open_points", step.id,
                  SHIMWRIGHT_TEXT("job", "Not yet: {0} is not accepted. Answer it, or go on with a reason there."),
                  {open});
  }
  if (signer == sheet::Signer::checker && signature_of(desk.state, sheet::Signer::technician) == nullptr) {
    return refuse("technician_first", step.id,
                  SHIMWRIGHT_TEXT("job", "The technician signs first: there is nothing to check before."));
  }
  return {};
}

}  // namespace

Bodies decide_on(const Desk& desk, const Sign& command) {
  const auto step = step_of_kind<sheet::SignStep>(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  const auto signer = std::get<sheet::SignStep>((*step)->body).signer;
  if (auto way = way_to_signature(desk, **step, signer); !way) {
    return tl::make_unexpected(way.error());
  }
  const Entry* technician = signature_of(desk.state, sheet::Signer::technician);
  if (signer == sheet::Signer::checker && technician->person == desk.context.person) {
    return refuse("same_person", command.step,
                  SHIMWRIGHT_TEXT("job", "The checker is a second person: hand over, or go on with a reason."));
  }
  return std::vector<EntryBody>{Signed{desk.at(**step), signer}};
}

Bodies decide_on(const Desk& desk, const Deviate& command) {
  const auto step = open_way_to(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  if (const auto* sign = std::get_if<sheet::SignStep>(&(*step)->body)) {
    if (sign->signer == sheet::Signer::technician) {
      return refuse("must_be_signed", command.step,
                    SHIMWRIGHT_TEXT("job", "The technician's signature cannot be left out: sign the job."));
    }
    if (auto way = way_to_signature(desk, **step, sign->signer); !way) {
      return tl::make_unexpected(way.error());
    }
  }
  auto reason = reason_given(command.step, command.reason);
  if (!reason) {
    return tl::make_unexpected(reason.error());
  }
  return std::vector<EntryBody>{Deviated{desk.at(**step), *reason}};
}

Bodies decide_on(const Desk& desk, const SayNotRequired& command) {
  const auto step = open_way_to(desk, command.step);
  if (!step) {
    return tl::make_unexpected(step.error());
  }
  if (!(*step)->may_be_not_required) {
    return refuse("required", command.step,
                  SHIMWRIGHT_TEXT("job", "“{0}” is required on this sheet: answer it, or go on with a reason."),
                  {title_of(**step)});
  }
  auto reason = reason_given(command.step, command.reason);
  if (!reason) {
    return tl::make_unexpected(reason.error());
  }
  return std::vector<EntryBody>{NotRequired{desk.at(**step), *reason}};
}

Bodies decide_on(const Desk& desk, const Note& command) {
  if (is_blank(command.text)) {
    return refuse("text_missing", "", SHIMWRIGHT_TEXT("job", "The note is empty: write it first."));
  }
  if (command.step && desk.state.sheets.job->find(*command.step) == nullptr) {
    return refuse("unknown_step", *command.step,
                  SHIMWRIGHT_TEXT("job", "The job sheet has no such step: look at its list of steps."));
  }
  return std::vector<EntryBody>{Noted{command.step, command.text}};
}

Bodies decide_on(const Desk&, const Park& command) {
  if (is_blank(command.waits_for)) {
    return refuse("reason_missing", "waits_for",
                  SHIMWRIGHT_TEXT("job", "Say what the job waits for, so that the next person knows."));
  }
  if (!is_blank(command.due) && !is_date(command.due)) {
    return refuse("bad_date", "due",
                  SHIMWRIGHT_TEXT("job", "“{0}” is no date: write year-month-day, as in 2019-04-30."), {command.due});
  }
  return std::vector<EntryBody>{Parked{command.waits_for, unless_blank(command.due)}};
}

Bodies decide_on(const Desk& desk, const TakeUp&) {
  if (!desk.state.parked) {
    return refuse("not_parked", "", SHIMWRIGHT_TEXT("job", "This job is not parked: go on with its next step."));
  }
  TakenUp taken;
  for (const sheet::Step* step : desk.state.sheets.job->steps()) {
    const StepState& step_state = desk.state.step(step->id);
    const bool answered = std::holds_alternative<Accepted>(step_state) || std::holds_alternative<Held>(step_state) ||
                          std::holds_alternative<DeviationTaken>(step_state);
    if (step->unproven_until && answered && !passed(desk.state.step(*step->unproven_until))) {
      taken.unproven.push_back(step->id);
    }
  }
  return std::vector<EntryBody>{std::move(taken)};
}

Bodies decide_on(const Desk& desk, const HandOver& command) {
  if (is_blank(command.to) || command.to == desk.context.person) {
    return refuse("no_person", "to", SHIMWRIGHT_TEXT("job", "Say which other person takes the job over."));
  }
  return std::vector<EntryBody>{HandedOver{command.to, command.remark}};
}

Bodies decide_on(const Desk& desk, const BeginAssembly& command) {
  auto reason = reason_given("assembly", command.reason);
  if (!reason) {
    return tl::make_unexpected(reason.error());
  }
  bool together = false;
  for (const Entry* entry : desk.state.live()) {
    const StepRef* at = step_of(entry->body);
    const sheet::Step* step = at == nullptr ? nullptr : desk.state.sheets.job->find(at->step);
    together =
        together || (step != nullptr && step->again == sheet::Again::assembly && at->assembly == desk.state.assembly);
  }
  if (!together) {
    return refuse("not_assembled", "assembly",
                  SHIMWRIGHT_TEXT("job", "This assembly has not begun yet: the shim can be changed at its own step."));
  }
  std::vector<Side> sides = command.sides;
  std::sort(sides.begin(), sides.end());
  sides.erase(std::unique(sides.begin(), sides.end()), sides.end());
  return std::vector<EntryBody>{AssemblyBegun{desk.state.assembly + 1, std::move(sides), *reason}};
}

namespace {

bool may_be_withdrawn(const EntryBody& body) {
  return !(std::holds_alternative<Opened>(body) || std::holds_alternative<Advised>(body) ||
           std::holds_alternative<Withdrawn>(body) || std::holds_alternative<Parked>(body) ||
           std::holds_alternative<TakenUp>(body) || std::holds_alternative<HandedOver>(body) ||
           std::holds_alternative<Sealed>(body) || std::holds_alternative<AddendumAdded>(body));
}

bool built_on(const JobState& state, const Entry& entry) {
  const auto* begun = std::get_if<AssemblyBegun>(&entry.body);
  if (begun == nullptr) {
    return false;
  }
  const auto live = state.live();
  return std::any_of(live.begin(), live.end(), [&](const Entry* each) {
    const StepRef* at = step_of(each->body);
    const auto* later = std::get_if<AssemblyBegun>(&each->body);
    return (at != nullptr && at->assembly >= begun->assembly) || (later != nullptr && each->seq > entry.seq);
  });
}

}  // namespace

Bodies decide_on(const Desk& desk, const Withdraw& command) {
  const std::string place = "entry " + std::to_string(command.entry);
  const auto live = desk.state.live();
  const auto found =
      std::find_if(live.begin(), live.end(), [&](const Entry* each) { return each->seq == command.entry; });
  if (found == live.end()) {
    return refuse(
        "unknown_entry", place,
        SHIMWRIGHT_TEXT("job", "There is no such entry, or it was taken back already: look at the job's list."));
  }
  if (!may_be_withdrawn((*found)->body)) {
    return refuse(
        "not_withdrawable", place,
        SHIMWRIGHT_TEXT("job", "This entry cannot be taken back: take back the answer or reading that is wrong."));
  }
  if (built_on(desk.state, **found)) {
    return refuse("built_on", place,
                  SHIMWRIGHT_TEXT("job", "Entries of this assembly stand on it: take those back first."));
  }
  auto reason = reason_given(place, command.reason);
  if (!reason) {
    return tl::make_unexpected(reason.error());
  }
  std::vector<EntryBody> bodies{Withdrawn{command.entry, *reason}};
  const StepRef* at = step_of((*found)->body);
  const sheet::Step* step = at == nullptr ? nullptr : desk.state.sheets.job->find(at->step);
  const bool present =
      step != nullptr && advice_stands_on((*found)->body) && at->assembly >= round_start(desk.state, *step);
  return present ? with_advice(desk, *step, std::move(bodies)) : Bodies(std::move(bodies));
}

}  // namespace shimwright::job
