#include "shimwright/widgets/pack_drawing.h"

#include <catch2/catch.hpp>
#include <set>

#include "painted.h"

using namespace shimwright;
using sheet::Drawing;
using widgets::PackDrawing;
using widgets::PackView;

namespace {

std::vector<Drawing> all_parts() {
  std::vector<Drawing> all;
  for (int at = static_cast<int>(Drawing::none) + 1; at <= static_cast<int>(Drawing::housing); ++at) {
    all.push_back(static_cast<Drawing>(at));
  }
  return all;
}

}  // namespace

TEST_CASE("every part a step can be about is drawn amber when it is in hand, on either side") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    PackDrawing drawing;
    std::set<QString> names;
    for (const Drawing part : all_parts()) {
      for (const sheet::Side live : {sheet::Side::lower, sheet::Side::upper}) {
        drawing.set_view({part, live, true, {{sheet::Side::lower, 1.65}}});
        INFO(sheet::name_of(part));
        CHECK(test::count_of(test::painted(drawing, {232, 460}), colours.amber) > 30);
      }
      names.insert(drawing.accessibleName());
    }
    CHECK(names.size() == all_parts().size());
    drawing.set_view({});
    for (const QSize size : {QSize(120, 200), QSize(232, 460), QSize(500, 300), QSize(700, 1400)}) {
      CHECK(test::count_of(test::painted(drawing, size), colours.amber) == 0);
    }
  });
}

TEST_CASE("the other side is pale, without a live side both are strong") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    PackDrawing drawing;
    const auto lining_of = [&](const PackView& view) {
      drawing.set_view(view);
      return test::count_of(test::painted(drawing, {232, 460}), colours.lining);
    };
    const int both = lining_of({Drawing::none, sheet::Side::lower, false, {}});
    const int lower = lining_of({Drawing::none, sheet::Side::lower, true, {}});
    CHECK(lower > 100);
    CHECK(both > lower + 100);
  });
}

TEST_CASE("a thicker shim is drawn thicker") {
  const test::Dressed dressed(widgets::Scheme::light);
  const widgets::Colours& colours = widgets::colours_of(widgets::Scheme::light);
  PackDrawing drawing;
  const auto amber_with = [&](double mm) {
    drawing.set_view({Drawing::large_shim, sheet::Side::lower, true, {{sheet::Side::lower, mm}}});
    return test::count_of(test::painted(drawing, {232, 460}), colours.amber);
  };
  CHECK(amber_with(2.1) > amber_with(1.6));
  CHECK(amber_with(1.6) > amber_with(1.3));
}
