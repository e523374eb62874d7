#include <catch2/catch.hpp>

#include "bench.h"
#include "shimwright/job/to_decide.h"

namespace shimwright::job::test {

namespace {

const std::string digest(64, 'a');

Bench closed_job() {
  Bench bench;
  bench.answer_up_to("sign-checker").answer("sign-checker");
  return bench;
}

Bench sealed_job() {
  Bench bench = closed_job();
  bench.take(SealJob{digest, signers_of(bench.state)});
  return bench;
}

}  // namespace

TEST_CASE("A closed job takes its seal, and keeps its signatures") {
  const Bench bench = sealed_job();
  REQUIRE(bench.state.sealed);
  CHECK(*bench.state.sealed == bench.last_seq());
  CHECK(bench.step("sign-technician") == "accepted");
  CHECK(bench.step("sign-checker") == "accepted");
  CHECK(bench.state.closed);
  const auto& sealed = std::get<Sealed>(bench.state.entries.back().body);
  CHECK(sealed.digest == digest);
  CHECK(sealed.signers == signers_of(bench.state));
}

TEST_CASE("A sealed job takes addenda and nothing else") {
  Bench bench = sealed_job();
  const auto before = bench.state.steps;
  for (const Command& command :
       {Command(DoStep{"gearbox-up"}), Command(Note{std::nullopt, "a note"}), Command(Withdraw{1, "no"}),
        Command(Withdraw{bench.last_seq(), "not sealed"}), Command(Park{"rings", ""}), Command(HandOver{"RT", ""}),
        Command(BeginAssembly{{}, "a noise"}), Command(Sign{"sign-checker"}),
        Command(SealJob{digest, signers_of(bench.state)})}) {
    CHECK(bench.refusal(command) == "sealed");
  }
  bench.take(AddAddendum{"found later", "0.1 l of oil topped up"}).take(AddAddendum{"again", "and once more"});
  CHECK(bench.state.steps == before);
  CHECK(bench.state.withdrawn.empty());
  CHECK(bench.refusal(AddAddendum{"", "what"}) == "reason_missing");
  CHECK(bench.refusal(AddAddendum{"why", " "}) == "text_missing");
}

TEST_CASE("Before its end a job takes neither seal nor addendum") {
  Bench bench;
  CHECK(bench.refusal(SealJob{digest, {}}) == "not_decided");
  CHECK(bench.refusal(AddAddendum{"why", "what"}) == "not_sealed");
  CHECK(closed_job().refusal(AddAddendum{"why", "what"}) == "closed");
}

TEST_CASE("A second seal entry in an old store changes nothing") {
  Bench bench = sealed_job();
  const JobState twice =
      evolve(bench.state, {bench.last_seq() + 1, bench.context.now, "MK", Sealed{std::string(64, 'b'), {}}});
  CHECK(twice.sealed == bench.state.sealed);
}

}  // namespace shimwright::job::test
