#include <algorithm>

#include <catch2/catch.hpp>

#include "bench.h"
#include "round.h"

/// How each kind of step is answered so that it is accepted.
namespace shimwright::job::test {

namespace {

class Answerer {
 public:
  Answerer(Bench& bench, const sheet::Step& step) : bench_(bench), step_(step) {}

  void operator()(const sheet::DoStep&) const { bench_.take(DoStep{step_.id}); }
  void operator()(const sheet::CheckStep&) const { bench_.take(CheckStep{step_.id, true, ""}); }
  void operator()(const sheet::TextStep&) const { bench_.take(WriteText{step_.id, "as it should be"}); }

  void operator()(const sheet::ChooseStep& choose) const {
    const auto accepted = std::find_if(choose.choices.begin(), choose.choices.end(),
                                       [](const sheet::Choice& each) { return each.accepted; });
    bench_.take(ChooseAnswer{step_.id, accepted->id});
  }

  void operator()(const sheet::ReadStep& read) const {
    EnterReadings enter{step_.id, {}};
    for (const sheet::Channel& channel : read.channels) {
      enter.readings.push_back(good(channel));
    }
    bench_.take(enter);
  }

  void operator()(const sheet::PeakStep& peak) const { bench_.take(EnterPeak{step_.id, good(peak.channel)}); }

  void operator()(const sheet::PartStep& part) const {
    FitParts fit{step_.id, {}};
    for (const std::string& each : part.parts) {
      fit.parts.push_back({each, "", 1, ""});
    }
    bench_.take(fit);
  }

  void operator()(const sheet::PhotoStep& photo) const {
    for (int count = 0; count < photo.least; ++count) {
      bench_.take(AddPhoto{step_.id, std::string(64, 'a'), "image/jpeg", 1000, ""});
    }
  }

  void operator()(const sheet::GaugeFitStep&) const {
    const auto& tray = bench_.state.sheets.spec->side(*step_.side).tray;
    const auto own = std::find_if(tray.begin(), tray.end(), [&](const auto& each) { return each.id == wanted(); });
    bench_.try_shim(step_.id, std::next(own)->id, Fit::tight).try_shim(step_.id, own->id, Fit::snug);
    bench_.take(ChooseShim{step_.id, wanted(), ""});
  }

  void operator()(const sheet::DepthStep&) const {
    const std::string depth = *step_.side == Side::lower ? "5.05" : "4.70";  // less 2.90 and, below, 0.35: 1.80
    bench_.take(EnterDepths{step_.id, {depth, depth}, "2.90", "+0.02", "depth_gauge"});
    bench_.take(ChooseShim{step_.id, wanted(), ""});
  }

  void operator()(const sheet::FloatStep& step) const {
    if (step.as_found && !bench_.state.sheets.spec->side(*step_.side).disc_float.as_found) {
      bench_.take(SayNotRequired{step_.id, "the method has no float as found"});
      return;
    }
    bench_.float_twice(step_.id, {"0.55", "0.54", "0.56"});
  }

  void operator()(const sheet::TeachInStep& teach_in) const {
    TryTeachIn attempt{step_.id, true, {}, "", ""};
    for (const sheet::Channel& channel : teach_in.channels) {
      attempt.values.push_back({channel.id, "9.0", good(channel).text});
    }
    bench_.take(attempt);
  }

  void operator()(const sheet::SignStep& sign) const {
    bench_.context.person = sign.signer == sheet::Signer::checker ? "RT" : "MK";
    bench_.take(Sign{step_.id});
  }

 private:
  [[nodiscard]] const std::string& wanted() const { return bench_.shim.at(*step_.side); }

  [[nodiscard]] TypedReading good(const sheet::Channel& channel) const {
    TypedReading reading{channel.id, "2", ""};
    if (channel.instrument) {
      reading.instrument = std::string(sheet::name_of(*channel.instrument));
    }
    const bool of_shim = step_.role == sheet::Role::old_shim || step_.role == sheet::Role::new_shim;
    if (of_shim) {
      reading.text = wanted();
    } else if (channel.signed_value) {
      reading.text = "+0.02";
    } else if (channel.equals) {
      const Reading* other = latest_reading(bench_.state, channel.equals->step, channel.equals->channel);
      reading.text = quantity::digits_of(other->number);
    } else if (channel.limit) {
      const sheet::Limit& limit = bench_.state.sheets.spec->limits.at(*channel.limit);
      const std::int64_t edge = limit.most ? *limit.most : *limit.least;
      reading.text = quantity::digits_of({edge, quantity::most_decimals(limit.unit), limit.unit});
    }
    return reading;
  }

  Bench& bench_;
  const sheet::Step& step_;
};

}  // namespace

Bench& Bench::answer(const std::string& step_id) {
  const sheet::Step* step = state.sheets.job->find(step_id);
  REQUIRE(step != nullptr);
  std::visit(Answerer(*this, *step), step->body);
  INFO("answering " << step_id);
  CHECK(passed(state.step(step_id)));
  return *this;
}

Bench& Bench::answer_up_to(const std::string& step_id) {
  for (const sheet::Step* each : state.sheets.job->steps()) {
    if (each->id == step_id) {
      return *this;
    }
    if (!passed(state.step(each->id))) {
      answer(each->id);
    }
  }
  FAIL("no step " + step_id);
  return *this;
}

}  // namespace shimwright::job::test
