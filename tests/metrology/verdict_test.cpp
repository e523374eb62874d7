#include "shimwright/metrology/verdict.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include "shimwright/metrology/normal.h"

using namespace shimwright::metrology;

namespace {

const Limits limits{0.25, 0.85};

}  // namespace

TEST_CASE("guarded decisions accept inside, reject outside and leave the bands open") {
  struct Row {
    double value;
    Verdict verdict;
  };
  const double guard = 0.02;
  for (const auto& row :
       {Row{0.27, Verdict::within}, Row{0.83, Verdict::within}, Row{0.55, Verdict::within},
        Row{0.269, Verdict::on_limit}, Row{0.831, Verdict::on_limit}, Row{0.23, Verdict::on_limit},
        Row{0.87, Verdict::on_limit}, Row{0.229, Verdict::too_small}, Row{0.871, Verdict::too_large}}) {
    INFO(row.value);
    CHECK(guarded_verdict(row.value, limits, guard) == row.verdict);
  }
}

TEST_CASE("a guard band of r times U bounds the chance of a wrong acceptance") {
  // JCGM 106:2012, 8.3.2: guard band w = r·U with U = 2u. With r = 1 a value at the acceptance limit conforms with
  // Φ(2) = 97.7 %; with a factor of 1.645 on u (r = 0.8225) with 95 %.
  const double u = 0.01;
  for (const auto& [factor, chance] : {std::pair{2.0, 0.97725}, std::pair{1.645, 0.95002}}) {
    const double guard = factor * u;
    const double at_acceptance_limit = limits.upper_mm - guard;
    CHECK(guarded_verdict(at_acceptance_limit, limits, guard) == Verdict::within);
    CHECK(guarded_verdict(at_acceptance_limit + 1e-6, limits, guard) == Verdict::on_limit);
    CHECK(probability_below(limits.upper_mm, at_acceptance_limit, u) == Approx(chance).epsilon(1e-5));
  }
}

TEST_CASE("rounding of binary fractions decides nothing") {
  CHECK(guarded_verdict(0.1 + 0.2, {0.3, 0.5}, 0.0) == Verdict::within);
  CHECK(guarded_verdict(0.3 - 1e-10, {0.3, 0.5}, 0.0) == Verdict::within);
  CHECK(guarded_verdict(0.3 - 1e-8, {0.3, 0.5}, 0.0) == Verdict::too_small);
}

TEST_CASE("guard bands that meet leave nothing within") {
  CHECK(guarded_verdict(0.55, limits, 0.31) == Verdict::on_limit);
  CHECK(guarded_verdict(0.55, limits, 0.30) == Verdict::within);
}

TEST_CASE("a disc is as bad as its worst spot, and mixed where two pull apart") {
  using enum Verdict;
  CHECK(disc_verdict({within, within, within}) == within);
  CHECK(disc_verdict({within, on_limit, within}) == on_limit);
  CHECK(disc_verdict({too_large, on_limit, within}) == too_large);
  CHECK(disc_verdict({within, on_limit, too_small}) == too_small);
  CHECK(disc_verdict({too_large, within, too_small}) == mixed);
  CHECK(disc_verdict({}) == on_limit);
}

TEST_CASE("verdicts have names both ways") {
  for (const auto verdict :
       {Verdict::within, Verdict::too_small, Verdict::too_large, Verdict::on_limit, Verdict::mixed}) {
    CHECK(verdict_named(name_of(verdict)) == verdict);
  }
  CHECK(name_of(Verdict::on_limit) == "on_limit");
  CHECK_FALSE(verdict_named("fine"));
}

TEST_CASE("a wider guard never turns a doubt into a decision") {
  CHECK(rc::check("on_limit stays on_limit", [] {
    const double value = *rc::gen::inRange(0, 1200) / 1000.0;
    const double guard = *rc::gen::inRange(0, 100) / 1000.0;
    const double wider = guard + *rc::gen::inRange(0, 100) / 1000.0;
    if (guarded_verdict(value, limits, guard) == Verdict::on_limit) {
      RC_ASSERT(guarded_verdict(value, limits, wider) == Verdict::on_limit);
    }
  }));
}
