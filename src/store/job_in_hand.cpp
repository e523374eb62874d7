#include "shimwright/store/job_in_hand.h"

#include "sheet_shelf.h"

namespace shimwright::store {

Result<JobInHand> JobInHand::begin(Store& store, std::string id, const std::string& sheet_hash,
                                   const std::string& spec_hash) {
  auto sheets = store.sheet_shelf().sheets(sheet_hash, spec_hash);
  if (!sheets) {
    return passed_on(sheets);
  }
  return JobInHand(store, std::move(id), job::begin(std::move(*sheets)));
}

Result<JobInHand> JobInHand::load(Store& store, std::string id) {
  auto loaded = store.load(id);
  if (!loaded) {
    return passed_on(loaded);
  }
  return JobInHand(store, std::move(id), job::fold(loaded->sheets, loaded->entries));
}

Result<job::Context> JobInHand::context(const By& by, const std::string& vehicle_key) const {
  return store_->context(id_, *state_.sheets.spec, state_.opened ? state_.opened->vehicle_key : vehicle_key, by);
}

Result<std::vector<job::Entry>> JobInHand::execute(const job::Command& command, const job::Context& context) {
  auto entries = job::decide(state_, command, context);
  if (!entries) {
    return entries;
  }
  const std::size_t before = state_.entries.size();
  for (const job::Entry& entry : *entries) {
    state_ = job::evolve(std::move(state_), entry);
  }
  if (auto appended = store_->append(id_, *entries, job::private_texts_of(command), state_); !appended) {
    go_back_to(before);
    return passed_on(appended);
  }
  return entries;
}

// Rare, so it may cost a fold; a copy of the state kept for this would cost every command.
void JobInHand::go_back_to(std::size_t entries) {
  std::vector<job::Entry> kept = std::move(state_.entries);
  kept.resize(entries);
  state_ = job::fold(std::move(state_.sheets), kept);
}

}  // namespace shimwright::store
