#include "shimwright/job/decide.h"

#include <algorithm>

#include "desk.h"
#include "shimwright/job/text_lengths.h"

namespace shimwright::job {

namespace {

/// What may be asked while a job lies parked.
bool while_parked(const Command& command) {
  return std::holds_alternative<TakeUp>(command) || std::holds_alternative<Note>(command) ||
         std::holds_alternative<HandOver>(command);
}

/// What a job that is at its end still takes: its seal, then addenda.
Result<void> end_takes(const JobState& state, const Command& command) {
  if (state.sealed && !std::holds_alternative<AddAddendum>(command)) {
    return refuse("sealed", "",
                  SHIMWRIGHT_TEXT("job", "This job is sealed: it takes addenda only, each signed by who writes it."));
  }
  if (!state.sealed && state.closed && !std::holds_alternative<SealJob>(command)) {
    return refuse("closed", "",
                  SHIMWRIGHT_TEXT("job", "This job is signed and closed: nothing in it changes any more."));
  }
  return {};
}

Result<void> job_takes_commands(const JobState& state, const Command& command, const Context& context) {
  if (is_blank(context.person)) {
    return refuse("no_person", "", SHIMWRIGHT_TEXT("job", "Nobody is at the bench: say who works first."));
  }
  const bool opens = std::holds_alternative<OpenJob>(command);
  if (opens && state.opened) {
    return refuse("already_open", "",
                  SHIMWRIGHT_TEXT("job", "This job is open already: begin another for another vehicle."));
  }
  if (!opens && !state.opened) {
    return refuse("not_open", "", SHIMWRIGHT_TEXT("job", "There is no job yet: open one first."));
  }
  if (auto takes = end_takes(state, command); !takes) {
    return takes;
  }
  if (state.parked && !while_parked(command)) {
    return refuse("parked", "", SHIMWRIGHT_TEXT("job", "This job is parked, waiting for {0}: take it up first."),
                  {state.parked->waits_for});
  }
  return {};
}

const Entry* entry_numbered(const JobState& state, std::int64_t seq) {
  const auto found =
      std::find_if(state.entries.begin(), state.entries.end(), [seq](const Entry& each) { return each.seq == seq; });
  return found == state.entries.end() ? nullptr : &*found;
}

bool only_accompanies(const EntryBody& body) {
  return std::holds_alternative<Noted>(body) || std::holds_alternative<PhotoTaken>(body) ||
         std::holds_alternative<Signed>(body) || std::holds_alternative<Sealed>(body) ||
         std::holds_alternative<AddendumAdded>(body);
}

/// What may come between the two signatures: the first was not given for it, or does not stand on it.
bool leaves_the_signature(const JobState& state, const EntryBody& body) {
  if (const auto* taken_back = std::get_if<Withdrawn>(&body)) {
    const Entry* target = entry_numbered(state, taken_back->entry);
    return target == nullptr || only_accompanies(target->body);
  }
  if (const auto* deviated = std::get_if<Deviated>(&body)) {  // the second signature, left out with a reason
    const sheet::Step* step = state.sheets.job->find(deviated->at.step);
    return step != nullptr && std::holds_alternative<sheet::SignStep>(step->body);
  }
  return only_accompanies(body) || std::holds_alternative<Parked>(body) || std::holds_alternative<TakenUp>(body) ||
         std::holds_alternative<HandedOver>(body);
}

/// The entry by which the technician signed; 0 where not signed, or closed.
std::int64_t technicians_signature(const JobState& state) {
  for (const sheet::Step* step : state.sheets.job->steps()) {
    const auto* sign = std::get_if<sheet::SignStep>(&step->body);
    const auto* accepted = std::get_if<Accepted>(&state.step(step->id));
    if (sign != nullptr && sign->signer == sheet::Signer::technician && accepted != nullptr) {
      return accepted->entry;
    }
  }
  return 0;
}

/// A signature stands for the job as it was: whatever changes it takes the signature back (docs/decisions.md).
void take_back_signature(const JobState& state, std::vector<EntryBody>& bodies) {
  const bool changes = std::any_of(bodies.begin(), bodies.end(),
                                   [&](const EntryBody& body) { return !leaves_the_signature(state, body); });
  const std::int64_t signature = changes ? technicians_signature(state) : 0;
  if (signature != 0) {
    bodies.emplace_back(Withdrawn{
        signature, SHIMWRIGHT_TEXT("job", "The job was changed after this signature: the technician signs again.")});
  }
}

}  // namespace

Result<std::vector<Entry>> decide(const JobState& state, const Command& command, const Context& context) {
  if (auto takes = job_takes_commands(state, command, context); !takes) {
    return tl::make_unexpected(takes.error());
  }
  if (auto lengths = check_text_lengths(command); !lengths) {
    return tl::make_unexpected(lengths.error());
  }
  const Desk desk{state, context};
  auto bodies = std::visit([&](const auto& each) { return decide_on(desk, each); }, command);
  if (!bodies) {
    return tl::make_unexpected(bodies.error());
  }
  take_back_signature(state, *bodies);
  std::vector<Entry> entries;
  std::int64_t seq = state.next_seq();
  for (EntryBody& body : *bodies) {
    entries.push_back({seq++, context.now, context.person, std::move(body)});
  }
  return entries;
}

std::vector<PrivateText> private_texts_of(const Command& command) {
  std::vector<PrivateText> texts;
  if (const auto* open = std::get_if<OpenJob>(&command)) {
    for (const auto* each : {&open->plate, &open->customer_reference, &open->complaint}) {
      if (*each) {
        texts.push_back(**each);
      }
    }
  }
  return texts;
}

}  // namespace shimwright::job
