#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sections.h"

using namespace shimwright;
using namespace shimwright::record_test;
using job::ReadingVerdict;

namespace {

std::vector<record::Page> strip(const record::Record& record) {
  return pages_of([&](record::PageWriter& writer) { record::write_float_strip(writer, record); });
}

record::Record with_floats(std::vector<std::int64_t> floats, ReadingVerdict verdict) {
  Bench bench;
  bench.add(opened());
  bench.runs("lower-float", Side::lower, {"0.5", "0.5", "0.5"});
  bench.advise_float("lower-float", Side::lower, job::Conclusion::keep, floats, verdict);
  return record_of(bench);
}

}  // namespace

TEST_CASE("each disc shows its spots between the limits, guard zones hatched") {
  const auto pages = strip(record_of(finished_job()));
  CHECK(elements_of<record::Shape>(pages).size() == 6);
  CHECK(elements_of<record::Hatch>(pages).size() == 4);
  CHECK(has(pages, "0.25"));
  CHECK(has(pages, "0.85"));
  CHECK(broken_laws(pages).empty());
}

TEST_CASE("spots stand in proportion to their floats") {
  const auto shapes = elements_of<record::Shape>(strip(with_floats({300, 500, 700}, ReadingVerdict::within)));
  REQUIRE(shapes.size() == 3);
  CHECK(shapes[1].x_mm - shapes[0].x_mm == Approx(shapes[2].x_mm - shapes[1].x_mm));
  CHECK(shapes[0].x_mm < shapes[1].x_mm);
}

TEST_CASE("the guard is the guard factor times half the 95 % uncertainty, inside the limits") {
  const auto pages = strip(with_floats({300, 500, 700}, ReadingVerdict::within));
  const auto bars = elements_of<record::Rectangle>(pages);
  const auto hatches = elements_of<record::Hatch>(pages);
  REQUIRE(hatches.size() == 2);
  const double mm_per_um = bars.front().box.width_mm / 600;
  CHECK(hatches[0].box.width_mm == Approx(16.45 * mm_per_um));
  CHECK(hatches[0].box.x_mm == Approx(bars.front().box.x_mm));
}

TEST_CASE("spots far outside still lie on the page, with the shape of their verdict") {
  for (const auto& [floats, verdict, shape] :
       {std::tuple(std::vector<std::int64_t>{4000, 4100, 4200}, ReadingVerdict::too_large,
                   record::ShapeKind::triangle_up),
        std::tuple(std::vector<std::int64_t>{-900, 0, 10}, ReadingVerdict::too_small, record::ShapeKind::triangle_down),
        std::tuple(std::vector<std::int64_t>{900000, 0, 10}, ReadingVerdict::too_large,
                   record::ShapeKind::triangle_up)}) {
    const auto pages = strip(with_floats(floats, verdict));
    CHECK(broken_laws(pages).empty());
    for (const auto& each : elements_of<record::Shape>(pages)) {
      CHECK(each.kind == shape);
    }
  }
}

TEST_CASE("discs with limits of their own have strips of their own") {
  auto record = record_of(finished_job());
  record.floats.back().limits.most = quantity::micrometres(900);
  const auto pages = strip(record);
  CHECK(has(pages, "0.90"));
  CHECK(times(pages, "0.25") == 2);
}

TEST_CASE("nothing judged, nothing drawn") {
  CHECK(elements_of<record::Shape>(strip(record_of(open_job()))).empty());
  CHECK(strip(record::Record()).front().rows.empty());
}
