#include "depth_card.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("a depth card without a judgement says what is wanted") {
  bench::DepthCard card;
  card.show_nothing("Measure first.");
  CHECK(card.findChild<QLabel*>("depth-said")->text() == "Measure first.");
}

TEST_CASE("where the places differ too much, that stands in place of the sum") {
  job::Judgement judgement;
  judgement.advised.conclusion = job::Conclusion::tilted;
  judgement.advised.reason = {"Seat it.", {}};
  bench::DepthCard card;
  card.show_judgement(judgement, false);
  const auto* said = card.findChild<QLabel*>("depth-said");
  CHECK(said->text() == "Seat it.");
  CHECK_FALSE(said->isHidden());
}
