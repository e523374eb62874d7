#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shimwright/record/page.h"
#include "shimwright/record/record.h"

namespace shimwright::record {

/// One bearing as it stands now.
struct SlipSide {
  Side side = Side::lower;
  std::string shim;        ///< in the present assembly; empty: none chosen
  std::string last_float;  ///< `0.54 mm, within`, the mean of the latest series; empty: none judged in this assembly
};

/// What a colleague has to know who goes on with a job: read off its entries, and no record.
struct ShiftSlip {
  std::string workshop_name;
  std::string workshop_address;
  std::string number;
  std::string vehicle;
  std::string plate;  ///< empty: none, or erased
  std::string gearbox;
  int assembly = 1;
  bool demonstration = false;
  bool closed = false;
  bool sealed = false;
  std::string waits_for;   ///< parked: what for; empty: in work
  std::string due;         ///< ISO date; may be empty
  std::string handed_to;   ///< name; empty: to nobody
  std::string next_stage;  ///< empty with next_step: nothing is left
  std::string next_step;
  bool next_is_hold_point = false;
  std::string last;                      ///< what was entered last, by whom and when
  std::vector<SlipSide> sides;           ///< lower, upper
  std::vector<std::string> look_again;   ///< titles of steps that may have moved
  std::vector<std::string> to_decide;    ///< sentences
  std::vector<std::string> parts_to_do;  ///< `2 × Retaining ring, DP-7711`
  std::vector<std::string> notes;        ///< the last three, latest first
};

[[nodiscard]] ShiftSlip make_shift_slip(const job::JobState& state, const RecordNames& names);

/// On A5; what does not fit goes on to a further page.
[[nodiscard]] std::vector<Page> lay_out_shift_slip(const ShiftSlip& slip, const TextMeasure& measure);

}  // namespace shimwright::record
