#include "shimwright/shim/depth.h"

#include <rapidcheck.h>
#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

#include "shim_cases.h"

using namespace shimwright::shim;
using namespace shimwright::shim::tests;

namespace {

struct Row {
  std::int64_t required_um;
  DepthState state;
  std::optional<std::string> shim;
  std::vector<std::string> candidates;
};

/// Readings of exactly that length, with u_required of √2 times the reading's.
void check_rows(const Tray& tray, const std::optional<std::vector<DepthBin>>& bins, double u_reading_mm,
                const std::vector<Row>& rows) {
  for (const auto& row : rows) {
    INFO(row.required_um << " um");
    DepthCase depth = required_um({row.required_um});
    depth.u_reading_mm = u_reading_mm;
    depth.bins = bins;
    const auto answer = advise_depth(tray, depth);
    CHECK(std::string(name_of(answer.state)) == std::string(name_of(row.state)));
    CHECK(answer.shim == row.shim);
    CHECK(answer.candidates == row.candidates);
  }
}

const std::optional<std::string> none;

}  // namespace

TEST_CASE("readings further apart than allowed are tilted and answer their spread only") {
  DepthCase depth = required_um({5250, 5149});
  const auto tilted = advise_depth(thirteen(), depth);
  CHECK(tilted.state == DepthState::tilted);
  CHECK(tilted.spread == um(101));
  CHECK_FALSE(tilted.required_mm);
  CHECK_FALSE(tilted.u_required_mm);
  CHECK_FALSE(tilted.shim);
  depth = required_um({1550, 1450});
  CHECK(advise_depth(thirteen(), depth).state == DepthState::shim);
}

TEST_CASE("without bins the nearest shim is picked, on a tie the thinner") {
  // Borders every 150 µm from 1125; u_required 0.1 µm, so that only the border itself is one.
  check_rows(thirteen(), {}, 0.00005,
             {
                 {1050, DepthState::shim, "1050", {}},
                 {1124, DepthState::shim, "1050", {}},
                 {1125, DepthState::edge, "1050", {"1050", "1200"}},
                 {1126, DepthState::shim, "1200", {}},
                 {0, DepthState::impossible, none, {}},
                 {-5, DepthState::impossible, none, {}},
                 {974, DepthState::outside, none, {}},
                 {975, DepthState::shim, "1050", {}},
                 {2925, DepthState::shim, "2850", {}},
                 {2926, DepthState::outside, none, {}},
             });
}

TEST_CASE("near a border both shims are candidates") {
  // 2·u_required = 2·0.010·√2 = 28.28 µm around 1275.
  check_rows(thirteen(), {}, 0.010,
             {
                 {1246, DepthState::shim, "1200", {}},
                 {1247, DepthState::edge, "1200", {"1200", "1350"}},
                 {1303, DepthState::edge, "1350", {"1200", "1350"}},
                 {1304, DepthState::shim, "1350", {}},
             });
}

TEST_CASE("a size missing in the tray is far, with its candidates where it is an edge as well") {
  const Tray gap{{"a", um(1000), 0.003}, {"b", um(1100), 0.003}, {"d", um(1400), 0.003}, {"e", um(1500), 0.003}};
  check_rows(gap, {}, 0.0005,
             {
                 {1150, DepthState::shim, "b", {}},
                 {1151, DepthState::far, "b", {}},
                 {1250, DepthState::far, "b", {"b", "d"}},
                 {1251, DepthState::far, "d", {"b", "d"}},
                 {1349, DepthState::far, "d", {}},
                 {1350, DepthState::shim, "d", {}},
             });
}

TEST_CASE("a tray of one fits within twice the uncertainty and is never far") {
  // 2·u_required = 28.28 µm.
  check_rows(even_tray(1, 1500, 1), {}, 0.010,
             {{1471, DepthState::outside, none, {}},
              {1472, DepthState::shim, "1500", {}},
              {1528, DepthState::shim, "1500", {}},
              {1529, DepthState::outside, none, {}}});
  check_rows(even_tray(1, 1500, 1), std::vector<DepthBin>{{um(1000), um(2000), "1500"}}, 0.010,
             {{1999, DepthState::shim, "1500", {}}, {2001, DepthState::outside, none, {}}});
}

TEST_CASE("bins pick, touch, leave gaps and end") {
  const std::vector<DepthBin> bins{{um(1000), um(1125), "1050"},
                                   {um(1125), um(1275), "1200"},
                                   {um(1285), um(1425), "1350"},
                                   {um(1525), um(1600), "1500"},
                                   {um(1600), um(1700), "1500"}};
  // u_required 0.7 µm: narrow gaps up to 20 µm, the one of 100 µm is wide.
  check_rows(thirteen(), bins, 0.0005,
             {
                 {999, DepthState::outside, none, {}},
                 {1000, DepthState::shim, "1050", {}},
                 {1125, DepthState::edge, "1050", {"1050", "1200"}},
                 {1126, DepthState::edge, "1200", {"1050", "1200"}},
                 {1127, DepthState::shim, "1200", {}},
                 {1274, DepthState::edge, "1200", {"1200", "1350"}},
                 {1280, DepthState::edge, none, {"1200", "1350"}},
                 {1286, DepthState::edge, "1350", {"1200", "1350"}},
                 {1300, DepthState::shim, "1350", {}},
                 {1425, DepthState::edge, "1350", {"1350", "1500"}},
                 {1426, DepthState::far, none, {"1350", "1500"}},
                 {1475, DepthState::far, none, {"1350", "1500"}},
                 {1525, DepthState::edge, "1500", {"1350", "1500"}},
                 {1575, DepthState::shim, "1500", {}},
                 {1576, DepthState::far, "1500", {}},
                 {1700, DepthState::far, "1500", {}},
                 {1701, DepthState::outside, none, {}},
             });
}

TEST_CASE("a gap is wide by the uncertainty too") {
  const std::vector<DepthBin> bins{{um(1000), um(1100), "1050"}, {um(1150), um(1275), "1200"}};
  // 4·u_required is 48.1 µm with 0.0085 and 50.9 µm with 0.009.
  check_rows(thirteen(), bins, 0.0085, {{1125, DepthState::far, none, {"1050", "1200"}}});
  check_rows(thirteen(), bins, 0.009, {{1125, DepthState::edge, none, {"1050", "1200"}}});
  const std::vector<DepthBin> narrow{{um(1000), um(1115), "1050"}, {um(1135), um(1275), "1200"}};
  check_rows(thirteen(), narrow, 0.0001, {{1125, DepthState::edge, none, {"1050", "1200"}}});
}

TEST_CASE("a border between bins of one shim is none, a gap between them has that shim only") {
  const std::vector<DepthBin> bins{{um(1000), um(1100), "1050"}, {um(1105), um(1120), "1050"}};
  check_rows(thirteen(), bins, 0.0005,
             {{1100, DepthState::shim, "1050", {}}, {1102, DepthState::edge, none, {"1050"}}});
}

TEST_CASE("candidates are thin to thick, also where the bins are not") {
  const std::vector<DepthBin> bins{{um(1000), um(1100), "1200"}, {um(1100), um(1200), "1050"}};
  check_rows(thirteen(), bins, 0.0005, {{1100, DepthState::edge, "1050", {"1050", "1200"}}});
}

TEST_CASE("more readings narrow the required length down to that of one reading") {
  CHECK(*advise_depth(thirteen(), required_um({1500})).u_required_mm == Approx(0.010 * std::sqrt(2.0)));
  CHECK(*advise_depth(thirteen(), required_um({1500, 1500})).u_required_mm == Approx(0.010 * std::sqrt(1.5)));
}

TEST_CASE("with next to no uncertainty the nearest shim is the answer") {
  CHECK(rc::check("nothing but the nearest", [] {
    const auto length = *rc::gen::inRange<std::int64_t>(980, 2920);
    DepthCase depth = required_um({length});
    depth.u_reading_mm = 1e-9;
    const auto answer = advise_depth(thirteen(), depth);
    RC_PRE(answer.state == DepthState::shim);
    RC_ASSERT(std::abs(std::stoll(*answer.shim) - length) <= 75);
  }));
}

TEST_CASE("the order of tray and readings does not matter") {
  CHECK(rc::check("turned round", [] {
    const auto first = *rc::gen::inRange<std::int64_t>(900, 3000);
    const auto second = first + *rc::gen::inRange<std::int64_t>(-90, 90);
    Tray turned = thirteen();
    std::reverse(turned.begin(), turned.end());
    const AdviseAnswer plain{{}, advise_depth(thirteen(), required_um({first, second})), {}, {}};
    const AdviseAnswer other{{}, advise_depth(turned, required_um({second, first})), {}, {}};
    RC_ASSERT(write_answer(plain) == write_answer(other));
  }));
}
