#include "step_body_reader.h"

#include <catch2/catch.hpp>

#include "sheet_files.h"

using namespace shimwright::sheet;
using shimwright::quantity::Unit;

namespace {

template <class Body>
Body body_of(const std::string& step_id) {
  const JobSheet sheet = test::good_job_sheet(test::test_file("small_job_sheet.json"));
  const Step* step = sheet.find(step_id);
  REQUIRE(step != nullptr);
  const Body* body = std::get_if<Body>(&step->body);
  REQUIRE(body != nullptr);
  return *body;
}

}  // namespace

TEST_CASE("A choice is accepted unless it says otherwise") {
  const auto choices = body_of<ChooseStep>("decide").choices;
  REQUIRE(choices.size() == 2);
  CHECK(choices[0].accepted);
  CHECK_FALSE(choices[1].accepted);
}

TEST_CASE("Channels have unit, limit, instrument, sign and what they must equal") {
  const auto found = body_of<ReadStep>("plugs-out").channels;
  REQUIRE(found.size() == 2);
  CHECK(found[0].unit == Unit::piece);
  CHECK(found[0].equals == ChannelName{"plugs-in", "plugs"});
  CHECK_FALSE(found[0].signed_value);
  CHECK(found[1].signed_value);
  CHECK_FALSE(found[1].equals);
  CHECK(body_of<ReadStep>("plugs-in").channels[1].instrument == InstrumentKind::thermometer);
}

TEST_CASE("A peak has one channel and may have a limit of attempts") {
  const auto peak = body_of<PeakStep>("press");
  CHECK(peak.channel.id == "torque");
  CHECK(peak.channel.limit == "press_torque");
  CHECK(peak.channel.instrument == InstrumentKind::torque_wrench);
  CHECK(peak.attempts_limit == "pressings");
}

TEST_CASE("The other kinds are read") {
  CHECK(body_of<PartStep>("ring").parts == std::vector<std::string>{"pack-ring", "clutch-pack"});
  CHECK(body_of<PhotoStep>("pictures").least == 2);
  CHECK(body_of<FloatStep>("float-found").as_found);
  CHECK_FALSE(body_of<FloatStep>("float").as_found);
  CHECK(body_of<TeachInStep>("teach").channels.size() == 1);
  CHECK(body_of<SignStep>("sign").signer == Signer::technician);
  CHECK(body_of<DoStep>("lay-out") == DoStep{});
  CHECK(body_of<CheckStep>("look") == CheckStep{});
  CHECK(body_of<TextStep>("serial") == TextStep{});
  CHECK(body_of<GaugeFitStep>("fit") == GaugeFitStep{});
  CHECK(body_of<DepthStep>("depths") == DepthStep{});
}

TEST_CASE("One photo is asked for where nothing is said") {
  auto file = test::small_job_sheet();
  file["stages"][0]["steps"][6].erase("least");
  const JobSheet sheet = test::good_job_sheet(file.dump());
  CHECK(std::get<PhotoStep>(sheet.find("pictures")->body).least == 1);
}

TEST_CASE("Wrong bodies of steps are refused") {
  test::check_refusals("step_body_reader");
}
