#pragma once

#include <vector>

#include "shimwright/job/entry.h"

/// One body of each kind with everything in it that can be, as a job on the invented gearbox D7 might bring it. Their
/// stored bytes lie in `golden/` and never change.
namespace shimwright::job::test {

using quantity::TypedNumber;
using quantity::Unit;

inline TypedNumber millimetres(std::int64_t micrometres, int decimals = 2) {
  return {micrometres, decimals, Unit::millimetre};
}

inline PrivateReference sample_reference(char last) {
  return {std::string("01930000-0000-7000-8000-00000000000") + last, std::string(64, last)};
}

inline InstrumentUsed sample_dial() {
  return {"01930000-0000-7000-8000-000000000011", "Dial gauge 2", 10, 13, "2027-03-31", false};
}

inline Question sample_question() {
  return {"unit_in_doubt", Message{"Was {0} meant as {1} mm?", {"62", "0.62"}}};
}

inline Reading sample_torque() {
  return {"torque",
          {9800, 1, Unit::newton_metre},
          ReadingVerdict::within,
          LimitUsed{Unit::newton_metre, std::nullopt, 12000, 0, "Demonstration value"},
          InstrumentUsed{"01930000-0000-7000-8000-000000000012", "Torque wrench 1", 100, 400, "2026-01-31", true}};
}

inline Reading sample_thickness() {
  return {"thickness", millimetres(1650, 3), ReadingVerdict::on_limit,
          LimitUsed{Unit::millimetre, 1640, 1660, 2, "Demonstration value"}, sample_dial()};
}

inline Opened sample_opened() {
  Opened opened;
  opened.number = "2026-0147";
  opened.vehicle_key = "TESTVN009TA030417";
  opened.chassis_reason = "Chassis number of a demonstration vehicle";
  opened.plate = sample_reference('1');
  opened.customer_reference = sample_reference('2');
  opened.complaint = sample_reference('3');
  opened.odometer = TypedNumber{148210000, 0, Unit::kilometre};
  opened.gearbox = "D7";
  opened.gearbox_serial = "D7-20931";
  opened.build_date = "2019-04";
  opened.sheet_id = "01930000-0000-7000-8000-000000000021";
  opened.sheet_hash = std::string(64, 'a');
  opened.spec_id = "01930000-0000-7000-8000-000000000022";
  opened.spec_hash = std::string(64, 'b');
  opened.language = "en";
  return opened;
}

inline Advised sample_advised() {
  Advised advised;
  advised.at = {"float-lower", 1};
  advised.side = Side::lower;
  advised.engine = "1.0.0";
  advised.case_json = R"({"version":1})";
  advised.answer_json = R"({"float":{"advice":"change"}})";
  advised.conclusion = Conclusion::change_shim;
  advised.shim = "1.70";
  advised.candidates = {"1.65", "1.70"};
  advised.trials_agree = false;
  advised.mean = 733;
  advised.spot_floats = {720, 750, 730};
  advised.spot_verdicts = {ReadingVerdict::too_large, ReadingVerdict::too_large, ReadingVerdict::on_limit};
  advised.expanded_u = 28;
  advised.questions = {sample_question()};
  advised.reason = {"The float is too large; the next thicker shim is {0}.", {"1.70"}};
  return advised;
}

inline std::vector<EntryBody> sample_bodies() {
  return {
      sample_opened(),
      Done{{"battery-off", 1}},
      Checked{{"lever-wear", 1}, false, "Pivot worn on one side"},
      Chosen{{"cause", 1}, "pack", true},
      Read{{"shim-lower-thickness", 1}, {sample_thickness()}, {sample_question()}},
      PeakRead{{"press-peak", 2}, 2, sample_torque(), 3},
      PartsFitted{{"renew", 1},
                  {PartFitted{"pack-ring", "D7-R-118", 1, "B-77"}, PartFitted{"hub-ring", "D7-R-119", 1, ""}}},
      PhotoTaken{{"photo-pack", 1}, std::string(64, 'c'), "image/jpeg", 183042, "Pack as found"},
      Written{{"new-pack-serial", 1}, "P7-558213", {sample_question()}},
      ShimTried{{"fit-lower", 1}, Side::lower, "1.65", Fit::snug, quantity::Length(1651), 2500},
      DepthsRead{{"depth-upper", 1},
                 Side::upper,
                 {millimetres(61240), millimetres(61260)},
                 millimetres(20000),
                 millimetres(-120),
                 sample_dial()},
      FloatRun{{"float-lower", 1},
               Side::lower,
               false,
               2,
               1,
               millimetres(0),
               millimetres(720),
               millimetres(10),
               sample_dial()},
      SeriesBegun{{"float-lower", 1}, 2, {1, 3}, SeriesReason::seated_again},
      Confirmed{{"float-lower", 1}, "unit_in_doubt", "Read twice"},
      sample_advised(),
      ShimChosen{{"choose-lower", 1},
                 Side::lower,
                 "1.70",
                 quantity::Length(1702),
                 0.0025,
                 ChosenBy::float_reading,
                 87,
                 "Only one in stock",
                 {sample_question()}},
      TeachInTried{{"teach-in", 1},
                   1,
                   false,
                   {AttemptValue{"touch-point", millimetres(8400, 1), sample_thickness()}},
                   "0x21",
                   "Oil too cold"},
      Signed{{"sign-technician", 1}, sheet::Signer::technician},
      Deviated{{"float-lower", 1}, "Part not to be had; customer told"},
      NotRequired{{"depth-upper", 1}, "Same pack goes back"},
      Withdrawn{12, "Read at the wrong spot"},
      Noted{"lever-wear", "Grease sample kept"},
      Parked{"rings from the supplier", "2026-11-30"},
      TakenUp{{"lay-bearings", "press-pack"}},
      HandedOver{"01930000-0000-7000-8000-000000000032", "Float is left to do"},
      AssemblyBegun{2, {Side::lower, Side::upper}, "Float too large"},
      Sealed{std::string(64, 'c'), {"01930000-0000-7000-8000-000000000031"}},
      AddendumAdded{"Found on the road test", "The oil was topped up by 0.1 l"},
  };
}

/// The same kinds with nothing in them that may be left out.
inline std::vector<EntryBody> bare_bodies() {
  return {
      Opened{},
      Checked{{"lever-wear", 1}, true, ""},
      PeakRead{{"press-peak", 1}, 1, Reading{"torque", {0, 0, Unit::newton_metre}, ReadingVerdict::none, {}, {}}, {}},
      ShimTried{{"fit-lower", 1}, Side::lower, "1.65", Fit::snug},  // as before thickness was kept
      DepthsRead{{"depth-upper", 1}, Side::upper, {}, millimetres(20000), {}, {}},
      Advised{},
      Noted{{}, "Rain"},
      Parked{"paint", {}},
      TakenUp{},
  };
}

inline InstrumentUsed tested_dial() {
  InstrumentUsed dial = sample_dial();
  dial.calibrated_on = "2026-03-31";
  dial.repeatability = 4200;
  return dial;
}

/// Every kind that has a version 2, said in it.
inline std::vector<EntryBody> second_bodies() {
  Reading thickness = sample_thickness();
  thickness.instrument = tested_dial();
  Reading torque = sample_torque();
  torque.instrument->repeatability = 55000;
  return {
      Read{{"old-shim-lower", 1}, {thickness}, {}},
      PeakRead{{"press-peak", 1}, 1, torque, 4},
      ShimTried{{"fit-lower", 1}, Side::lower, "1.65", Fit::snug, quantity::Length(1651), 2500, 9000},
      DepthsRead{{"depth-upper", 1}, Side::upper, {millimetres(61240)}, millimetres(20000), {}, tested_dial()},
      FloatRun{{"float-lower", 1}, Side::lower, false, 2, 1, millimetres(0), millimetres(720), {}, tested_dial()},
      TeachInTried{{"teach-in", 1}, 1, true, {AttemptValue{"touch", {}, thickness}}, "", ""},
  };
}

}  // namespace shimwright::job::test
