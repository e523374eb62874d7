#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/job/entry.h"
#include "shimwright/quantity/error.h"
#include "shimwright/quantity/quantity.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/sheet/words.h"

/// The parts of a record. Titles are in the language the job was opened in.
namespace shimwright::record {

using job::ReadingVerdict;
using quantity::TypedNumber;
using sheet::Side;

struct PersonName {
  std::string initials;
  std::string name;
};

/// A personal text and the salt of its digest (hexadecimal), so that a copy of the record can be checked alone.
struct PersonalText {
  std::string text;
  std::string salt;
};

/// A personal text as the job refers to it; no text where it was erased.
struct Personal {
  std::string id;
  std::string digest;
  std::optional<PersonalText> content;
};

/// Which entry, who, when.
struct Stamp {
  std::int64_t entry = 0;
  job::Moment moment;
  std::string person;    ///< id
  std::string initials;  ///< `?` where the person is not known here
};

struct SheetHead {
  std::string id;
  std::string name;  ///< short name of a job sheet; gearbox of a spec sheet
  std::string title;
  std::int64_t issue = 0;
  std::string hash;
  std::string source;  ///< spec sheet only
  bool demonstration = false;
};

struct JobHead {
  std::string number;  ///< empty where the job was never opened
  std::string language = "en";
  Stamp opened;
  std::optional<Stamp> closed;
  std::optional<std::string> next_step;  ///< title of the first step not passed
  int assembly = 1;                      ///< the present one
  SheetHead sheet;
  SheetHead spec;
  std::vector<std::pair<std::string, PersonName>> people;  ///< all who made an entry, by id
};

struct Vehicle {
  std::string key;  ///< VIN folded, or chassis number
  std::optional<std::string> chassis_reason;
  std::optional<Personal> plate;
  std::optional<Personal> customer_reference;
  std::optional<Personal> complaint;
  std::optional<TypedNumber> odometer;
  std::string gearbox;
  std::optional<std::string> gearbox_serial;
  std::optional<std::string> build_date;
};

/// Where on the sheet, in which assembly.
struct Place {
  std::string step;   ///< id
  std::string title;  ///< of the step
  std::string stage;  ///< title of its stage
  int assembly = 1;
  bool once = false;  ///< asked once in a job, whatever is assembled again: the assembly says nothing
};

/// One number entered, with all that belongs to it.
struct ReadingLine {
  Stamp stamp;
  Place place;
  std::optional<Side> side;
  std::string channel;  ///< id
  std::string channel_title;
  bool only_channel = true;  ///< of its step
  bool has_sign = false;     ///< a value that means nothing without its sign, as a stamp
  TypedNumber number;
  ReadingVerdict verdict = ReadingVerdict::none;
  std::optional<job::LimitUsed> limit;
  std::optional<std::string> must_equal;  ///< title of the step whose reading it must equal
  std::optional<job::InstrumentUsed> instrument;
  bool entered_again = false;  ///< a later reading of the same channel in the same assembly took its place
  std::optional<int> attempt;  ///< of a peak
  std::optional<int> most_attempts;
};

struct Trial {
  Stamp stamp;
  std::string shim;
  job::Fit fit = job::Fit::tight;
};

struct Depths {
  Stamp stamp;
  std::vector<TypedNumber> readings;
  TypedNumber reference;
  std::optional<TypedNumber> pack_stamp;
  std::optional<job::InstrumentUsed> instrument;
};

struct Advice {
  Stamp stamp;
  std::string engine;
  job::Conclusion conclusion = job::Conclusion::question;
  std::optional<std::string> shim;
  std::vector<std::string> candidates;
  Message reason;
};

struct ShimChoice {
  Stamp stamp;
  std::string shim;
  quantity::Length thickness;  ///< as the tray had it that day
  std::int64_t u_nm = 0;       ///< standard uncertainty of it, nanometre
  job::ChosenBy by = job::ChosenBy::trials;
  std::optional<int> chance_percent;
  std::string reason;
};

/// How a bearing's shim was found, and which one lies there in these assemblies.
struct ShimUse {
  Side side = Side::lower;
  sheet::Method method = sheet::Method::gauge_fit;
  std::vector<int> assemblies;  ///< one at least
  std::vector<Trial> trials;
  std::vector<Depths> depths;
  std::vector<Advice> advice;
  std::vector<ShimChoice> choices;    ///< in order
  std::vector<ReadingLine> measured;  ///< the chosen shim with the micrometer
  /// The choice that stands; blank: none, as after something new was tried or the bearing came off again. It follows
  /// from the rest and is not in the sealed part.
  std::string fitted = {};
};

/// The shim taken out of the vehicle.
struct OldShim {
  Side side = Side::lower;
  ReadingLine reading;
};

struct FloatRunLine {
  Stamp stamp;
  TypedNumber rest;
  TypedNumber lifted;
  std::optional<TypedNumber> zero_after;
  std::optional<job::InstrumentUsed> instrument;
  quantity::Length value;  ///< lifted minus rest
  int decimals = 2;        ///< of the finer of the two in mm, for print
};

struct FloatSpot {
  int spot = 1;
  std::vector<FloatRunLine> runs;
};

/// What was said when the readings were judged.
struct FloatJudged {
  Stamp stamp;
  std::vector<std::int64_t> spot_floats;  ///< micrometre
  std::vector<ReadingVerdict> spot_verdicts;
  std::optional<std::int64_t> mean;        ///< micrometre
  std::optional<std::int64_t> spread;      ///< largest minus smallest spot, micrometre
  std::optional<std::int64_t> expanded_u;  ///< 95 % uncertainty of a spot, micrometre
  std::optional<bool> trials_agree;
  job::Conclusion conclusion = job::Conclusion::question;
  std::optional<std::string> shim;
  Message reason;
};

struct FloatLimits {
  quantity::Length least;
  quantity::Length most;
  quantity::Length max_spread;
  double guard_factor = 0;  ///< of the standard uncertainty
  std::string source;
};

struct FloatSeries {
  Side side = Side::lower;
  bool as_found = false;
  Place place;
  int series = 1;
  std::optional<job::SeriesReason> reason;  ///< from the second on
  FloatLimits limits;
  std::vector<FloatSpot> spots;  ///< only those measured in this series
  std::optional<FloatJudged> judged;
  bool latest = false;  ///< the last word on this disc in the present assembly
};

struct TeachInValue {
  std::string channel;
  std::string channel_title;
  std::optional<TypedNumber> before;
  std::optional<job::Reading> after;
};

struct TeachIn {
  Stamp stamp;
  Place place;
  int attempt = 1;
  bool completed = false;
  std::vector<TeachInValue> values;
  std::string code;
  std::string reason;
};

struct PartLine {
  Stamp stamp;
  Place place;
  std::string part;  ///< id
  std::string title;
  std::string number;
  std::int64_t quantity = 1;
  std::string batch;
};

struct Deviation {
  Stamp stamp;
  Place place;
  bool left_out = false;       ///< nothing was answered or measured there
  std::vector<Message> found;  ///< what had been answered or measured last
  std::string reason;
};

/// Trials and float do not agree: first a seating fault; repeated, the float decides and the record keeps it.
struct Disagreement {
  Stamp stamp;
  Side side = Side::lower;
  int assembly = 1;
  int series = 1;
  Message reason;
};

enum class WhyNotMeasured { not_required, deviation, not_done };

struct NotMeasured {
  Place place;
  WhyNotMeasured why = WhyNotMeasured::not_done;
  std::string reason;          ///< given by the person; empty where not done
  std::optional<Stamp> stamp;  ///< of the reason
};

enum class AnswerKind { done, in_order, not_in_order, chosen, written, not_required };

struct Answer {
  Stamp stamp;
  Place place;
  bool hold_point = false;
  AnswerKind kind = AnswerKind::done;
  bool accepted = true;
  std::string text;  ///< finding, title of the choice, words written, or reason
};

struct Confirmation {
  Stamp stamp;
  Place place;
  std::string question;  ///< code
  std::optional<Message> asked;
  std::string remark;
};

struct Photo {
  Stamp stamp;
  Place place;
  std::string sha256;
  std::string media_type;
  std::int64_t bytes = 0;
  std::string caption;
};

struct Signature {
  Stamp stamp;
  sheet::Signer signer = sheet::Signer::technician;
};

struct NoteLine {
  Stamp stamp;
  std::optional<Place> place;
  std::string text;
};

enum class StopKind { parked, taken_up, handed_over };

struct Stop {
  Stamp stamp;
  StopKind kind = StopKind::parked;
  std::string text;                   ///< what it waits for, or the remark handed over
  std::optional<std::string> due;     ///< ISO date
  std::optional<std::string> to;      ///< initials
  std::vector<std::string> unproven;  ///< titles of the steps asked again
};

struct Assembly {
  Stamp stamp;
  int assembly = 2;
  std::vector<Side> sides;
  std::string reason;
};

struct TakenBack {
  Stamp stamp;    ///< of the taking back
  Stamp entered;  ///< of what was taken back
  std::optional<Place> place;
  std::vector<Message> what;  ///< what the entry said, its digits as typed
  std::string reason;
};

struct WorkValueLine {
  std::string id;
  std::string title;
  std::string value;
  std::string source;
};

/// Whether a seal holds, as its signatures, the chain under them and the keys of the workshop show.
enum class SealStanding {
  holds,
  key_unknown,  ///< whole, but a key that signed is not known here or was not valid then
  changed       ///< something is not as it was signed
};
/// `holds`, `key_unknown`, `changed`.
[[nodiscard]] std::string_view name_of(SealStanding standing);

/// What a check of a seal found.
struct SealCheck {
  SealStanding standing = SealStanding::holds;
  std::string place = {};  ///< what does not hold: `record`, `entry 7`; of a key, whose it is
  Message why = {};        ///< one sentence; blank where it holds
  friend bool operator==(const SealCheck&, const SealCheck&) = default;
};

/// What the print shows of a seal. It is no part of what is sealed.
struct SealMark {
  std::string groups;  ///< `7K2M-…`
  std::string code;    ///< payload of the code
  job::Moment moment;
  bool reprint = true;  ///< false only for the print made when it was sealed
  SealCheck check = {};
};

struct AddendumLine {
  std::string initials;
  std::string name;
  job::Moment moment;
  std::string reason;
  std::string text;
  std::string groups;  ///< of its own seal
};

}  // namespace shimwright::record
