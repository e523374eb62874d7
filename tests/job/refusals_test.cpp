#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>

#include <catch2/catch.hpp>

#include "bench.h"
#include "shimwright/job/to_decide.h"

/// Every refusal of the job layer, by its code: provoked, worded, and listed in docs/refusals.md.
namespace shimwright::job::test {

namespace {

using Provoke = Error (*)();

Error refused(const Bench& bench, const Command& command) {
  return bench.error(command).value_or(Error{});
}
Error at(const std::string& step, const Command& command) {
  Bench bench;
  bench.answer_up_to(step);
  return refused(bench, command);
}
Error at_depth(std::vector<std::string> readings, const std::string& stamp) {
  Bench bench("D6-1.json");
  bench.answer_up_to("large-depth");
  return refused(bench, EnterDepths{"large-depth", std::move(readings), "2.90", stamp, "depth_gauge"});
}
Error after(const Command& first, const Command& then) {
  return refused(Bench().take(first), then);
}
Error on_opening(OpenJob open) {
  return refused(Bench(shipped_sheets()), std::move(open));
}
EnterFloatRun run(int spot, const std::string& zero_after) {
  return {"lower-float", spot, "0", "0.55", zero_after, "dial_gauge"};
}
EnterReadings read(const std::string& step, const std::string& channel, const std::string& text,
                   const std::string& instrument) {
  return {step, {{channel, text, instrument}}};
}

Error nobody() {
  Bench bench;
  bench.context.person = "";
  return refused(bench, DoStep{"dust-away"});
}
Error no_number() {
  OpenJob open = open_command();
  open.number = "";
  return on_opening(open);
}
Error bad_date() {
  OpenJob open = open_command();
  open.build_date = "soon";
  return on_opening(open);
}
Error closed() {
  Bench bench;
  bench.answer_up_to("sign-checker").answer("sign-checker");
  return refused(bench, TakeUp{});
}
Error when_closed(const Command& command) {
  Bench bench;
  bench.answer_up_to("sign-checker").answer("sign-checker");
  return refused(bench, command);
}
Error sealed() {
  Bench bench;
  bench.answer_up_to("sign-checker").answer("sign-checker");
  return refused(bench.take(SealJob{std::string(64, 'a'), signers_of(bench.state)}), TakeUp{});
}
Error same_person() {
  Bench bench;
  bench.answer_up_to("sign-checker");
  return refused(bench, Sign{"sign-checker"});
}
Error open_points() {
  Bench bench;
  bench.answer_up_to("sign-technician").take(CheckStep{"leaks-and-levels", false, "a drop at the seal"});
  return refused(bench, Sign{"sign-technician"});
}
Error as_found_not_allowed() {
  Bench bench("D6-1.json");
  bench.answer_up_to("upper-float-as-found");
  return refused(bench, EnterFloatRun{"upper-float-as-found", 1, "0", "0.55", "", "dial_gauge"});
}
Error built_on() {
  Bench bench;
  bench.answer_up_to("bearings-seated").take(BeginAssembly{{}, "ring"});
  const auto begun = bench.last_seq();
  return refused(bench.answer("hub-ring-off"), Withdraw{begun, "no"});
}

Park parked_for(const std::string& waits_for) {
  Park park;
  park.waits_for = waits_for;
  return park;
}

std::map<std::string, Provoke> of_the_job() {
  return {
      {"no_person", nobody},
      {"already_open", [] { return refused(Bench(), open_command()); }},
      {"not_open", [] { return refused(Bench(shipped_sheets()), DoStep{"dust-away"}); }},
      {"closed", closed},
      {"sealed", sealed},
      {"parked",
       [] {
         return after(Park{"rings", ""}, DoStep{"battery-off"});
       }},
      {"not_parked", [] { return refused(Bench(), TakeUp{}); }},
      {"number_missing", no_number},
      {"bad_date", bad_date},
      {"unknown_step", [] { return refused(Bench(), DoStep{"no-such-step"}); }},
      {"not_asked",
       [] {
         return refused(Bench(), Deviate{"large-depth", "no"});
       }},
      {"hold_point", [] { return refused(Bench(), DoStep{"dust-away"}); }},
      {"wrong_kind", [] { return refused(Bench(), DoStep{"odometer"}); }},
      {"reason_missing",
       [] {
         return refused(Bench(), Deviate{"odometer", ""});
       }},
      {"required",
       [] {
         return refused(Bench(), SayNotRequired{"odometer", "no"});
       }},
      {"must_be_signed",
       [] {
         return at("sign-technician", Deviate{"sign-technician", "no"});
       }},
      {"open_points", open_points},
      {"technician_first", [] { return at("sign-technician", Sign{"sign-checker"}); }},
      {"same_person", same_person},
      {"control_character", [] { return refused(Bench(), parked_for("parts\n")); }},
      {"text_too_long",
       [] {
         return refused(Bench(), Note{std::nullopt, std::string(4001, 'x')});
       }},
      {"text_missing", [] { return refused(Bench(), Note{}); }},
      {"not_assembled",
       [] {
         return refused(Bench(), BeginAssembly{{}, "off"});
       }},
      {"unknown_entry",
       [] {
         return refused(Bench(), Withdraw{7, "no"});
       }},
      {"not_withdrawable",
       [] {
         return refused(Bench(), Withdraw{1, "no"});
       }},
      {"built_on", built_on},
  };
}

std::map<std::string, Provoke> of_the_seal() {
  return {
      {"not_decided",
       [] {
         return at("sign-checker", SealJob{std::string(64, 'a'), {}});
       }},
      {"bad_digest",
       [] {
         return when_closed(SealJob{"abc", {}});
       }},
      {"other_signers",
       [] {
         return when_closed(SealJob{std::string(64, 'a'), {"somebody"}});
       }},
      {"not_sealed",
       [] {
         return refused(Bench(), AddAddendum{"why", "what"});
       }},
  };
}

std::map<std::string, Provoke> of_answers() {
  return {
      {"finding_missing",
       [] {
         return refused(Bench(), CheckStep{"vehicle-number", false, ""});
       }},
      {"unknown_choice",
       [] {
         return refused(Bench(), ChooseAnswer{"complaint-gears", "ninth"});
       }},
      {"unknown_part",
       [] {
         return at("new-pack", FitParts{"new-pack", {{"pack-ring", "", 1, ""}}});
       }},
      {"bad_quantity",
       [] {
         return at("new-pack", FitParts{"new-pack", {{"clutch-pack", "", 0, ""}}});
       }},
      {"part_missing",
       [] {
         return at("new-pack", FitParts{"new-pack", {}});
       }},
      {"bad_photo",
       [] {
         return refused(Bench(), AddPhoto{"odometer", "abc", "image/png", 1, ""});
       }},
      {"no_such_question",
       [] {
         return refused(Bench(), Confirm{"odometer", "turn_missed", ""});
       }},
      {"unknown_channel", [] { return refused(Bench(), read("odometer", "speed", "1", "")); }},
      {"empty",
       [] {
         return refused(Bench(), EnterReadings{"odometer", {}});
       }},
      {"sign_missing", [] { return at("stamp-lower", read("stamp-lower", "stamp", "0.1", "")); }},
      {"unknown_instrument", [] { return at("stamp-lower", read("old-shim-lower", "thickness", "1.6", "")); }},
      {"wrong_instrument", [] { return at("stamp-lower", read("old-shim-lower", "thickness", "1.6", "multimeter")); }},
      {"value_missing",
       [] {
         return at("teach-in-lower", TryTeachIn{"teach-in-lower", true, {}, "", ""});
       }},
      {"unknown_shim",
       [] {
         return at("large-gauge-fit", TryShim{"large-gauge-fit", "9", Fit::snug});
       }},
      {"depth_missing", [] { return at_depth({"5.05"}, "0"); }},
      {"stamp_missing",
       [] {
         return at_depth({"5.05", "5.05"}, "");
       }},
      {"unknown_spot", [] { return at("lower-float", run(9, "")); }},
      {"zero_lost", [] { return at("lower-float", run(1, "0.10")); }},
      {"nothing_measured",
       [] {
         return at("lower-float", BeginSeries{"lower-float", {}, {}});
       }},
      {"as_found_not_allowed", as_found_not_allowed},
  };
}

std::map<std::string, Provoke> all() {
  auto table = of_the_job();
  table.merge(of_the_seal());
  table.merge(of_answers());
  return table;
}

std::string text_of_file(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

const std::filesystem::path root = SHIMWRIGHT_SOURCE_DIR;

std::set<std::string> codes_in_sources() {
  std::set<std::string> codes;
  const std::regex refusal("refuse\\(\\s*\"([a-z_]+)\"");
  for (const auto& each : std::filesystem::directory_iterator(root / "src/job")) {
    const bool reads_entries = each.path().filename().string().rfind("codec", 0) == 0;
    if (each.path().extension() != ".cpp" || reads_entries) {
      continue;
    }
    const std::string text = text_of_file(each.path());
    for (std::sregex_iterator at(text.begin(), text.end(), refusal), end; at != end; ++at) {
      codes.insert((*at)[1]);
    }
  }
  return codes;
}

}  // namespace

TEST_CASE("Every refusal can be provoked and says in a sentence what is in the way") {
  for (const auto& [code, provoke] : all()) {
    DYNAMIC_SECTION(code) {
      const Error error = provoke();
      CHECK(error.code == code);
      const std::string sentence = error.message.in_english();
      CHECK(sentence.find('{') == std::string::npos);
      CHECK(sentence.size() > 20);
    }
  }
}

namespace {

/// Names by which files know steps and parts, where they cannot be taken for a word.
std::vector<std::string> identifiers() {
  std::vector<std::string> names;
  const Sheets sheets = shipped_sheets();
  for (const sheet::Step* step : sheets.job->steps()) {
    names.push_back(step->id);
  }
  for (const sheet::PartItem& part : sheets.spec->parts) {
    names.push_back(part.id);
  }
  names.erase(std::remove_if(names.begin(), names.end(),
                             [](const std::string& each) { return each.find('-') == std::string::npos; }),
              names.end());
  return names;
}

}  // namespace

TEST_CASE("No refusal shows a person how files spell a thing") {
  const auto names = identifiers();
  REQUIRE(names.size() > 50);
  for (const auto& [code, provoke] : all()) {
    const std::string sentence = provoke().message.in_english();
    INFO(code << ": " << sentence);
    CHECK(sentence.find('_') == std::string::npos);
    for (const std::string& name : names) {
      INFO(name);
      CHECK(sentence.find(name) == std::string::npos);
    }
  }
}

TEST_CASE("Every kind of step says in words what it is answered with") {
  Bench bench;
  bench.answer_up_to("sign-technician");
  std::set<std::string> kinds;
  for (const sheet::Step* step : bench.state.sheets.job->steps()) {
    if (std::holds_alternative<NotAsked>(bench.state.step(step->id))) {
      continue;
    }
    const bool done = std::holds_alternative<sheet::DoStep>(step->body);
    const Command other = done ? Command(CheckStep{step->id, true, ""}) : Command(DoStep{step->id});
    const Error error = refused(bench, other);
    CHECK(error.code == "wrong_kind");
    CHECK(error.message.in_english().find('_') == std::string::npos);
    CHECK_FALSE(error.message.arguments.back().empty());
    kinds.insert(std::string(sheet::kind_of(step->body)));
  }
  CHECK(kinds.size() == 12);  // all but depth, which this gearbox does not ask
}

TEST_CASE("The table above holds every refusal of the sources, and the documents list each") {
  std::set<std::string> provoked;
  for (const auto& each : all()) {
    provoked.insert(each.first);
  }
  CHECK(codes_in_sources() == provoked);
  const std::string document = text_of_file(root / "docs/refusals.md");
  for (const std::string& code : provoked) {
    INFO(code);
    CHECK(document.find("| `" + code + "` |") != std::string::npos);
  }
}

}  // namespace shimwright::job::test
