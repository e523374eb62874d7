#include "shimwright/record/hash.h"
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
