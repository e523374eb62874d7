#include <algorithm>
#include <set>

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;

namespace {

const Step& step(const JobSheet& sheet, const std::string& id) {
  INFO(id);
  const Step* found = sheet.find(id);
  REQUIRE(found != nullptr);
  return *found;
}

const std::string& stage_of(const JobSheet& sheet, const std::string& step_id) {
  const auto holds = [&step_id](const Stage& stage) {
    return std::any_of(stage.steps.begin(), stage.steps.end(),
                       [&step_id](const Step& each) { return each.id == step_id; });
  };
  const auto found = std::find_if(sheet.stages.begin(), sheet.stages.end(), holds);
  REQUIRE(found != sheet.stages.end());
  return found->id;
}

template <class Body>
std::vector<const Step*> steps_of(const JobSheet& sheet) {
  std::vector<const Step*> found;
  for (const Step* each : sheet.steps()) {
    if (std::holds_alternative<Body>(each->body)) {
      found.push_back(each);
    }
  }
  return found;
}

const Step* with_role(const JobSheet& sheet, Role role, std::optional<Side> side) {
  for (const Step* each : sheet.steps()) {
    if (each->role == role && each->side == side) {
      return each;
    }
  }
  return nullptr;
}

}  // namespace

TEST_CASE("The default sheet has twelve stages in the order of the work") {
  const JobSheet sheet = test::default_job_sheet();
  const std::vector<std::pair<std::string, std::string>> wanted{
      {"receive", "Receive"},       {"make-safe", "Remove, make safe"},    {"strip", "Strip and inspect"},
      {"renew", "Clean and renew"}, {"shim-large", "Shim, large bearing"}, {"shim-small", "Shim, small bearing"},
      {"press-on", "Press on"},     {"float-lower", "Float, lower disc"},  {"float-upper", "Float, upper disc"},
      {"close-up", "Close up"},     {"refit", "Refit and teach-in"},       {"hand-over", "Hand over"},
  };
  std::vector<std::pair<std::string, std::string>> found;
  for (const Stage& stage : sheet.stages) {
    found.emplace_back(stage.id, stage.title.in_english());
  }
  CHECK(found == wanted);
  CHECK(sheet.demonstration);
  CHECK(sheet.name == "dry-pack-renewal");
}

TEST_CASE("The default sheet has a manageable number of steps") {
  const auto steps = test::default_job_sheet().steps();
  CHECK(steps.size() >= 80);
  CHECK(steps.size() <= 120);
}

TEST_CASE("Every hold point of the job is there, and no other") {
  const JobSheet sheet = test::default_job_sheet();
  std::set<std::string> found;
  for (const Step* each : sheet.steps()) {
    if (each->hold_point) {
      found.insert(each->id);
    }
  }
  CHECK(found == std::set<std::string>{"diagnosis",           "diagnosis-reason",   "customer-consent",
                                       "high-voltage",        "input-shaft-seals",  "engine-rear-seal",
                                       "renew-list",          "large-gauge-fit",    "large-depth",
                                       "large-shim-measured", "small-gauge-fit",    "small-depth",
                                       "small-shim-measured", "pack-ring-seated",   "lower-float",
                                       "hub-ring-seated",     "upper-float",        "free-movement",
                                       "before-start",        "no-open-hold-point", "no-unread-fault"});
}

TEST_CASE("The pack comes off by steps that are asked again for a later assembly") {
  const JobSheet sheet = test::default_job_sheet();
  std::vector<std::string> found;
  for (const Step* each : sheet.steps()) {
    if (each->again == Again::strip) {
      CHECK(stage_of(sheet, each->id) == "strip");
      found.push_back(each->id);
    }
  }
  CHECK(found == std::vector<std::string>{"hub-ring-off", "hub-index", "hub-out", "pack-ring-off", "puller-set",
                                          "draw-off-peak", "pack-off-seen"});
}

TEST_CASE("From press-on to close-up every step belongs to an assembly, and shims to their side") {
  const JobSheet sheet = test::default_job_sheet();
  for (const Step* each : sheet.steps()) {
    const std::string& stage = stage_of(sheet, each->id);
    INFO(each->id);
    const bool assembling =
        stage == "press-on" || stage == "float-lower" || stage == "float-upper" || stage == "close-up";
    CHECK((each->again == Again::assembly) == assembling);
    CHECK((each->again == Again::side) == (stage == "shim-large" || stage == "shim-small"));
    if (each->again == Again::side) {
      CHECK(each->side == (stage == "shim-large" ? Side::lower : Side::upper));
    }
  }
}

TEST_CASE("From laying the bearings to the ring every step is unproven when left") {
  const JobSheet sheet = test::default_job_sheet();
  for (const Step* each : sheet.steps()) {
    INFO(each->id);
    const bool before_the_ring = stage_of(sheet, each->id) == "press-on" && each->id != "pack-ring-seated";
    CHECK(each->unproven_until == (before_the_ring ? std::optional<std::string>("pack-ring-seated") : std::nullopt));
  }
}

TEST_CASE("A float as found is measured before the pack comes off and holds nothing up") {
  const JobSheet sheet = test::default_job_sheet();
  for (const char* id : {"lower-float-as-found", "upper-float-as-found"}) {
    const Step& found = step(sheet, id);
    CHECK(std::get<FloatStep>(found.body).as_found);
    CHECK(found.may_be_not_required);
    CHECK_FALSE(found.hold_point);
    CHECK(stage_of(sheet, id) == "strip");
    CHECK(sheet.position_of(id) < sheet.position_of("hub-ring-off"));
  }
  CHECK(steps_of<FloatStep>(sheet).size() == 4);
}

TEST_CASE("Each side's shim is found by gauge or by depth, and measured") {
  const JobSheet sheet = test::default_job_sheet();
  for (const auto& found : {steps_of<GaugeFitStep>(sheet), steps_of<DepthStep>(sheet)}) {
    REQUIRE(found.size() == 2);
    CHECK(found[0]->side == Side::lower);
    CHECK(found[1]->side == Side::upper);
    for (const Step* each : found) {
      INFO(each->id);
      REQUIRE(each->only_for);
      CHECK(name_of(*each->only_for) == kind_of(each->body));
      CHECK(each->hold_point);
      CHECK(each->may_be_not_required);
      CHECK(each->again == Again::side);
    }
  }
}

TEST_CASE("Every role is filled, on both sides where it has one") {
  const JobSheet sheet = test::default_job_sheet();
  for (const Side side : {Side::lower, Side::upper}) {
    CHECK(stage_of(sheet, with_role(sheet, Role::old_shim, side)->id) == "strip");
    CHECK(with_role(sheet, Role::new_shim, side)->hold_point);
    const Step* stamp = with_role(sheet, Role::stamp, side);
    REQUIRE(stamp != nullptr);
    CHECK(stage_of(sheet, stamp->id) == "renew");
    CHECK(std::get<ReadStep>(stamp->body).channels.front().signed_value);
  }
  CHECK(with_role(sheet, Role::old_pack_serial, std::nullopt) != nullptr);
  CHECK(with_role(sheet, Role::new_pack_serial, std::nullopt) != nullptr);
}

TEST_CASE("Peaks, teach-ins, equal counts and signatures are where the job needs them") {
  const JobSheet sheet = test::default_job_sheet();
  const auto& press = std::get<PeakStep>(step(sheet, "press-peak").body);
  CHECK(press.channel.limit == "press_torque");
  CHECK(press.attempts_limit == "pressings_per_pack");
  CHECK(std::get<PeakStep>(step(sheet, "draw-off-peak").body).channel.limit == "draw_off_torque");
  CHECK(steps_of<TeachInStep>(sheet).size() == 2);
  CHECK(std::get<ReadStep>(step(sheet, "plugs-out").body).channels.front().equals ==
        ChannelName{"breathers-plugged", "plugs"});
  CHECK(std::get<ReadStep>(step(sheet, "locks-out").body).channels.front().equals == ChannelName{"locks-in", "locks"});
  const auto steps = sheet.steps();
  CHECK(std::get<SignStep>(steps[steps.size() - 2]->body).signer == Signer::technician);
  CHECK(std::get<SignStep>(steps.back()->body).signer == Signer::checker);
}

TEST_CASE("What can hurt is said where it can") {
  const JobSheet sheet = test::default_job_sheet();
  for (const char* id :
       {"road-test-before", "vehicle-secured", "high-voltage",  "selector-position", "pressure-let-down",
        "battery-off",      "oil-drained",     "gearbox-down",  "on-stand",          "hub-ring-off",
        "pack-ring-off",    "puller-set",      "dust-away",     "degreased",         "large-gauge-fit",
        "small-gauge-fit",  "pack-lowered",    "press-peak",    "pack-ring-new",     "levers-moved",
        "gearbox-up",       "supply-voltage",  "before-start",  "teach-in-lower",    "teach-in-upper",
        "road-test",        "draw-off-peak",   "flywheel-index"}) {
    CHECK_FALSE(step(sheet, id).cautions.empty());
  }
}

TEST_CASE("Every precaution leaves the last word to the maker or to local rules") {
  const JobSheet sheet = test::default_job_sheet();
  for (const Step* each : sheet.steps()) {
    for (const Caution& caution : each->cautions) {
      const std::string& text = caution.precaution.in_english();
      INFO(each->id << ": " << text);
      CHECK((text.find("service information") != std::string::npos || text.find("local rules") != std::string::npos));
    }
  }
}

TEST_CASE("The pack meets the flywheel before the gearbox comes flush") {
  const JobSheet sheet = test::default_job_sheet();
  CHECK(sheet.position_of("flywheel-index") < sheet.position_of("gearbox-up"));
  CHECK(sheet.position_of("gearbox-up") < sheet.position_of("housing-torques"));
}

TEST_CASE("Each step that finds a shim says when it is not required") {
  const JobSheet sheet = test::default_job_sheet();
  auto finding = steps_of<GaugeFitStep>(sheet);
  const auto by_depth = steps_of<DepthStep>(sheet);
  finding.insert(finding.end(), by_depth.begin(), by_depth.end());
  CHECK(finding.size() == 4);
  for (const Step* each : finding) {
    INFO(each->id);
    CHECK(each->may_be_not_required);
    CHECK(each->text.in_english().find("Not required only where the same pack, levers, pivots and bearings go back.") !=
          std::string::npos);
  }
}

TEST_CASE("The road test after the work is known by its role, and by its id on sheets of before there was one") {
  const JobSheet sheet = test::default_job_sheet();
  CHECK(with_role(sheet, Role::road_test, std::nullopt) == sheet.find("road-test-gears"));
  auto old = nlohmann::json::parse(test::shipped_file("sheets/dry-pack-renewal.json"));
  for (auto& stage : old["stages"]) {
    for (auto& each : stage["steps"]) {
      if (each.value("role", "") == "road_test") {
        each.erase("role");
      }
    }
  }
  CHECK(test::good_job_sheet(old.dump()) == sheet);
}
