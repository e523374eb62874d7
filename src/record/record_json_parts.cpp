#include "record_json_parts.h"

namespace shimwright::record::parts_json {

namespace {

std::string text(std::string_view view) {
  return std::string(view);
}

Json of(const SheetHead& sheet) {
  return {{"id", sheet.id},
          {"name", sheet.name},
          {"title", sheet.title},
          {"issue", sheet.issue},
          {"hash", sheet.hash},
          {"source", sheet.source},
          {"demonstration", sheet.demonstration}};
}

std::string_view name_of(WhyNotMeasured why) {
  switch (why) {
    case WhyNotMeasured::not_required:
      return "not_required";
    case WhyNotMeasured::deviation:
      return "deviation";
    case WhyNotMeasured::not_done:
      break;
  }
  return "not_done";
}

std::string_view name_of(AnswerKind kind) {
  switch (kind) {
    case AnswerKind::done:
      return "done";
    case AnswerKind::in_order:
      return "in_order";
    case AnswerKind::not_in_order:
      return "not_in_order";
    case AnswerKind::chosen:
      return "chosen";
    case AnswerKind::written:
      return "written";
    case AnswerKind::not_required:
      break;
  }
  return "not_required";
}

std::string_view name_of(StopKind kind) {
  switch (kind) {
    case StopKind::parked:
      return "parked";
    case StopKind::taken_up:
      return "taken_up";
    case StopKind::handed_over:
      break;
  }
  return "handed_over";
}

Json with_stamp(const Stamp& stamp, Json object) {
  object["stamp"] = parts_json::of(stamp);
  return object;
}

}  // namespace

Json of(const TypedNumber& number) {
  return {{"base", number.base},
          {"decimals", number.decimals},
          {"unit", text(quantity::symbol_of(number.unit))},
          {"dimension", text(quantity::name_of(quantity::dimension_of(number.unit)))},
          {"text", quantity::text_of(number)}};
}

Json of(const Message& message) {
  return {{"text", message.text}, {"arguments", message.arguments}, {"en", message.in_english()}};
}

Json of(const Stamp& stamp) {
  return {{"entry", stamp.entry},
          {"at_ms", stamp.moment.at_ms},
          {"offset_min", stamp.moment.offset_min},
          {"clock_went_back", stamp.moment.clock_went_back},
          {"person", stamp.person},
          {"initials", stamp.initials}};
}

Json of(const Place& place) {
  return {{"step", place.step}, {"title", place.title}, {"stage", place.stage}, {"assembly", place.assembly}};
}

Json of(const Personal& personal) {
  return {{"id", personal.id}, {"digest", personal.digest}};
}

Json of(const job::InstrumentUsed& instrument) {
  Json object = {{"id", instrument.id},
                 {"name", instrument.name},
                 {"resolution", instrument.resolution},
                 {"permissible_error", instrument.permissible_error},
                 {"overdue", instrument.overdue}};
  put(object, "calibrated_to", instrument.calibrated_to);
  put(object, "calibrated_on", instrument.calibrated_on);
  put(object, "repeatability", instrument.repeatability);
  return object;
}

Json of(const job::LimitUsed& limit) {
  Json object = {
      {"unit", text(quantity::symbol_of(limit.unit))}, {"decimals", limit.decimals}, {"source", limit.source}};
  put(object, "least", limit.least);
  put(object, "most", limit.most);
  return object;
}

Json of(const ReadingLine& line) {
  Json object = with_stamp(line.stamp, {{"place", of(line.place)},
                                        {"channel", line.channel},
                                        {"channel_title", line.channel_title},
                                        {"only_channel", line.only_channel},
                                        {"number", of(line.number)},
                                        {"verdict", text(job::name_of(line.verdict))},
                                        {"entered_again", line.entered_again}});
  if (line.side) {
    object["side"] = text(sheet::name_of(*line.side));
  }
  put(object, "limit", line.limit);
  put(object, "must_equal", line.must_equal);
  put(object, "instrument", line.instrument);
  put(object, "attempt", line.attempt);
  put(object, "most_attempts", line.most_attempts);
  return object;
}

Json of(const JobHead& head) {
  Json people = Json::array();
  for (const auto& [id, person] : head.people) {
    people.push_back({{"id", id}, {"initials", person.initials}, {"name", person.name}});
  }
  Json object = {{"number", head.number},     {"language", head.language}, {"opened", of(head.opened)},
                 {"assembly", head.assembly}, {"sheet", of(head.sheet)},   {"spec", of(head.spec)},
                 {"people", people}};
  put(object, "closed", head.closed);
  put(object, "next_step", head.next_step);
  return object;
}

Json of(const Vehicle& vehicle) {
  Json object = {{"key", vehicle.key}, {"gearbox", vehicle.gearbox}};
  put(object, "chassis_reason", vehicle.chassis_reason);
  put(object, "plate", vehicle.plate);
  put(object, "customer_reference", vehicle.customer_reference);
  put(object, "complaint", vehicle.complaint);
  put(object, "odometer", vehicle.odometer);
  put(object, "gearbox_serial", vehicle.gearbox_serial);
  put(object, "build_date", vehicle.build_date);
  return object;
}

Json of(const TeachIn& attempt) {
  Json values = Json::array();
  for (const TeachInValue& value : attempt.values) {
    Json each = {{"channel", value.channel}, {"channel_title", value.channel_title}};
    put(each, "before", value.before);
    if (value.after) {
      each["after"] = {{"number", of(value.after->number)}, {"verdict", text(job::name_of(value.after->verdict))}};
      put(each["after"], "limit", value.after->limit);
      put(each["after"], "instrument", value.after->instrument);
    }
    values.push_back(std::move(each));
  }
  return with_stamp(attempt.stamp, {{"place", of(attempt.place)},
                                    {"attempt", attempt.attempt},
                                    {"completed", attempt.completed},
                                    {"values", values},
                                    {"code", attempt.code},
                                    {"reason", attempt.reason}});
}

Json of(const PartLine& part) {
  return with_stamp(part.stamp, {{"place", of(part.place)},
                                 {"part", part.part},
                                 {"title", part.title},
                                 {"number", part.number},
                                 {"quantity", part.quantity},
                                 {"batch", part.batch}});
}

Json of(const Deviation& deviation) {
  return with_stamp(deviation.stamp, {{"place", of(deviation.place)},
                                      {"left_out", deviation.left_out},
                                      {"found", list_of(deviation.found)},
                                      {"reason", deviation.reason}});
}

Json of(const Disagreement& disagreement) {
  return with_stamp(disagreement.stamp, {{"side", text(sheet::name_of(disagreement.side))},
                                         {"assembly", disagreement.assembly},
                                         {"series", disagreement.series},
                                         {"reason", of(disagreement.reason)}});
}

Json of(const NotMeasured& line) {
  Json object = {{"place", of(line.place)}, {"why", text(name_of(line.why))}, {"reason", line.reason}};
  put(object, "stamp", line.stamp);
  return object;
}

Json of(const Answer& answer) {
  return with_stamp(answer.stamp, {{"place", of(answer.place)},
                                   {"hold_point", answer.hold_point},
                                   {"kind", text(name_of(answer.kind))},
                                   {"accepted", answer.accepted},
                                   {"text", answer.text}});
}

Json of(const Confirmation& confirmation) {
  Json object = with_stamp(
      confirmation.stamp,
      {{"place", of(confirmation.place)}, {"question", confirmation.question}, {"remark", confirmation.remark}});
  put(object, "asked", confirmation.asked);
  return object;
}

Json of(const Photo& photo) {
  return with_stamp(photo.stamp, {{"place", of(photo.place)},
                                  {"sha256", photo.sha256},
                                  {"media_type", photo.media_type},
                                  {"bytes", photo.bytes},
                                  {"caption", photo.caption}});
}

Json of(const Signature& signature) {
  return with_stamp(signature.stamp, {{"signer", text(sheet::name_of(signature.signer))}});
}

Json of(const NoteLine& note) {
  Json object = with_stamp(note.stamp, {{"text", note.text}});
  put(object, "place", note.place);
  return object;
}

Json of(const Stop& stop) {
  Json object =
      with_stamp(stop.stamp, {{"kind", text(name_of(stop.kind))}, {"text", stop.text}, {"unproven", stop.unproven}});
  put(object, "due", stop.due);
  put(object, "to", stop.to);
  return object;
}

Json of(const Assembly& assembly) {
  Json sides = Json::array();
  for (const Side side : assembly.sides) {
    sides.push_back(text(sheet::name_of(side)));
  }
  return with_stamp(assembly.stamp, {{"assembly", assembly.assembly}, {"sides", sides}, {"reason", assembly.reason}});
}

Json of(const TakenBack& line) {
  Json object =
      with_stamp(line.stamp, {{"entered", of(line.entered)}, {"what", list_of(line.what)}, {"reason", line.reason}});
  put(object, "place", line.place);
  return object;
}

Json of(const WorkValueLine& line) {
  return {{"id", line.id}, {"title", line.title}, {"value", line.value}, {"source", line.source}};
}

}  // namespace shimwright::record::parts_json
