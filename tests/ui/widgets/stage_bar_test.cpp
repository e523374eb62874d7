#include "shimwright/widgets/stage_bar.h"

#include <catch2/catch.hpp>

#include "painted.h"

using namespace shimwright;
using widgets::StageLook;

TEST_CASE("a stage bar shows done, waiting and held, and says how many are done") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    widgets::StageBar bar;
    CHECK(bar.accessibleName() == "0 of 0 stages done");
    test::painted(bar, {120, 12});
    bar.set_stages({StageLook::done, StageLook::done, StageLook::here, StageLook::to_do});
    CHECK(bar.accessibleName() == "2 of 4 stages done");
    for (const int width : {120, 600, 1200}) {
      const QImage image = test::painted(bar, {width, 12});
      CHECK(test::count_of(image, colours.blue) > width * 4);
      CHECK(test::count_of(image, colours.brick) == 0);
    }
    bar.set_stages({StageLook::done, StageLook::held, StageLook::waiting});
    const QImage image = test::painted(bar, {600, 12});
    CHECK(test::count_of(image, colours.brick) > 1000);
    CHECK(test::count_of(image, colours.amber) > 1000);
    bar.set_stages(std::vector<StageLook>(60, StageLook::to_do));
    test::painted(bar, {120, 12});
  });
}
