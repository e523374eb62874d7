#include <limits>

#include <rapidcheck.h>

#include "shimwright/record/hash.h"
#include "shimwright/shim/advise_case.h"
#include "shimwright/store/registers.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* tray_id = "01930000-0000-7000-8000-000000000041";
constexpr const char* micrometer_id = "01930000-0000-7000-8000-000000000012";
constexpr const char* workshop_id = "01930000-0000-7000-8000-000000000051";

Tray measured_tray() {
  Tray tray{tray_id,
            "large",
            {{"1.60", quantity::Length(1601), 0.0021, 4}, {"1.65", quantity::Length(1650), 0.003, std::nullopt}}};
  tray.stock["1.60"] = {
      2,
      by_mk().moment.at_ms,
      {{{1600, 3, quantity::Unit::millimetre}, micrometer_id}, {{1602, 4, quantity::Unit::inch}, micrometer_id}}};
  return tray;
}

void enter_micrometer(Registers& registers) {
  went(registers.put(
      job::Instrument{micrometer_id, "micrometer 1", sheet::InstrumentKind::micrometer, 1, 2, std::nullopt, {}},
      by_mk()));
}

}  // namespace

TEST_CASE("a shim keeps its readings, its reorder level and the day of its count") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  enter_micrometer(registers);
  const Tray tray = measured_tray();
  went(registers.put(tray, by_mk()));
  const Tray kept = got(registers.trays()).front();
  CHECK(kept.stock == tray.stock);
  CHECK(got(registers.tray_named("large"))->stock == tray.stock);
  const std::string body = got(registers.changes("tray", tray_id)).front().body;
  CHECK(body.find("\"reorder_at\":2") != std::string::npos);
  CHECK(body.find(micrometer_id) != std::string::npos);
  Tray bare = tray;
  bare.stock.clear();
  went(registers.put(bare, by_mk(1)));
  CHECK(got(registers.trays()).front().stock.empty());
}

TEST_CASE("a shim that cannot be is refused, and the tray stays as it was") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  enter_micrometer(registers);
  went(registers.put(measured_tray(), by_mk()));
  const auto refusal = [&registers](const auto& change) {
    Tray tray = measured_tray();
    change(tray);
    const auto put = registers.put(tray, by_mk(1));
    return put ? std::string() : put.error().code + " " + put.error().place;
  };
  CHECK(refusal([](Tray& tray) { tray.shims[0].thickness = quantity::Length(0); }) == "bad_amount tray/1.60/thickness");
  CHECK(refusal([](Tray& tray) { tray.shims[0].count = -1; }) == "bad_amount tray/1.60/count");
  CHECK(refusal([](Tray& tray) { tray.stock["1.60"].reorder_at = -1; }) == "bad_amount tray/1.60/reorder_at");
  CHECK(refusal([](Tray& tray) { tray.shims[0].id.clear(); }) == "bad_item tray/shim");
  CHECK(refusal([](Tray& tray) { tray.shims[1].id = "1.60"; }) == "shim_twice tray/1.60");
  CHECK(refusal([](Tray& tray) { tray.name.clear(); }) == "bad_item tray/name");
  CHECK(got(registers.changes("tray", tray_id)).size() == 1);
  CHECK(got(registers.trays()).front().stock == measured_tray().stock);
}

TEST_CASE("a shim without uncertainty, and two that measure alike, are refused with what to do") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  const auto refusal = [&registers](double u_mm, std::int64_t second) {
    const Tray tray{
        tray_id, "large", {{"1.60", quantity::Length(1601), u_mm, 4}, {"1.65", quantity::Length(second), 0.003, 2}}};
    const auto put = registers.put(tray, by_mk());
    return put ? std::string() : put.error().code + " " + put.error().place + " " + put.error().message.in_english();
  };
  CHECK(refusal(0.0, 1650) ==
        "bad_amount tray/1.60/uncertainty Nothing is measured without uncertainty: enter the one of 1.60, or readings "
        "with a micrometer.");
  CHECK(refusal(0.003, 1601) ==
        "shim_alike tray/1.65/thickness 1.60 and 1.65 measure alike: keep one of them here, with the count of both.");
  CHECK(refusal(0.003, 1602).empty());
}

TEST_CASE("what is put as a tray the engine takes") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  int put = 0;
  rc::check([&registers, &put] {
    Tray tray{tray_id, "large", {}};
    const auto size = *rc::gen::inRange(1, 4);
    for (int at = 0; at < size; ++at) {
      const auto thickness =
          *rc::gen::oneOf(rc::gen::inRange<std::int64_t>(-1, 4), rc::gen::inRange<std::int64_t>(1000, 2000),
                          rc::gen::inRange<std::int64_t>(9'999'990, 10'000'010));
      const auto u_mm =
          *rc::gen::element(0.003, 0.0021, 1e-6, 4e-7, 0.0, -0.001, 999.0, 20'000.0,
                            std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity());
      tray.shims.push_back({std::to_string(at), quantity::Length(thickness), u_mm, std::nullopt});
    }
    if (!registers.put(tray, by_mk())) {
      return;
    }
    ++put;
    shim::AdviseCase advise_case;
    const auto kept = got(registers.tray_named("large"));
    for (const job::TrayShim& each : kept->shims) {
      advise_case.tray.push_back({each.id, each.thickness, each.u_mm});
    }
    advise_case.gauge_fit = shim::GaugeFitCase{quantity::Length(50), 0.01, std::nullopt, shim::TrialOrder::fewest, {}};
    const auto checked = shim::checked(advise_case);
    RC_ASSERT(checked.has_value());
  });
  CHECK(put > 0);
}

TEST_CASE("the workshop keeps a logo that is a picture, and its history the hash of it") {
  Workbench bench;
  Registers& registers = bench.store().registers();
  const Logo logo{"image/png", std::string("\x89PNG\r\n\x1a\n and more")};
  const Workshop workshop{workshop_id, "Hollow Lane Gearboxes", "1 Hollow Lane", logo};
  went(registers.put(workshop, by_mk()));
  CHECK(got(registers.workshop()) == std::optional(workshop));
  const std::string body = got(registers.changes("workshop", workshop_id)).front().body;
  CHECK(body.find(record::sha256_hex(logo.bytes)) != std::string::npos);
  CHECK(body.find("and more") == std::string::npos);
  const auto refused = [&](const Logo& wrong) {
    return code_of(registers.put(Workshop{workshop_id, "Hollow Lane Gearboxes", "", wrong}, by_mk(1)));
  };
  CHECK(refused({"image/png", "no picture"}) == "logo_unusable");
  CHECK(refused({"image/jpeg", logo.bytes}) == "logo_unusable");
  CHECK(refused({"image/gif", "GIF89a"}) == "logo_unusable");
  CHECK(refused({"image/png", logo.bytes + std::string(500'000, 'x')}) == "logo_unusable");
  CHECK(got(registers.workshop()) == std::optional(workshop));
  went(registers.put(Workshop{workshop_id, "Hollow Lane Gearboxes", ""}, by_mk(2)));
  CHECK_FALSE(got(registers.workshop())->logo);
}

}  // namespace shimwright::store
