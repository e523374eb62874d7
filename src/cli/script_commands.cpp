#include <QDateTime>
#include <QString>
#include <array>
#include <limits>

#include "script.h"
#include "script_fields.h"

namespace shimwright::cli {

namespace {

using Value = json::Value;

/// Who, when and what is expected: every command may say it.
void take_common(Fields& fields, ScriptCommand& taken) {
  taken.by = fields.text("by");
  if (fields.has("at")) {
    const std::string text = fields.text("at");
    taken.at = read_moment(text);
    if (!taken.at) {
      fields.fail(
          Error{"bad_time", fields.place_of("at"),
                Message{SHIMWRIGHT_TEXT("cli", "“{0}” is no time: write it as in 2026-11-24T10:58+00:00."), {text}}});
    }
  }
  if (fields.has("expect")) {
    const std::string expected = fields.text("expect");
    taken.expect_accepted = expected == "accepted";
    if (expected != "accepted" && expected != "refused") {
      fields.fail(
          Error{"unknown_name", fields.place_of("expect"),
                Message{SHIMWRIGHT_TEXT("cli", "“{0}” cannot be expected: write accepted or refused."), {expected}}});
    }
  }
}

std::vector<job::TypedReading> take_readings(Fields& fields) {
  std::vector<job::TypedReading> readings;
  for (const Fields::Element& each : fields.list("readings")) {
    Fields one(*each.value, each.place, {"channel", "text"}, {"instrument"});
    readings.push_back({one.text("channel"), one.text("text"), one.text("instrument")});
    if (const auto& fault = one.fault()) {
      fields.fail(*fault);
    }
  }
  return readings;
}

std::vector<std::string> take_texts(Fields& fields, std::string_view key) {
  std::vector<std::string> texts;
  for (const Fields::Element& each : fields.list(key)) {
    const std::string* text = each.value->string();
    if (text == nullptr) {
      fields.fail(Error{"wrong_type", each.place,
                        Message{SHIMWRIGHT_TEXT("cli", "A text is expected here: put it in quotes."), {}}});
      break;
    }
    texts.push_back(*text);
  }
  return texts;
}

std::vector<int> take_spots(Fields& fields) {
  std::vector<int> spots;
  for (const Fields::Element& each : fields.list("spots")) {
    const json::Number* number = each.value->number();
    const bool digit = number != nullptr && number->text.size() == 1 && number->text != "0";
    if (!digit) {
      fields.fail(
          Error{"wrong_type", each.place, Message{SHIMWRIGHT_TEXT("cli", "A spot is a number from 1 to 9."), {}}});
      break;
    }
    spots.push_back(number->text.front() - '0');
  }
  return spots;
}

template <class Named>
auto take_name(Fields& fields, std::string_view key, Named named) {
  const std::string text = fields.text(key);
  const auto found = named(text);
  if (!found) {
    fields.fail(Error{"unknown_name", fields.place_of(key),
                      Message{SHIMWRIGHT_TEXT("cli", "“{0}” is not known here: see docs/formats/script.md."), {text}}});
  }
  return found;
}

std::optional<job::PrivateText> take_private(Fields& fields, std::string_view key) {
  if (!fields.has(key)) {
    return std::nullopt;
  }
  job::PrivateText text;
  text.text = fields.text(key);
  return text;
}

job::Command take_open(Fields& fields) {
  job::OpenJob open;
  open.number = fields.text("number");
  open.vehicle_typed = fields.text("vehicle");
  if (fields.has("chassis_reason")) {
    open.chassis_reason = fields.text("chassis_reason");
  }
  open.plate = take_private(fields, "plate");
  open.customer_reference = take_private(fields, "customer_reference");
  open.complaint = take_private(fields, "complaint");
  open.odometer = fields.text("odometer");
  open.gearbox_serial = fields.text("gearbox_serial");
  open.build_date = fields.text("build_date");
  if (fields.has("language")) {
    open.language = fields.text("language");
  }
  return open;
}

std::vector<job::PartFitted> take_parts(Fields& fields) {
  std::vector<job::PartFitted> parts;
  for (const Fields::Element& each : fields.list("parts")) {
    Fields one(*each.value, each.place, {"part"}, {"number", "quantity", "batch"});
    parts.push_back({one.text("part"), one.text("number"), one.whole("quantity", 1, 1000, 1), one.text("batch")});
    if (const auto& fault = one.fault()) {
      fields.fail(*fault);
    }
  }
  return parts;
}

std::vector<job::TypedAttemptValue> take_values(Fields& fields) {
  std::vector<job::TypedAttemptValue> values;
  for (const Fields::Element& each : fields.list("values")) {
    Fields one(*each.value, each.place, {"channel"}, {"before", "after"});
    values.push_back({one.text("channel"), one.text("before"), one.text("after")});
    if (const auto& fault = one.fault()) {
      fields.fail(*fault);
    }
  }
  return values;
}

job::Command take_try(Fields& fields) {
  const auto fit = take_name(fields, "fit", [](const std::string& name) { return job::fit_named(name); });
  return job::TryShim{fields.text("step"), fields.text("shim"), fit ? *fit : job::Fit::tight};
}

job::Command take_again(Fields& fields) {
  const auto reason =
      take_name(fields, "because", [](const std::string& name) { return job::series_reason_named(name); });
  return job::BeginSeries{fields.text("step"), take_spots(fields), reason ? *reason : job::SeriesReason::measure_again};
}

job::Command take_assembly(Fields& fields) {
  job::BeginAssembly begin;
  for (const std::string& each : take_texts(fields, "sides")) {
    const auto side = sheet::side_named(each);
    if (!side) {
      fields.fail(Error{"unknown_name", fields.place_of("sides"),
                        Message{SHIMWRIGHT_TEXT("cli", "“{0}” is no side: write lower or upper."), {each}}});
      break;
    }
    begin.sides.push_back(*side);
  }
  begin.reason = fields.text("reason");
  return begin;
}

job::Command take_note(Fields& fields) {
  job::Note note;
  if (fields.has("step")) {
    note.step = fields.text("step");
  }
  note.text = fields.text("text");
  return note;
}

job::Command take_depth(Fields& fields) {
  return job::EnterDepths{fields.text("step"), take_texts(fields, "readings"), fields.text("reference"),
                          fields.text("stamp"), fields.text("instrument")};
}

job::Command take_float(Fields& fields) {
  return job::EnterFloatRun{fields.text("step"),       static_cast<int>(fields.whole("spot", 1, 99, 1)),
                            fields.text("rest"),       fields.text("lifted"),
                            fields.text("zero_after"), fields.text("instrument")};
}

job::Command take_photo(Fields& fields) {
  job::AddPhoto photo;
  photo.step = fields.text("step");
  photo.sha256 = fields.text("file");
  photo.caption = fields.text("caption");
  return photo;
}

using Taker = job::Command (*)(Fields&);

/// The fields of each command beyond `command` and the common ones.
struct Form {
  std::string_view name;
  std::array<std::string_view, 4> required;
  std::array<std::string_view, 9> optional;
  Taker take;
};

job::Command take_peak(Fields& fields) {
  return job::EnterPeak{fields.text("step"), {"", fields.text("text"), fields.text("instrument")}};
}

constexpr std::array<Form, 27> forms{{
    {"open",
     {"number", "vehicle"},
     {"chassis_reason", "plate", "customer_reference", "complaint", "odometer", "gearbox_serial", "build_date",
      "language"},
     take_open},
    {"do", {"step"}, {}, [](Fields& f) -> job::Command { return job::DoStep{f.text("step")}; }},
    {"check",
     {"step", "in_order"},
     {"finding"},
     [](Fields& f) -> job::Command {
       return job::CheckStep{f.text("step"), f.truth("in_order"), f.text("finding")};
     }},
    {"choose",
     {"step", "choice"},
     {},
     [](Fields& f) -> job::Command {
       return job::ChooseAnswer{f.text("step"), f.text("choice")};
     }},
    {"read",
     {"step", "readings"},
     {},
     [](Fields& f) -> job::Command {
       return job::EnterReadings{f.text("step"), take_readings(f)};
     }},
    {"peak", {"step", "text"}, {"instrument"}, take_peak},
    {"part",
     {"step", "parts"},
     {},
     [](Fields& f) -> job::Command {
       return job::FitParts{f.text("step"), take_parts(f)};
     }},
    {"photo", {"step", "file"}, {"caption"}, take_photo},
    {"text",
     {"step", "text"},
     {},
     [](Fields& f) -> job::Command {
       return job::WriteText{f.text("step"), f.text("text")};
     }},
    {"try", {"step", "shim", "fit"}, {}, take_try},
    {"depth", {"step", "readings", "reference"}, {"stamp", "instrument"}, take_depth},
    {"float", {"step", "spot", "rest", "lifted"}, {"zero_after", "instrument"}, take_float},
    {"again", {"step", "because"}, {"spots"}, take_again},
    {"confirm",
     {"step", "question"},
     {"remark"},
     [](Fields& f) -> job::Command {
       return job::Confirm{f.text("step"), f.text("question"), f.text("remark")};
     }},
    {"fit",
     {"step", "shim"},
     {"reason"},
     [](Fields& f) -> job::Command {
       return job::ChooseShim{f.text("step"), f.text("shim"), f.text("reason")};
     }},
    {"teach_in",
     {"step", "completed"},
     {"values", "code", "reason"},
     [](Fields& f) -> job::Command {
       return job::TryTeachIn{f.text("step"), f.truth("completed"), take_values(f), f.text("code"), f.text("reason")};
     }},
    {"sign", {"step"}, {}, [](Fields& f) -> job::Command { return job::Sign{f.text("step")}; }},
    {"deviate",
     {"step", "reason"},
     {},
     [](Fields& f) -> job::Command {
       return job::Deviate{f.text("step"), f.text("reason")};
     }},
    {"not_required",
     {"step", "reason"},
     {},
     [](Fields& f) -> job::Command {
       return job::SayNotRequired{f.text("step"), f.text("reason")};
     }},
    {"withdraw",
     {"reason"},
     {"entry", "step"},
     [](Fields& f) -> job::Command {
       return job::Withdraw{f.whole("entry", 1, std::numeric_limits<std::int32_t>::max(), 0), f.text("reason")};
     }},
    {"note", {"text"}, {"step"}, take_note},
    {"park",
     {"waits_for"},
     {"due"},
     [](Fields& f) -> job::Command {
       return job::Park{f.text("waits_for"), f.text("due")};
     }},
    {"take_up", {}, {}, [](Fields&) -> job::Command { return job::TakeUp{}; }},
    {"hand_over",
     {"to"},
     {"remark"},
     [](Fields& f) -> job::Command {
       return job::HandOver{f.text("to"), f.text("remark")};
     }},
    {"assembly", {"reason"}, {"sides"}, take_assembly},
    {"seal", {}, {}, [](Fields&) -> job::Command { return job::SealJob{}; }},
    {"addendum",
     {"reason", "text"},
     {},
     [](Fields& f) -> job::Command {
       return job::AddAddendum{f.text("reason"), f.text("text")};
     }},
}};

/// An empty name in a form stands for none; `command` is there anyhow, so it may fill the place.
constexpr std::string_view or_command(std::string_view name) {
  return name.empty() ? "command" : name;
}

Fields fields_of(const Form& form, const Value& value, const std::string& place) {
  const auto& must = form.required;
  const auto& may = form.optional;
  return {value,
          place,
          {"command", "by", or_command(must[0]), or_command(must[1]), or_command(must[2]), or_command(must[3])},
          {"at", "expect", or_command(may[0]), or_command(may[1]), or_command(may[2]), or_command(may[3]),
           or_command(may[4]), or_command(may[5]), or_command(may[6]), or_command(may[7]), or_command(may[8])}};
}

}  // namespace

std::optional<job::Moment> read_moment(std::string_view text) {
  const auto given =
      QDateTime::fromString(QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())), Qt::ISODate);
  if (!given.isValid() || given.timeSpec() == Qt::LocalTime) {
    return std::nullopt;
  }
  return job::Moment{given.toMSecsSinceEpoch(), given.offsetFromUtc() / 60, false};
}

Result<ScriptCommand> read_script_command(const json::Value& value, const std::string& place) {
  const json::Value* named = value.find("command");
  const std::string* name = named == nullptr ? nullptr : named->string();
  if (name == nullptr) {
    return refuse("missing_field", json::pointer(place, "command"),
                  SHIMWRIGHT_TEXT("cli", "A command needs its name here, in quotes: see docs/formats/script.md."));
  }
  for (const Form& form : forms) {
    if (form.name != *name) {
      continue;
    }
    Fields fields = fields_of(form, value, place);
    ScriptCommand taken;
    if (!fields.fault()) {
      take_common(fields, taken);
      taken.command = form.take(fields);
    }
    if (*name == "withdraw" && fields.has("step")) {
      taken.withdraw_at = fields.text("step");
    }
    if (const auto& fault = fields.fault()) {
      return tl::make_unexpected(*fault);
    }
    return taken;
  }
  return refuse("unknown_command", json::pointer(place, "command"),
                SHIMWRIGHT_TEXT("cli", "There is no command “{0}”: see the list in docs/formats/script.md."), {*name});
}

}  // namespace shimwright::cli
