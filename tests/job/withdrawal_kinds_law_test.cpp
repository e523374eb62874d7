#include <algorithm>

#include <catch2/catch.hpp>

#include "withdrawal.h"

namespace shimwright::job::test {

namespace {

/// Some answer to a step, right, wrong or refused.
class AnyAnswer {
 public:
  explicit AnyAnswer(const sheet::Step& step) : step_(step) {}

  Command operator()(const sheet::DoStep&) const { return DoStep{step_.id}; }
  Command operator()(const sheet::CheckStep&) const { return CheckStep{step_.id, yes(), "worn"}; }
  Command operator()(const sheet::TextStep&) const {
    return WriteText{step_.id, one_of<std::string>({"none", "P0811"})};
  }
  Command operator()(const sheet::ChooseStep& choose) const {
    return ChooseAnswer{step_.id, one_of(choose.choices).id};
  }
  Command operator()(const sheet::PeakStep& peak) const { return EnterPeak{step_.id, reading(peak.channel)}; }
  Command operator()(const sheet::PhotoStep&) const {
    return AddPhoto{step_.id, std::string(64, yes() ? 'a' : 'b'), "image/jpeg", 1000, ""};
  }
  Command operator()(const sheet::GaugeFitStep&) const {
    return yes() ? Command(TryShim{step_.id, one_of<std::string>({"1.55", "1.60", "1.65"}),
                                   one_of<Fit>({Fit::tight, Fit::snug, Fit::loose})})
                 : Command(ChooseShim{step_.id, "1.60", "by feel"});
  }
  Command operator()(const sheet::DepthStep&) const {
    return EnterDepths{
        step_.id, {one_of<std::string>({"5.05", "4.70"}), "5.05"}, "2.90", yes() ? "+0.02" : "", "depth_gauge"};
  }
  Command operator()(const sheet::FloatStep&) const {
    return EnterFloatRun{step_.id,    *rc::gen::inRange(1, 4), "0", one_of<std::string>({"0.55", "0.93"}), "",
                         "dial_gauge"};
  }
  Command operator()(const sheet::SignStep&) const { return Sign{step_.id}; }

  Command operator()(const sheet::ReadStep& read) const {
    EnterReadings enter{step_.id, {}};
    for (const sheet::Channel& channel : read.channels) {
      if (enter.readings.empty() || yes()) {
        enter.readings.push_back(reading(channel));
      }
    }
    return enter;
  }
  Command operator()(const sheet::PartStep& part) const {
    FitParts fit{step_.id, {}};
    for (const std::string& each : part.parts) {
      if (fit.parts.empty() || yes()) {
        fit.parts.push_back({each, "", 1, yes() ? "B-7" : ""});
      }
    }
    return fit;
  }
  Command operator()(const sheet::TeachInStep& teach_in) const {
    TryTeachIn attempt{step_.id, yes(), {}, "17", "too cold"};
    for (const sheet::Channel& channel : teach_in.channels) {
      attempt.values.push_back({channel.id, "9.0", one_of<std::string>({"9.2", "30.0"})});
    }
    return attempt;
  }

 private:
  static bool yes() { return *rc::gen::arbitrary<bool>(); }
  static TypedReading reading(const sheet::Channel& channel) {
    return {channel.id, one_of<std::string>({"0", "2", "21", "+0.02", "1.60", "100"}),
            channel.instrument ? std::string(sheet::name_of(*channel.instrument)) : std::string()};
  }

  const sheet::Step& step_;
};

/// About the steps from the tenth before the first open one to the third after it.
Command any_command(const JobState& state) {
  const std::vector<const sheet::Step*> steps = state.sheets.job->steps();
  const auto open =
      std::find_if(steps.begin(), steps.end(), [&](const auto* each) { return !passed(state.step(each->id)); });
  const std::ptrdiff_t at =
      std::clamp<std::ptrdiff_t>(open - steps.begin() + *rc::gen::inRange(-10, 4), 0, std::ssize(steps) - 1);
  const sheet::Step& step = *steps[static_cast<std::size_t>(at)];
  switch (*rc::gen::inRange(0, 14)) {
    case 0:
      return one_of<Command>({Deviate{step.id, "as agreed"}, SayNotRequired{step.id, "not on this one"}});
    case 1:
      return one_of<Command>({Park{"a ring", ""}, TakeUp{}, HandOver{"RT", ""}});
    case 2:
      return one_of<Command>({Note{step.id, "looked at twice"}, Note{std::nullopt, "rain"}});
    case 3:
      return one_of<Command>({BeginAssembly{{Side::lower}, "off"}, BeginAssembly{{Side::lower, Side::upper}, "off"}});
    default:
      return std::visit(AnyAnswer(step), step.body);
  }
}

void hold_the_law(const std::string& spec, const std::vector<std::string>& places) {
  for (const std::string& place : places) {
    INFO(place);
    Bench bench(spec);
    bench.answer_up_to(place);
    const auto from = std::max<std::int64_t>(1, bench.last_seq() - 8);
    CHECK(rc::check([&] {
      withdraw_one(random_job(bench.state, bench.context, any_command, *rc::gen::inRange(1, 14)), bench.context,
                   from + 1);
    }));
  }
}

}  // namespace

TEST_CASE("Withdrawing any kind of answer equals never having given it") {
  hold_the_law("D7-2.json", {"road-test-before", "new-pack", "levers-in-place", "press-peak", "lower-float",
                             "faults-before-start", "teach-in-lower", "no-open-hold-point"});
}

TEST_CASE("Withdrawing any kind of answer by depth equals never having given it") {
  hold_the_law("D6-2.json", {"stamp-lower", "large-depth", "small-shim-measured", "press-peak"});
}

}  // namespace shimwright::job::test
