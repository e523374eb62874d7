#include <catch2/catch.hpp>

#include "bench.h"

namespace shimwright::job::test {

TEST_CASE("A check not in order holds with what was found") {
  Bench bench;
  CHECK(bench.refusal(CheckStep{"vehicle-number", false, " "}) == "finding_missing");
  bench.take(CheckStep{"vehicle-number", false, "last figure differs"});
  CHECK(bench.step("vehicle-number") == "held");
  bench.take(CheckStep{"vehicle-number", true, ""});
  CHECK(bench.step("vehicle-number") == "accepted");
}

TEST_CASE("An answer is one of those shown") {
  Bench bench;
  CHECK(bench.refusal(ChooseAnswer{"complaint-gears", "third"}) == "unknown_choice");
  bench.take(ChooseAnswer{"complaint-gears", "odd"});
  CHECK(latest<Chosen>(bench.state, "complaint-gears")->accepted);
  bench.take(ChooseAnswer{"earlier-work", "cause-open"});
  CHECK(bench.step("earlier-work") == "held");
}

TEST_CASE("Parts are those of the step, with the sheet's number unless another is given") {
  Bench bench;
  bench.answer_up_to("new-pack");
  CHECK(bench.refusal(FitParts{"new-pack", {{"pack-ring", "", 1, ""}}}) == "unknown_part");
  CHECK(bench.refusal(FitParts{"new-pack", {{"no-part", "", 1, ""}}}) == "unknown_part");
  CHECK(bench.refusal(FitParts{"new-pack", {{"clutch-pack", "", 0, ""}}}) == "bad_quantity");
  CHECK(bench.refusal(FitParts{"new-pack", {{"clutch-pack", "", 1001, ""}}}) == "bad_quantity");
  CHECK(bench.refusal(FitParts{"new-pack", {}}) == "part_missing");
  bench.take(FitParts{"new-pack", {{"clutch-pack", "", 1, "B-7"}}});
  CHECK(latest<PartsFitted>(bench.state, "new-pack")->parts.front() == PartFitted{"clutch-pack", "DP-7714", 1, "B-7"});
  bench.take(FitParts{"new-pack", {{"clutch-pack", "DP-7714B", 1, ""}}});
  CHECK(latest<PartsFitted>(bench.state, "new-pack")->parts.front().number == "DP-7714B");
}

TEST_CASE("A step of several parts is done when each was renewed, be it one by one") {
  Bench bench(sheets_with_three_parts());
  bench.take(open_command()).answer_up_to("new-pack");
  bench.take(FitParts{"new-pack", {{"lever-set", "", 1, "L-4"}}});
  CHECK(bench.step("new-pack") == "in_work");
  CHECK(latest<PartsFitted>(bench.state, "new-pack")->parts.size() == 1);
  bench.take(FitParts{"new-pack", {{"lever-set", "", 1, "L-5"}, {"clutch-pack", "", 1, ""}}});
  CHECK(bench.step("new-pack") == "in_work");
  bench.take(FitParts{"new-pack", {{"guide-bolts", "", 6, ""}}});
  CHECK(bench.step("new-pack") == "accepted");
  bench.take(Withdraw{bench.seq_of("new-pack", "parts_fitted"), "wrong box"});
  CHECK(bench.step("new-pack") == "in_work");
}

TEST_CASE("Parts that may have moved since are renewed anew all at once") {
  Bench bench(sheets_with_three_parts());
  bench.take(open_command()).answer_up_to("new-pack");
  const FitParts all{"new-pack", {{"clutch-pack", "", 1, ""}, {"lever-set", "", 1, ""}, {"guide-bolts", "", 6, ""}}};
  bench.take(all);
  bench.state.steps["new-pack"] = Unproven{bench.last_seq()};
  CHECK(bench.refusal(FitParts{"new-pack", {{"clutch-pack", "", 1, ""}}}) == "part_missing");
  bench.take(all);
  CHECK(bench.step("new-pack") == "accepted");
}

TEST_CASE("One-time parts are asked for again at the next assembly") {
  Bench bench;
  bench.answer_up_to("hub-ring-seated").take(BeginAssembly{{}, "ring not home"});
  CHECK(bench.step("pack-ring-new") == "open");
  CHECK(bench.step("hub-ring-new") == "open");
  CHECK(bench.step("new-pack") == "accepted");
  bench.answer_up_to("pack-ring-new");
  bench.answer("pack-ring-new");
  CHECK(latest<PartsFitted>(bench.state, "pack-ring-new")->at.assembly == 2);
  CHECK(bench.state.live("pack-ring-new").size() == 2);
}

TEST_CASE("A photo is named by its hash and is no larger than is kept") {
  const Bench bench;
  const std::string hash(64, 'f');
  CHECK(bench.refusal(AddPhoto{"odometer", hash, "image/jpeg", 20'000'000, ""}).empty());
  CHECK(bench.refusal(AddPhoto{"odometer", hash, "image/jpeg", 20'000'001, ""}) == "bad_photo");
  CHECK(bench.refusal(AddPhoto{"odometer", hash, "image/jpeg", 0, ""}) == "bad_photo");
  CHECK(bench.refusal(AddPhoto{"odometer", std::string(63, 'f'), "image/jpeg", 1, ""}) == "bad_photo");
  CHECK(bench.refusal(AddPhoto{"odometer", std::string(64, 'F'), "image/jpeg", 1, ""}) == "bad_photo");
}

TEST_CASE("A text is written, not blank") {
  Bench bench;
  CHECK(bench.refusal(WriteText{"complaint-when", "\t"}) == "text_missing");
  bench.take(WriteText{"complaint-when", "cold, in the morning"});
  CHECK(bench.step("complaint-when") == "accepted");
}

TEST_CASE("Only a question that is open can be confirmed, and only once") {
  Bench bench;
  bench.context.previous_pack = PreviousPack{"HL-0977", "P-123", {}};
  bench.answer_up_to("old-pack-serial");
  CHECK(bench.refusal(Confirm{"old-pack-serial", "other_pack", ""}) == "no_such_question");
  bench.take(WriteText{"old-pack-serial", "P-9"}).take(Confirm{"old-pack-serial", "other_pack", "label reads P-9"});
  CHECK(bench.refusal(Confirm{"old-pack-serial", "other_pack", ""}) == "no_such_question");
  bench.take(Withdraw{bench.last_seq(), "no, look again"});
  CHECK(bench.step("old-pack-serial") == "held");
  CHECK(bench.refusal(Confirm{"old-pack-serial", "other_pack", ""}).empty());
}

TEST_CASE("Confirming a question of the engine brings its advice; another question none") {
  Bench bench;
  bench.answer_up_to("lower-float").float_twice("lower-float", {"-0.55", "-0.54", "-0.56"});
  const auto before = bench.last_seq();
  bench.take(Confirm{"lower-float", "dial_reversed", ""});
  CHECK(bench.last_seq() == before + 2);
  CHECK(bench.conclusion("lower-float") == "keep");
  bench.take(Withdraw{before + 1, "no, the stand slipped"});
  CHECK(bench.conclusion("lower-float") == "question");
  CHECK(bench.questions("lower-float") == std::vector<std::string>{"dial_reversed"});
}

}  // namespace shimwright::job::test
