#include "check_parts.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* dial = "01930000-0000-7000-8000-000000000041";
constexpr const char* wrench = "01930000-0000-7000-8000-000000000042";
constexpr const char* large = "01930000-0000-7000-8000-000000000051";
constexpr const char* house = "01930000-0000-7000-8000-000000000061";

/// A workshop with every register filled.
struct Filled {
  Workbench bench;

  Filled() {
    Registers& registers = bench.store().registers();
    went(registers.put(job::Instrument{dial, "dial 2", sheet::InstrumentKind::dial_gauge, 10, 10, "2027-04-30",
                                       quantity::Length(1000)},
                       by_mk()));
    went(registers.put(
        job::Instrument{wrench, "wrench 3", sheet::InstrumentKind::torque_wrench, 100000, 300000, std::nullopt, {}},
        by_mk()));
    // Not in the order in which they are read back.
    went(registers.put(Tray{large,
                            "large D7",
                            {{"1.40", quantity::Length(1402), 0.0025, 5},
                             {"1.30", quantity::Length(1301), 0.003, std::nullopt},
                             {"1.35", quantity::Length(1349), 0.003, 3}},
                            {{"1.35", {1, monday_ms, {{{1349, 3, quantity::Unit::millimetre}, dial}}}}}},
                       by_mk()));
    went(registers.put(Workshop{house, "Hollow Lane", "4 Hollow Lane", Logo{"image/png", "\x89PNG picture"}}, by_mk()));
    went(registers.put(
        Person{rt, "Rui Tavares", "RT", std::nullopt, true, PersonRole::checker, std::nullopt, 9000, "2026-11-20"},
        by_mk()));
  }

  std::vector<Finding> after(const QByteArray& sql) {
    bench.sabotage(sql);
    CheckReport report;
    went(check_registers(bench.store().connection(), report));
    return report.findings;
  }
};

}  // namespace

TEST_CASE("registers as they were entered are in order, entered again as well") {
  Filled filled;
  CHECK(filled.after("SELECT 1").empty());
  went(filled.bench.store().registers().put(Person{rt, "Rui Tavares-Lima", "RT", "hash", false}, by_mk(5)));
  went(filled.bench.store().registers().put(Tray{large, "large D7", {}}, by_mk(6)));
  CHECK(filled.after("SELECT 1").empty());
}

TEST_CASE("a row of a register that was changed beside the program is found") {
  const std::vector<std::pair<std::string, const char*>> changes = {
      {"person", "UPDATE person SET name = 'Nobody' WHERE initials = 'MK'"},
      {"person", "UPDATE person SET initials = 'XX' WHERE initials = 'MK'"},
      {"person", "UPDATE person SET active = 0 WHERE initials = 'MK'"},
      {"person", "UPDATE person SET pin_hash = 'x' WHERE initials = 'MK'"},
      {"person",
       "INSERT INTO person VALUES ('01930000-0000-7000-8000-000000000039', 'A', 'A', NULL, 1, 'technician', NULL, "
       "NULL, NULL)"},
      {"instrument", "UPDATE instrument SET name = 'dial 3' WHERE name = 'dial 2'"},
      {"instrument", "UPDATE instrument SET kind = 'x' WHERE name = 'dial 2'"},
      {"instrument", "UPDATE instrument SET resolution = 1 WHERE name = 'dial 2'"},
      {"instrument", "UPDATE instrument SET permissible_error = 1 WHERE name = 'dial 2'"},
      {"instrument", "UPDATE instrument SET calibrated_to = '2029-04-30' WHERE name = 'dial 2'"},
      {"instrument", "UPDATE instrument SET calibrated_to = '2029-04-30' WHERE name = 'wrench 3'"},
      {"instrument", "UPDATE instrument SET turn_um = NULL WHERE name = 'dial 2'"},
      {"person", "UPDATE person SET role = 'technician' WHERE initials = 'RT'"},
      {"person", "UPDATE person SET left_on = '2026-11-30' WHERE initials = 'RT'"},
      {"person", "UPDATE person SET feel_nm = 1 WHERE initials = 'RT'"},
      {"person", "UPDATE person SET feel_on = NULL WHERE initials = 'RT'"},
      {"instrument", "UPDATE instrument SET calibrated_on = '2026-04-30' WHERE name = 'dial 2'"},
      {"instrument", "UPDATE instrument SET repeatability = 1 WHERE name = 'dial 2'"},
      {"instrument", "UPDATE instrument SET repeatability_on = '2026-04-30' WHERE name = 'dial 2'"},
      {"instrument", "UPDATE instrument SET in_use = 0 WHERE name = 'dial 2'"},
      {"tray", "UPDATE tray_shim SET reorder_at = 0 WHERE shim = '1.35'"},
      {"tray", "UPDATE tray_shim SET counted_at_ms = 1 WHERE shim = '1.35'"},
      {"tray", "UPDATE tray_reading SET base = 1350"},
      {"tray", "DELETE FROM tray_reading"},
      {"workshop", "UPDATE workshop SET logo = x'00'"},
      {"workshop", "UPDATE workshop SET logo = NULL, logo_type = NULL"},
      {"tray", "UPDATE tray SET name = 'large D6'"},
      {"tray", "UPDATE tray_shim SET thickness_um = 1350 WHERE shim = '1.35'"},
      {"tray", "UPDATE tray_shim SET u_nm = 1 WHERE shim = '1.35'"},
      {"tray", "UPDATE tray_shim SET count = 9 WHERE shim = '1.30'"},
      {"tray", "DELETE FROM tray_shim WHERE shim = '1.35'"},
      {"workshop", "UPDATE workshop SET name = 'Other'"},
      {"workshop", "UPDATE workshop SET address = 'Other'"},
  };
  for (const auto& [table, change] : changes) {
    Filled filled;
    INFO(change);
    const auto findings = filled.after(change);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].code == "register_differs");
    CHECK(findings[0].table == table);
    const CheckReport whole = got(check(filled.bench.store()));
    CHECK(whole.findings.size() == 1);
  }
}

TEST_CASE("an item that is gone is found, and one entered anew is in order again") {
  Filled filled;
  auto findings = filled.after("DELETE FROM instrument WHERE name = 'wrench 3'");
  REQUIRE(findings.size() == 1);
  CHECK(findings[0].code == "register_item_missing");
  CHECK(findings[0].message.arguments == std::vector<std::string>{wrench});
  went(filled.bench.store().registers().put(
      job::Instrument{wrench, "wrench 3", sheet::InstrumentKind::torque_wrench, 100000, 300000, std::nullopt, {}},
      by_mk(1)));
  CHECK(filled.after("SELECT 1").empty());
}

}  // namespace shimwright::store
