#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/sheet/words.h"
#include "shimwright/shim/gauge_fit.h"

/// What happened in a job, kept for ever. Each payload below is one kind of entry; its members are what the kind's body
/// holds on disk (docs/formats/entries.md). Ids are UUIDs; lengths and the like are integers in base units.
namespace shimwright::job {

using sheet::Side;
using shim::Fit;

/// When, by the clock of the machine: order is the sequence number, not this.
struct Moment {
  std::int64_t at_ms = 0;  ///< UTC, milliseconds since 1970
  int offset_min = 0;      ///< local time minus UTC, minutes
  bool clock_went_back = false;
  friend bool operator==(const Moment&, const Moment&) = default;
};

/// A personal text that lies apart and can be erased: the chain holds its salted hash only.
struct PrivateReference {
  std::string id;
  std::string digest;  ///< SHA-256 over salt and text, hexadecimal
  friend bool operator==(const PrivateReference&, const PrivateReference&) = default;
};

/// The state of an instrument on the day it was read.
struct InstrumentUsed {
  std::string id;
  std::string name;
  std::int64_t resolution = 0;               ///< base units of what it reads
  std::int64_t permissible_error = 0;        ///< base units
  std::optional<std::string> calibrated_to;  ///< ISO date
  bool overdue = false;
  std::optional<std::string> calibrated_on = std::nullopt;  ///< ISO date; unset in entries of before it was kept
  /// Standard deviation of one reading as the workshop's repeat test found it, thousandths of a base unit; likewise.
  std::optional<std::int64_t> repeatability = std::nullopt;
  friend bool operator==(const InstrumentUsed&, const InstrumentUsed&) = default;
};

enum class ReadingVerdict { none, within, too_small, too_large, on_limit, not_equal };

/// A limit as it was when the reading was judged.
struct LimitUsed {
  quantity::Unit unit = quantity::Unit::millimetre;
  std::optional<std::int64_t> least;
  std::optional<std::int64_t> most;
  int decimals = 0;
  std::string source;
  friend bool operator==(const LimitUsed&, const LimitUsed&) = default;
};

/// One number entered, judged when it was entered.
struct Reading {
  std::string channel;
  quantity::TypedNumber number;
  ReadingVerdict verdict = ReadingVerdict::none;
  std::optional<LimitUsed> limit;
  std::optional<InstrumentUsed> instrument;
  friend bool operator==(const Reading&, const Reading&) = default;
};

/// Something that looks wrong and waits for a person's answer: confirmed as it is, or entered anew.
struct Question {
  std::string code;  ///< see questions.h
  Message message;
  friend bool operator==(const Question&, const Question&) = default;
};

/// Which step, in which assembly.
struct StepRef {
  std::string step;
  int assembly = 1;
  friend bool operator==(const StepRef&, const StepRef&) = default;
};

struct Opened {
  std::string number;                         ///< for people
  std::string vehicle_key;                    ///< VIN folded, or chassis number
  std::optional<std::string> chassis_reason;  ///< why the number is no VIN
  std::optional<PrivateReference> plate;
  std::optional<PrivateReference> customer_reference;
  std::optional<PrivateReference> complaint;
  std::optional<quantity::TypedNumber> odometer;
  std::string gearbox;
  std::optional<std::string> gearbox_serial;
  std::optional<std::string> build_date;
  std::string sheet_id;
  std::string sheet_hash;  ///< SHA-256 of the sheet's file, hexadecimal
  std::string spec_id;
  std::string spec_hash;
  std::string language;
  friend bool operator==(const Opened&, const Opened&) = default;
};

struct Done {
  StepRef at;
  friend bool operator==(const Done&, const Done&) = default;
};

struct Checked {
  StepRef at;
  bool in_order = false;
  std::string finding;  ///< required where not in order
  friend bool operator==(const Checked&, const Checked&) = default;
};

struct Chosen {
  StepRef at;
  std::string choice;
  bool accepted = false;
  friend bool operator==(const Chosen&, const Chosen&) = default;
};

struct Read {
  StepRef at;
  std::vector<Reading> readings;
  std::vector<Question> questions;
  friend bool operator==(const Read&, const Read&) = default;
};

struct PeakRead {
  StepRef at;
  int attempt = 1;  ///< counted over the whole job: every attempt stays
  Reading reading;
  std::optional<int> most_attempts;
  friend bool operator==(const PeakRead&, const PeakRead&) = default;
};

struct PartFitted {
  std::string part;
  std::string number;
  std::int64_t quantity = 1;
  std::string batch;  ///< batch or serial; may be empty
  friend bool operator==(const PartFitted&, const PartFitted&) = default;
};

/// Some or all of a step's parts: each that was renewed is named.
struct PartsFitted {
  StepRef at;
  std::vector<PartFitted> parts;
  friend bool operator==(const PartsFitted&, const PartsFitted&) = default;
};

struct PhotoTaken {
  StepRef at;
  std::string sha256;
  std::string media_type;
  std::int64_t bytes = 0;
  std::string caption;
  friend bool operator==(const PhotoTaken&, const PhotoTaken&) = default;
};

struct Written {
  StepRef at;
  std::string text;
  std::vector<Question> questions;
  friend bool operator==(const Written&, const Written&) = default;
};

struct ShimTried {
  StepRef at;
  Side side = Side::lower;
  std::string shim;
  Fit fit = Fit::tight;
  std::optional<quantity::Length> thickness = std::nullopt;  ///< as the tray had it; unset in old entries
  std::optional<std::int64_t> u_nm = std::nullopt;           ///< standard uncertainty of it, nanometre; likewise
  std::optional<std::int64_t> feel_nm = std::nullopt;        ///< that of the person's feel, where it was tested
  friend bool operator==(const ShimTried&, const ShimTried&) = default;
};

struct DepthsRead {
  StepRef at;
  Side side = Side::lower;
  std::vector<quantity::TypedNumber> readings;
  quantity::TypedNumber reference;
  std::optional<quantity::TypedNumber> stamp;
  std::optional<InstrumentUsed> instrument;
  friend bool operator==(const DepthsRead&, const DepthsRead&) = default;
};

/// One lift at one spot.
struct FloatRun {
  StepRef at;
  Side side = Side::lower;
  bool as_found = false;
  int spot = 1;    ///< 1, 2, 3 …
  int series = 1;  ///< measured again or seated again begins the next series; runs of different series never mix
  quantity::TypedNumber rest;
  quantity::TypedNumber lifted;
  std::optional<quantity::TypedNumber> zero_after;
  std::optional<InstrumentUsed> instrument;
  friend bool operator==(const FloatRun&, const FloatRun&) = default;
};

enum class SeriesReason { measure_again, seated_again };

/// From here on the named spots are measured afresh; the runs before stay on the record.
struct SeriesBegun {
  StepRef at;
  int series = 2;
  std::vector<int> spots;
  SeriesReason reason = SeriesReason::measure_again;
  friend bool operator==(const SeriesBegun&, const SeriesBegun&) = default;
};

/// A person says that what was questioned is right as it stands.
struct Confirmed {
  StepRef at;
  std::string question;
  std::string remark;
  friend bool operator==(const Confirmed&, const Confirmed&) = default;
};

enum class Conclusion {
  try_shim,       ///< trials: try this one next
  fit_shim,       ///< trials or depth: this one is to be fitted
  contradiction,  ///< trials contradict each other
  tray_too_thick,
  tray_too_thin,
  tilted,      ///< depths differ too much over the places
  impossible,  ///< no positive thickness comes out: a constant or sign is wrong
  outside,     ///< beyond the tray
  far,         ///< a size is missing in the tray
  edge,        ///< on the border between two shims: a person decides
  question,    ///< unit or direction must be confirmed first
  zero_again,  ///< float: signs are mixed because zero was lost
  keep,        ///< float: within, the shim stays
  measure_again,
  seat_again,
  change_shim,
  step_shim,        ///< one step, then measure again: the sensitivity is not known well enough
  decide,           ///< on the limit: change, or accept with reason
  no_shim,          ///< no shim of the tray brings the disc within
  for_information,  ///< float as found
};

/// What the engine said, with all it stood on. Kept, so that a replay shows what was said then.
struct Advised {
  StepRef at;
  Side side = Side::lower;
  std::string engine;       ///< version of the shim engine
  std::string case_json;    ///< the case as the advise contract has it, numbers exact
  std::string answer_json;  ///< the answer likewise
  Conclusion conclusion = Conclusion::question;
  std::optional<std::string> shim;
  std::vector<std::string> candidates;    ///< depth on an edge: the shims on either side
  std::optional<bool> trials_agree;       ///< cross-check of float and trials; unset where unknown
  std::optional<std::int64_t> mean;       ///< float: mean over the spots, micrometre
  std::vector<std::int64_t> spot_floats;  ///< micrometre, by spot, rounded half away from zero
  std::vector<ReadingVerdict> spot_verdicts;
  std::optional<std::int64_t> expanded_u;  ///< 95 % uncertainty of a spot, micrometre
  std::vector<Question> questions;
  Message reason;  ///< one sentence
  friend bool operator==(const Advised&, const Advised&) = default;
};

enum class ChosenBy { trials, depth, float_reading, person };

/// The shim taken for a side in this assembly.
struct ShimChosen {
  StepRef at;
  Side side = Side::lower;
  std::string shim;
  quantity::Length thickness;  ///< as the tray had it that day
  double u_mm = 0;             ///< stored in nanometres
  ChosenBy by = ChosenBy::trials;
  std::optional<int> chance_percent;  ///< belief that it is the best one, where trials gave one
  std::string reason;                 ///< required where it is not the advised one
  std::vector<Question> questions;
  friend bool operator==(const ShimChosen&, const ShimChosen&) = default;
};

struct AttemptValue {
  std::string channel;
  std::optional<quantity::TypedNumber> before;
  std::optional<Reading> after;
  friend bool operator==(const AttemptValue&, const AttemptValue&) = default;
};

struct TeachInTried {
  StepRef at;
  int attempt = 1;
  bool completed = false;
  std::vector<AttemptValue> values;
  std::string code;    ///< code of an abort as the vehicle shows it
  std::string reason;  ///< required where not completed
  friend bool operator==(const TeachInTried&, const TeachInTried&) = default;
};

struct Signed {
  StepRef at;
  sheet::Signer signer = sheet::Signer::technician;
  friend bool operator==(const Signed&, const Signed&) = default;
};

/// A step accepted against its limit, or left out.
struct Deviated {
  StepRef at;
  std::string reason;
  friend bool operator==(const Deviated&, const Deviated&) = default;
};

struct NotRequired {
  StepRef at;
  std::string reason;
  friend bool operator==(const NotRequired&, const NotRequired&) = default;
};

struct Withdrawn {
  std::int64_t entry = 0;  ///< sequence number of what is taken back
  std::string reason;
  friend bool operator==(const Withdrawn&, const Withdrawn&) = default;
};

struct Noted {
  std::optional<std::string> step;
  std::string text;
  friend bool operator==(const Noted&, const Noted&) = default;
};

struct Parked {
  std::string waits_for;
  std::optional<std::string> due;  ///< ISO date
  friend bool operator==(const Parked&, const Parked&) = default;
};

struct TakenUp {
  std::vector<std::string> unproven;  ///< steps that may have moved while the job lay still
  friend bool operator==(const TakenUp&, const TakenUp&) = default;
};

struct HandedOver {
  std::string to;  ///< person
  std::string remark;
  friend bool operator==(const HandedOver&, const HandedOver&) = default;
};

/// The pack comes off again; from here on readings belong to this assembly.
struct AssemblyBegun {
  int assembly = 2;
  std::vector<Side> sides;  ///< whose shim is to be changed; empty: none, the pack only has to be put together again
  std::string reason;
  friend bool operator==(const AssemblyBegun&, const AssemblyBegun&) = default;
};

/// The record as it stood was frozen and signed; from here on the job takes addenda only.
struct Sealed {
  std::string digest;                ///< SHA-256 of the signed statement, hexadecimal
  std::vector<std::string> signers;  ///< persons, the technician first
  friend bool operator==(const Sealed&, const Sealed&) = default;
};

/// A signed addition to a sealed record.
struct AddendumAdded {
  std::string reason;
  std::string text;
  friend bool operator==(const AddendumAdded&, const AddendumAdded&) = default;
};

using EntryBody =
    std::variant<Opened, Done, Checked, Chosen, Read, PeakRead, PartsFitted, PhotoTaken, Written, ShimTried, DepthsRead,
                 FloatRun, SeriesBegun, Confirmed, Advised, ShimChosen, TeachInTried, Signed, Deviated, NotRequired,
                 Withdrawn, Noted, Parked, TakenUp, HandedOver, AssemblyBegun, Sealed, AddendumAdded>;

struct Entry {
  std::int64_t seq = 0;  ///< 1, 2, 3 … in its job
  Moment moment;
  std::string person;  ///< id of who was at the bench
  EntryBody body;
  friend bool operator==(const Entry&, const Entry&) = default;
};

/// The step an entry is about, where it is about one.
[[nodiscard]] const StepRef* step_of(const EntryBody& body);

/// `opened`, `done`, … as stored.
[[nodiscard]] std::string_view kind_of(const EntryBody& body);

[[nodiscard]] std::string_view name_of(Conclusion conclusion);
[[nodiscard]] std::string_view name_of(ReadingVerdict verdict);
[[nodiscard]] std::string_view name_of(ChosenBy by);
[[nodiscard]] std::string_view name_of(SeriesReason reason);
[[nodiscard]] std::optional<Conclusion> conclusion_named(std::string_view name);
[[nodiscard]] std::optional<ReadingVerdict> reading_verdict_named(std::string_view name);
using shim::fit_named;
[[nodiscard]] std::optional<ChosenBy> chosen_by_named(std::string_view name);
[[nodiscard]] std::optional<SeriesReason> series_reason_named(std::string_view name);

}  // namespace shimwright::job
