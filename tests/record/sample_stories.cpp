#include "sample_job.h"

namespace shimwright::record_test {

namespace {

using job::Conclusion;
using job::Fit;
using job::ReadingVerdict;

void receive(Bench& bench) {
  bench.add(opened());
  bench.check("complaint-read-back");
  bench.add(job::Written{bench.here("complaint-when"), "From the second gear on, hot only", {}});
  bench.read("odometer", {reading("distance", "121400", Unit::kilometre)});
  bench.choose("diagnosis", "pack");
  bench.choose("customer-consent", "by-telephone");
  bench.choose("high-voltage", "none");
  bench.read("breathers-plugged", {reading("plugs", "2", Unit::piece)});
}

void strip(Bench& bench) {
  bench.at(170);
  bench.runs("lower-float-as-found", Side::lower, {"0.60", "0.61", "0.58"}, 1, true);
  bench.advise_float("lower-float-as-found", Side::lower, Conclusion::for_information, {600, 610, 580},
                     ReadingVerdict::none);
  bench.add(job::NotRequired{bench.here("upper-float-as-found"), "the hub ring was already broken"});
  bench.peak("draw-off-peak", 1,
             judged(reading("torque", "13.5", Unit::newton_metre), ReadingVerdict::within, std::nullopt, "30"),
             std::nullopt);
  auto old_lower = reading("thickness", "1.702");
  old_lower.instrument = instrument("micrometer 1");
  bench.read("old-shim-lower", {old_lower});
  bench.read("old-shim-upper", {reading("thickness", "1.799")});
  bench.choose("input-shaft-seals", "dry");
  bench.check("bearing-wear", false, "Support bearing of the outer shaft, wear on its limit");
  bench.by("person-rt")
      .add(job::Deviated{bench.here("bearing-wear"), "to be renewed at the next service, customer told"});
  bench.by("person-mk");
}

void renew(Bench& bench) {
  bench.part("new-pack", "clutch-pack", "DP-7714", 1, "26-1188");
  bench.read("stamp-lower", {reading("stamp", "-0.10")});
  bench.read("stamp-upper", {reading("stamp", "0.00")});
  bench.part("lever-set-new", "lever-set", "DP-7731", 1, "26-0907");
  bench.check("renew-list");
}

void press(Bench& bench, const char* torque, int attempt) {
  auto peak = judged(reading("torque", torque, Unit::newton_metre), ReadingVerdict::within, std::nullopt, "12");
  peak.instrument = instrument("wrench 3");
  auto depth = judged(reading("depth", "6.31"), ReadingVerdict::within, std::nullopt, "7.00");
  depth.instrument = instrument("depth 1");
  bench.read("face-to-shaft-end", {depth});
  bench.peak("press-peak", attempt, peak, 3);
  bench.part("pack-ring-new", "pack-ring", "DP-7720", 1);
  bench.check("pack-ring-seated");
}

void measured_shim(Bench& bench, const char* step, const char* digits) {
  auto made = reading("thickness", digits);
  made.instrument = instrument("micrometer 1");
  bench.read(step, {made});
}

void first_assembly(Bench& bench) {
  bench.at(1500);
  bench.trial("large-gauge-fit", Side::lower, "1.75", Fit::tight);
  bench.trial("large-gauge-fit", Side::lower, "1.55", Fit::loose);
  bench.trial("large-gauge-fit", Side::lower, "1.60", Fit::snug);
  bench.choose_shim("large-gauge-fit", Side::lower, "1.60", 1600);
  measured_shim(bench, "large-shim-measured", "1.601");
  bench.trial("small-gauge-fit", Side::upper, "1.80", Fit::tight);
  bench.trial("small-gauge-fit", Side::upper, "1.75", Fit::snug);
  bench.choose_shim("small-gauge-fit", Side::upper, "1.75", 1750);
  measured_shim(bench, "small-shim-measured", "1.751");
  press(bench, "9.5", 1);
  bench.at(1600);
  bench.runs("lower-float", Side::lower, {"0.93", "0.90", "0.96"});
  bench.runs("lower-float", Side::lower, {"0.93", "0.91", "0.96"});
  bench.advise_float("lower-float", Side::lower, Conclusion::seat_again, {930, 905, 960}, ReadingVerdict::too_large,
                     false);
  bench.add(job::SeriesBegun{bench.here("lower-float"), 2, {}, job::SeriesReason::seated_again});
  bench.runs("lower-float", Side::lower, {"0.93", "0.91", "0.95"}, 2);
  bench.advise_float("lower-float", Side::lower, Conclusion::change_shim, {930, 910, 950}, ReadingVerdict::too_large,
                     true);
}

void second_assembly(Bench& bench) {
  bench.begin_assembly({Side::lower}, "float too large after seating again");
  bench.trial("large-gauge-fit", Side::lower, "1.95", Fit::snug);
  bench.trial("large-gauge-fit", Side::lower, "2.00", Fit::tight);
  bench.choose_shim("large-gauge-fit", Side::lower, "1.95", 1950);
  measured_shim(bench, "large-shim-measured", "1.952");
  press(bench, "10.0", 2);
  bench.at(1760);
  bench.runs("lower-float", Side::lower, {"0.56", "0.58", "0.61"});
  bench.runs("lower-float", Side::lower, {"0.57", "0.58", "0.60"});
  bench.advise_float("lower-float", Side::lower, Conclusion::keep, {565, 580, 605}, ReadingVerdict::within, true);
  bench.by("person-rt");
  bench.runs("upper-float", Side::upper, {"0.47", "0.50", "0.46"});
  bench.runs("upper-float", Side::upper, {"0.47", "0.49", "0.46"});
  bench.advise_float("upper-float", Side::upper, Conclusion::keep, {470, 495, 460}, ReadingVerdict::within);
}

job::TeachInTried teach_in(const Bench& bench, const std::string& step, const char* before, const char* after) {
  job::TeachInTried tried;
  tried.at = bench.here(step);
  tried.completed = true;
  tried.values = {
      {"touch-point", typed(before), judged(reading("touch-point", after), ReadingVerdict::within, "7.5", "13.5")}};
  return tried;
}

/// The steps of the sheet that nothing above answered, so that the job is finished as the job logic sees it.
void close(Bench& bench) {
  bench.check("free-movement");
  auto plugs = reading("plugs", "2", Unit::piece);
  plugs.verdict = ReadingVerdict::within;
  bench.read("plugs-out", {plugs});
  auto voltage = judged(reading("voltage", "13.1", Unit::volt), ReadingVerdict::within, "12.5", "14.8");
  voltage.instrument = instrument("meter 1");
  bench.read("supply-voltage", {voltage});
  bench.add(teach_in(bench, "teach-in-lower", "11.4", "10.2"));
  bench.add(teach_in(bench, "teach-in-upper", "10.9", "9.8"));
  bench.read("road-test", {judged(reading("distance", "16", Unit::kilometre), ReadingVerdict::within, "12", {}),
                           judged(reading("oil", "82", Unit::degree_celsius), ReadingVerdict::within, "50", "110")});
  bench.check("road-test-gears");
  bench.choose("faults-after", "none");
  bench.at(1915);
  bench.by("person-mk").add(job::Signed{bench.here("sign-technician"), sheet::Signer::technician});
  bench.by("person-rt").add(job::Signed{bench.here("sign-checker"), sheet::Signer::checker});
}

}  // namespace

Bench open_job() {
  Bench bench;
  receive(bench);
  strip(bench);
  renew(bench);
  bench.trial("large-gauge-fit", Side::lower, "1.75", Fit::tight);
  bench.add(job::Parked{"new hub ring", "2026-11-30"});
  return bench;
}

Bench finished_job() {
  Bench bench;
  receive(bench);
  strip(bench);
  renew(bench);
  first_assembly(bench);
  second_assembly(bench);
  close(bench);
  return bench;
}

Bench long_job() {
  Bench bench;
  receive(bench);
  strip(bench);
  const auto wrong = bench.add(job::FloatRun{
      bench.here("lower-float-as-found"), Side::lower, true, 1, 1, typed("0.04"), typed("0.777"), {}, {}});
  bench.add(job::Withdrawn{wrong, "read off the wrong dial"});
  renew(bench);
  first_assembly(bench);
  for (int round = 0; round < 3; ++round) {
    second_assembly(bench);
    bench.by("person-mk");
    bench.add(job::Noted{"lower-float", "The third spot lies beside the lever pivot. " + std::string(400, 'n')});
  }
  bench.add(job::DepthsRead{bench.here("large-depth"),
                            Side::lower,
                            {typed("12.48"), typed("12.51")},
                            typed("3.02"),
                            typed("-0.10"),
                            instrument("depth 1")});
  bench.add(job::Confirmed{bench.here("lower-float"), "unit_in_doubt", "millimetres, as read"});
  bench.add(job::PhotoTaken{bench.here("strip-photos"), std::string(64, 'f'), "image/jpeg", 120000, "faces"});
  auto failed = teach_in(bench, "teach-in-lower", "11.4", "10.2");
  failed.completed = false;
  failed.code = "P0A11";
  failed.reason = "supply voltage fell";
  failed.values.clear();
  bench.add(failed);
  bench.add(job::Parked{"new hub ring", "2026-11-30"});
  bench.add(job::TakenUp{{"bearings-seated"}});
  bench.add(job::HandedOver{"person-rt", "ring is on the tray"});
  bench.add(job::Deviated{bench.here("gear-oil"), std::string("no measuring jug; ") + std::string(600, 'w')});
  close(bench);
  return bench;
}

}  // namespace shimwright::record_test
