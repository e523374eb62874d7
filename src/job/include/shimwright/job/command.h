#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "shimwright/job/entry.h"

/// What a person asks for. Numbers are text as typed; the one number reader reads them.
namespace shimwright::job {

/// A personal text with its hash, made where salts can be drawn (outside the core).
struct PrivateText {
  std::string id;
  std::string salt;  ///< hexadecimal
  std::string text;
  std::string digest;
};

struct OpenJob {
  std::string number;
  std::string vehicle_typed;
  std::optional<std::string> chassis_reason;  ///< set: the number is no VIN, because
  std::optional<PrivateText> plate;
  std::optional<PrivateText> customer_reference;
  std::optional<PrivateText> complaint;
  std::string odometer;  ///< may be blank: not read
  std::string gearbox_serial;
  std::string build_date;
  std::string language = "en";
};
struct DoStep {
  std::string step;
};
struct CheckStep {
  std::string step;
  bool in_order = false;
  std::string finding;
};
struct ChooseAnswer {
  std::string step;
  std::string choice;
};
struct TypedReading {
  std::string channel;
  std::string text;
  std::string instrument;  ///< id; blank where none was used
};
struct EnterReadings {
  std::string step;
  std::vector<TypedReading> readings;
};
struct EnterPeak {
  std::string step;
  TypedReading reading;
};
/// Some or all of the step's parts; it is done when each was fitted.
struct FitParts {
  std::string step;
  std::vector<PartFitted> parts;  ///< number blank: as the spec sheet has it
};
struct AddPhoto {
  std::string step;
  std::string sha256;
  std::string media_type;
  std::int64_t bytes = 0;
  std::string caption;
};
struct WriteText {
  std::string step;
  std::string text;
};
struct TryShim {
  std::string step;
  std::string shim;
  Fit fit = Fit::tight;
};
struct EnterDepths {
  std::string step;
  std::vector<std::string> readings;
  std::string reference;
  std::string stamp;  ///< with its sign, `-0,12`; 0 needs none; blank where the method uses none
  std::string instrument;
};
struct EnterFloatRun {
  std::string step;
  int spot = 1;
  std::string rest;
  std::string lifted;
  std::string zero_after;  ///< blank: not looked at
  std::string instrument;
};
struct BeginSeries {
  std::string step;
  std::vector<int> spots;  ///< empty: all
  SeriesReason reason = SeriesReason::measure_again;
};
struct Confirm {
  std::string step;
  std::string question;
  std::string remark;
};
struct ChooseShim {
  std::string step;
  std::string shim;
  std::string reason;  ///< needed where it is not the advised one
};
struct TypedAttemptValue {
  std::string channel;
  std::string before;
  std::string after;
};
struct TryTeachIn {
  std::string step;
  bool completed = false;
  std::vector<TypedAttemptValue> values;
  std::string code;
  std::string reason;
};
struct Sign {
  std::string step;
};
struct Deviate {
  std::string step;
  std::string reason;
};
struct SayNotRequired {
  std::string step;
  std::string reason;
};
struct Withdraw {
  std::int64_t entry = 0;
  std::string reason;
};
struct Note {
  std::optional<std::string> step;
  std::string text;
};
struct Park {
  std::string waits_for;
  std::string due;  ///< ISO date or blank
};
struct TakeUp {};
struct HandOver {
  std::string to;
  std::string remark;
};
/// Take the pack off and begin the next assembly, to change the shims of these sides.
struct BeginAssembly {
  std::vector<Side> sides;
  std::string reason;
};

/// Freeze the record: who signs has proved it with a PIN before this is asked.
struct SealJob {
  std::string digest;                ///< SHA-256 of what was signed, hexadecimal
  std::vector<std::string> signers;  ///< persons, the technician first
};
struct AddAddendum {
  std::string reason;
  std::string text;
};

using Command =
    std::variant<OpenJob, DoStep, CheckStep, ChooseAnswer, EnterReadings, EnterPeak, FitParts, AddPhoto, WriteText,
                 TryShim, EnterDepths, EnterFloatRun, BeginSeries, Confirm, ChooseShim, TryTeachIn, Sign, Deviate,
                 SayNotRequired, Withdraw, Note, Park, TakeUp, HandOver, BeginAssembly, SealJob, AddAddendum>;

}  // namespace shimwright::job
