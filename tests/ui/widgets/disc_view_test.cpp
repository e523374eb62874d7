#include "shimwright/widgets/disc_view.h"

#include <catch2/catch.hpp>

#include "painted.h"

using namespace shimwright;
using widgets::Mark;

TEST_CASE("the disc shows its lining, its verdicts and which spot is next") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    widgets::DiscView disc;
    for (const int side : {140, 176, 300}) {
      disc.set_spots({{1, 0, Mark::too_large, false}, {2, 240, Mark::none, false}, {3, 120, Mark::none, false}}, 30.0);
      const QImage calm = test::painted(disc, {side, side});
      CHECK(test::count_of(calm, colours.lining) > 500);
      CHECK(test::count_of(calm, colours.brick) > 40);
      CHECK(test::count_of(calm, colours.blue) == 0);
      disc.set_spots({{1, 0, Mark::none, true}, {2, 240, Mark::none, false}}, std::nullopt);
      CHECK(test::count_of(test::painted(disc, {side, side}), colours.blue) > 50);
    }
  });
}

TEST_CASE("the disc says its verdicts, the next spot and where it stands highest") {
  widgets::DiscView disc;
  disc.set_spots({{1, 0, Mark::too_large, false}, {2, 240, Mark::none, true}, {3, 120, Mark::none, false}}, 30.4);
  CHECK(disc.accessibleDescription() ==
        "spot 1: too large; spot 2: to be measured now; stands highest at 30 degrees from the top, clockwise");
}
