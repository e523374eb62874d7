#include "shimwright/widgets/marks.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>
#include <vector>

#include "painted.h"

using namespace shimwright;
using widgets::Mark;

namespace {

const std::vector<Mark>& all_marks() {
  static const std::vector<Mark> all{Mark::within,    Mark::too_small, Mark::too_large, Mark::on_limit,
                                     Mark::not_equal, Mark::open,      Mark::in_work,   Mark::done,
                                     Mark::held,      Mark::deviation, Mark::unproven,  Mark::not_required};
  return all;
}

}  // namespace

TEST_CASE("each mark has a shape of its own, whatever its colour, and a word of its own") {
  test::in_both_schemes([](const widgets::Colours&) {
    for (const int size : {14, 28, 60}) {
      std::vector<QImage> shapes;
      std::set<QString> words;
      for (const Mark mark : all_marks()) {
        widgets::MarkView view(mark, size);
        const QImage shape = test::shape_of(test::painted(view, {size, size}));
        CHECK(std::find(shapes.begin(), shapes.end(), shape) == shapes.end());
        shapes.push_back(shape);
        words.insert(widgets::word_of(mark));
        CHECK(view.accessibleName() == widgets::word_of(mark));
      }
      CHECK(words.size() == all_marks().size());
    }
  });
  CHECK(widgets::word_of(Mark::none).isEmpty());
}

TEST_CASE("amber is filled with the same amber in both schemes") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    widgets::MarkView view(Mark::on_limit, 40);
    CHECK(test::count_of(test::painted(view, {40, 40}), colours.amber) > 300);
    view.set_mark(Mark::within);
    CHECK(test::count_of(test::painted(view, {40, 40}), colours.amber) == 0);
    CHECK(test::count_of(test::painted(view, {40, 40}), colours.blue) > 300);
  });
}

TEST_CASE("too small points down and too large points up") {
  const test::Dressed dressed(widgets::Scheme::light);
  const widgets::Colours& colours = widgets::colours_of(widgets::Scheme::light);
  widgets::MarkView view(Mark::too_large, 40);
  const auto upper_half = [&view, &colours] {
    return test::count_of(test::painted(view, {40, 40}).copy(0, 0, 40, 20), colours.brick);
  };
  const int up = upper_half();
  view.set_mark(Mark::too_small);
  CHECK(upper_half() > 2 * up);
}
