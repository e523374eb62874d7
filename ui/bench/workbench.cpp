#include "shimwright/bench/workbench.h"

#include <algorithm>
#include <utility>

#include "shimwright/vehicle/vehicle_number.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

namespace {

std::string key_of_vehicle(const job::OpenJob& command) {
  return vehicle::folded_key(command.vehicle_typed);
}

}  // namespace

Workbench::Workbench(store::Store& store, Clock clock, store::IdSource ids, QObject* parent)
    : QObject(parent), store_(&store), clock_(std::move(clock)), ids_(std::move(ids)) {}

void Workbench::set_person(const store::Person& person) {
  person_ = person;
  emit person_changed();
}

QString Workbench::initials_of(const std::string& person_id) const {
  const auto found =
      std::find_if(persons_.begin(), persons_.end(), [&](const auto& each) { return each.id == person_id; });
  return found == persons_.end() ? QString() : widgets::qt(found->initials);
}

Result<void> Workbench::read_persons() {
  auto persons = store_->registers().persons();
  if (!persons) {
    return tl::make_unexpected(persons.error());
  }
  persons_ = std::move(*persons);
  return {};
}

Result<void> Workbench::take(const std::string& job_id) {
  auto hand = store::JobInHand::load(*store_, job_id);
  if (!hand) {
    return tl::make_unexpected(hand.error());
  }
  auto context = hand->context(by());
  if (!context) {
    return tl::make_unexpected(context.error());
  }
  hand_ = std::make_unique<store::JobInHand>(std::move(*hand));
  context_ = std::move(*context);
  emit changed();
  return {};
}

Result<void> Workbench::open_new(const std::string& sheet_hash, const std::string& spec_hash,
                                 const job::OpenJob& command) {
  const store::By by_now = by();
  auto hand = store::JobInHand::begin(*store_, ids_.id(by_now.moment.at_ms), sheet_hash, spec_hash);
  if (!hand) {
    return tl::make_unexpected(hand.error());
  }
  auto context = hand->context(by_now, key_of_vehicle(command));
  if (!context) {
    return tl::make_unexpected(context.error());
  }
  if (auto entries = hand->execute(command, *context); !entries) {
    return tl::make_unexpected(entries.error());
  }
  // From here on the job is stored: it is in hand with what was known when it was decided.
  hand_ = std::make_unique<store::JobInHand>(std::move(*hand));
  context_ = std::move(*context);
  emit changed();
  return {};
}

void Workbench::lay_down() {
  hand_.reset();
  context_ = {};
}

Result<std::vector<job::Entry>> Workbench::send(const job::Command& command) {
  if (auto read = read_context(); !read) {
    return tl::make_unexpected(read.error());
  }
  auto entries = hand_->execute(command, context_);
  if (entries) {
    emit changed();
  }
  return entries;
}

Result<void> Workbench::read_context() {
  store::By by_now = by();
  const auto& entries = hand_->state().entries;
  by_now.moment.clock_went_back = !entries.empty() && by_now.moment.at_ms < entries.back().moment.at_ms;
  auto context = hand_->context(by_now);
  if (!context) {
    return tl::make_unexpected(context.error());
  }
  context_ = std::move(*context);
  return {};
}

}  // namespace shimwright::bench
