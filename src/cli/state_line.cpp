#include "state_line.h"

#include <nlohmann/json.hpp>

#include "shimwright/vehicle/vehicle_number.h"

namespace shimwright::cli {

namespace {

using Json = nlohmann::json;

Json advice_of(const job::Advised& advised) {
  Json advice{{"conclusion", std::string(job::name_of(advised.conclusion))}, {"reason", advised.reason.in_english()}};
  if (advised.shim) {
    advice["shim"] = *advised.shim;
  }
  if (advised.trials_agree) {
    advice["trials_agree"] = *advised.trials_agree;
  }
  return advice;
}

Json questions_of(const job::StepState& state) {
  Json questions = Json::array();
  if (const auto* held = std::get_if<job::Held>(&state)) {
    for (const job::Question& each : held->questions) {
      questions.push_back({{"code", each.code}, {"text", each.message.in_english()}});
    }
  }
  return questions;
}

void add_step(Json& line, const job::Entry& entry, const job::JobState& state) {
  const job::StepRef* at = job::step_of(entry.body);
  if (at == nullptr) {
    return;
  }
  const job::StepState& step_state = state.step(at->step);
  line["step"] = at->step;
  line["state"] = std::string(job::name_of(step_state));
  if (const Json questions = questions_of(step_state); !questions.empty()) {
    line["questions"] = questions;
  }
}

std::string brought_out(const Json& line) {
  return line.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace

std::string accepted_line(std::size_t command, const std::vector<job::Entry>& entries, const job::JobState& state) {
  Json line{{"command", command}, {"accepted", true}, {"assembly", state.assembly}};
  Json seqs = Json::array();
  for (const job::Entry& entry : entries) {
    seqs.push_back(entry.seq);
    add_step(line, entry, state);
    if (const auto* advised = std::get_if<job::Advised>(&entry.body)) {
      line["advice"] = advice_of(*advised);
    }
    if (const auto* taken = std::get_if<job::TakenUp>(&entry.body)) {
      line["unproven"] = taken->unproven;
    }
  }
  line["entries"] = std::move(seqs);
  Json shims = Json::object();
  for (const auto& [side, shim] : state.shims) {
    shims[std::string(sheet::name_of(side))] = shim;
  }
  line["shims"] = std::move(shims);
  const sheet::Step* next = state.next_step();
  line["next"] = next == nullptr ? Json() : Json(next->id);
  line["job_state"] = state.sealed ? "sealed" : state.closed ? "closed" : state.parked ? "parked" : "open";
  return brought_out(line);
}

std::string refused_line(std::size_t command, const Error& error) {
  return brought_out(Json{{"command", command},
                          {"accepted", false},
                          {"code", error.code},
                          {"place", error.place},
                          {"reason", error.message.in_english()}});
}

std::string vehicle_key(const job::OpenJob& command) {
  return vehicle::folded_key(command.vehicle_typed);
}

}  // namespace shimwright::cli
