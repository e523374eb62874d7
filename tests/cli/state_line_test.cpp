#include "state_line.h"

#include <catch2/catch.hpp>
#include <memory>
#include <nlohmann/json.hpp>

#include "sheets.h"
#include "shimwright/job/evolve.h"

using namespace shimwright;

namespace {

job::JobState begun() {
  auto sheet = sheet::read_job_sheet(*cli::shipped_job_sheet("dry-pack-renewal"));
  auto spec = sheet::read_spec_sheet(*cli::shipped_spec_sheet("D7-2"));
  REQUIRE(sheet);
  REQUIRE(spec);
  return job::begin({std::make_shared<const sheet::JobSheet>(*std::move(sheet)), "s",
                     std::make_shared<const sheet::SpecSheet>(*std::move(spec)), "p"});
}

}  // namespace

TEST_CASE("an accepted command tells its step, the next one and the job's state") {
  const job::Entry entry{1, {}, "MK", job::Checked{{"complaint-read-back", 1}, true, ""}};
  const job::JobState state = job::evolve(begun(), entry);
  const auto line = nlohmann::json::parse(cli::accepted_line(4, {entry}, state));
  CHECK(line["accepted"] == true);
  CHECK(line["command"] == 4);
  CHECK(line["entries"] == nlohmann::json{1});
  CHECK(line["step"] == "complaint-read-back");
  CHECK(line["state"] == "accepted");
  CHECK(line["next"] == state.next_step()->id);
  CHECK(line["job_state"] == "open");
}

TEST_CASE("open questions are told with their sentence") {
  const job::Entry entry{
      1, {}, "MK", job::Written{{"old-pack-serial", 1}, "26-1", {{"other_pack", {"Job {0} left another.", {"7"}}}}}};
  const job::JobState state = job::evolve(begun(), entry);
  const auto line = nlohmann::json::parse(cli::accepted_line(0, {entry}, state));
  CHECK(line["state"] == "held");
  CHECK(line["questions"][0]["text"] == "Job 7 left another.");
}

TEST_CASE("a refusal tells code, place and sentence, on one line whatever was typed") {
  const Error error{"unknown_shim", "large-gauge-fit", {"no shim {0}", {"a\nb\xff"}}};
  const std::string text = cli::refused_line(2, error);
  CHECK(text.find('\n') == std::string::npos);
  const auto line = nlohmann::json::parse(text);
  CHECK(line["accepted"] == false);
  CHECK(line["code"] == "unknown_shim");
}

TEST_CASE("a vehicle is looked up under its folded number") {
  job::OpenJob open;
  open.vehicle_typed = "test-vn00 20a000123";
  CHECK(cli::vehicle_key(open) == "TESTVN0020A000123");
}
