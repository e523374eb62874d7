#include "shimwright/job/decide.h"

#include "desk.h"

namespace shimwright::job {

namespace {

/// What may be asked while a job lies parked.
bool while_parked(const Command& command) {
  return std::holds_alternative<TakeUp>(command) || std::holds_alternative<Note>(command) ||
         std::holds_alternative<HandOver>(command);
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
  if (state.closed) {
    return refuse("closed", "",
                  SHIMWRIGHT_TEXT("job", "This job is signed and closed: nothing in it changes any more."));
  }
  if (state.parked && !while_parked(command)) {
    return refuse("parked", "", SHIMWRIGHT_TEXT("job", "This job is parked, waiting for {0}: take it up first."),
                  {state.parked->waits_for});
  }
  return {};
}

}  // namespace

Result<std::vector<Entry>> decide(const JobState& state, const Command& command, const Context& context) {
  if (auto takes = job_takes_commands(state, command, context); !takes) {
    return tl::make_unexpected(takes.error());
  }
  const Desk desk{state, context};
  auto bodies = std::visit([&](const auto& each) { return decide_on(desk, each); }, command);
  if (!bodies) {
    return tl::make_unexpected(bodies.error());
  }
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
