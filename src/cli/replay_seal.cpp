#include "replay_seal.h"

#include <algorithm>
#include <utility>

#include "shimwright/job/to_decide.h"
#include "shimwright/store/seal.h"
#include "shimwright/store/signing.h"

namespace shimwright::cli {

namespace {

record::Pin pin_of(const std::string& person, const KnownHere& known) {
  const auto found = known.pins.find(person);
  std::string typed = found == known.pins.end() ? std::string() : found->second;
  return record::Pin::taken_from(typed);
}

/// A script's PINs stand in it for all to read: a costly key under them keeps nobody out.
store::SigningRules rules_for_open_pins() {
  store::SigningRules rules;
  rules.cost = {1, std::uint64_t{1} * 1024 * 1024};
  return rules;
}

/// A PIN that is there stays as it is.
Result<void> has_a_pin(store::Store& store, const std::string& person, const KnownHere& known, const store::By& by) {
  if (known.pins.count(person) == 0) {
    return {};
  }
  auto keys = store::signing_keys(store);
  if (!keys) {
    return tl::make_unexpected(keys.error());
  }
  const bool there = std::any_of(keys->begin(), keys->end(),
                                 [&](const store::PersonsKey& each) { return each.person == person && each.has_pin; });
  return there ? Result<void>() : store::set_pin(store, person, pin_of(person, known), by, rules_for_open_pins());
}

Result<void> signed_by_all(store::Store& store, const store::JobInHand& hand, const job::Command& command,
                           const KnownHere& known, const store::By& by) {
  const auto* addendum = std::get_if<job::AddAddendum>(&command);
  const std::vector<std::string> signers =
      addendum != nullptr ? std::vector<std::string>{by.person} : job::signers_of(hand.state());
  std::vector<store::SealPin> pins;
  for (const std::string& person : signers) {
    if (auto has = has_a_pin(store, person, known, by); !has) {
      return has;
    }
    pins.push_back({person, pin_of(person, known)});
  }
  if (addendum != nullptr) {
    auto added = store::add_addendum(store, hand.id(), addendum->reason, addendum->text, pins.front().pin, by);
    return added ? Result<void>() : tl::make_unexpected(added.error());
  }
  auto sealed = store::seal_job(store, hand.id(), pins, by);
  return sealed ? Result<void>() : tl::make_unexpected(sealed.error());
}

}  // namespace

bool needs_pin(const job::Command& command) {
  return std::holds_alternative<job::SealJob>(command) || std::holds_alternative<job::AddAddendum>(command);
}

Result<std::vector<job::Entry>> sign_with_pins(store::Store& store, store::JobInHand& hand, const job::Command& command,
                                               const KnownHere& known, const store::By& by) {
  const auto before = static_cast<std::ptrdiff_t>(hand.state().entries.size());
  if (auto done = signed_by_all(store, hand, command, known, by); !done) {
    return tl::make_unexpected(done.error());
  }
  auto again = store::JobInHand::load(store, hand.id());
  if (!again) {
    return tl::make_unexpected(again.error());
  }
  hand = std::move(*again);
  const std::vector<job::Entry>& all = hand.state().entries;
  return std::vector<job::Entry>(all.begin() + before, all.end());
}

}  // namespace shimwright::cli
