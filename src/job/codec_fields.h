#pragma once

#include "shimwright/job/entry.h"

/// What the body of each kind holds on disk, version 1 (docs/formats/entries.md). One list of members serves writing
/// and reading, so that the two cannot drift apart. `each(key, member)` is called for every member in turn.
///
/// These lists are for ever. Version 2 of the kinds that name an instrument or a feel has what stands behind “from
/// version 2 on” as well; all of it may be absent, and a body without it is written as version 1.
namespace shimwright::job::version_1 {

/// A standard uncertainty, kept in whole nanometres.
template <class Number>
struct Nanometres {
  Number& millimetres;
};
template <class Number>
Nanometres(Number&) -> Nanometres<Number>;

template <class Given, class Wanted>
concept Same = std::same_as<std::remove_const_t<Given>, Wanted>;

void fields(auto& each, Same<PrivateReference> auto& it) {
  each("id", it.id);
  each("digest", it.digest);
}

void fields(auto& each, Same<quantity::TypedNumber> auto& it) {
  each("base", it.base);
  each("decimals", it.decimals);
  each("unit", it.unit);
}

void fields(auto& each, Same<InstrumentUsed> auto& it) {
  each("id", it.id);
  each("name", it.name);
  each("resolution", it.resolution);
  each("permissible_error", it.permissible_error);
  each("calibrated_to", it.calibrated_to);
  each("overdue", it.overdue);
  // From version 2 on:
  each("calibrated_on", it.calibrated_on);
  each("repeatability", it.repeatability);
}

void fields(auto& each, Same<LimitUsed> auto& it) {
  each("unit", it.unit);
  each("least", it.least);
  each("most", it.most);
  each("decimals", it.decimals);
  each("source", it.source);
}

void fields(auto& each, Same<Reading> auto& it) {
  each("channel", it.channel);
  each("number", it.number);
  each("verdict", it.verdict);
  each("limit", it.limit);
  each("instrument", it.instrument);
}

void fields(auto& each, Same<Message> auto& it) {
  each("text", it.text);
  each("arguments", it.arguments);
}

void fields(auto& each, Same<Question> auto& it) {
  each("code", it.code);
  each("message", it.message);
}

void fields(auto& each, Same<PartFitted> auto& it) {
  each("part", it.part);
  each("number", it.number);
  each("quantity", it.quantity);
  each("batch", it.batch);
}

void fields(auto& each, Same<AttemptValue> auto& it) {
  each("channel", it.channel);
  each("before", it.before);
  each("after", it.after);
}

/// The step lies flat in the body, where plain SQL finds it.
void fields(auto& each, Same<StepRef> auto& it) {
  each("step", it.step);
  each("assembly", it.assembly);
}

void fields(auto& each, Same<Opened> auto& it) {
  each("number", it.number);
  each("vehicle_key", it.vehicle_key);
  each("chassis_reason", it.chassis_reason);
  each("plate", it.plate);
  each("customer_reference", it.customer_reference);
  each("complaint", it.complaint);
  each("odometer", it.odometer);
  each("gearbox", it.gearbox);
  each("gearbox_serial", it.gearbox_serial);
  each("build_date", it.build_date);
  each("sheet_id", it.sheet_id);
  each("sheet_hash", it.sheet_hash);
  each("spec_id", it.spec_id);
  each("spec_hash", it.spec_hash);
  each("language", it.language);
}

void fields(auto& each, Same<Done> auto& it) {
  fields(each, it.at);
}

void fields(auto& each, Same<Checked> auto& it) {
  fields(each, it.at);
  each("in_order", it.in_order);
  each("finding", it.finding);
}

void fields(auto& each, Same<Chosen> auto& it) {
  fields(each, it.at);
  each("choice", it.choice);
  each("accepted", it.accepted);
}

void fields(auto& each, Same<Read> auto& it) {
  fields(each, it.at);
  each("readings", it.readings);
  each("questions", it.questions);
}

void fields(auto& each, Same<PeakRead> auto& it) {
  fields(each, it.at);
  each("attempt", it.attempt);
  each("reading", it.reading);
  each("most_attempts", it.most_attempts);
}

void fields(auto& each, Same<PartsFitted> auto& it) {
  fields(each, it.at);
  each("parts", it.parts);
}

void fields(auto& each, Same<PhotoTaken> auto& it) {
  fields(each, it.at);
  each("sha256", it.sha256);
  each("media_type", it.media_type);
  each("bytes", it.bytes);
  each("caption", it.caption);
}

void fields(auto& each, Same<Written> auto& it) {
  fields(each, it.at);
  each("text", it.text);
  each("questions", it.questions);
}

void fields(auto& each, Same<ShimTried> auto& it) {
  fields(each, it.at);
  each("side", it.side);
  each("shim", it.shim);
  each("fit", it.fit);
  each("thickness", it.thickness);
  each("u_nm", it.u_nm);
  // From version 2 on:
  each("feel_nm", it.feel_nm);
}

void fields(auto& each, Same<DepthsRead> auto& it) {
  fields(each, it.at);
  each("side", it.side);
  each("readings", it.readings);
  each("reference", it.reference);
  each("stamp", it.stamp);
  each("instrument", it.instrument);
}

void fields(auto& each, Same<FloatRun> auto& it) {
  fields(each, it.at);
  each("side", it.side);
  each("as_found", it.as_found);
  each("spot", it.spot);
  each("series", it.series);
  each("rest", it.rest);
  each("lifted", it.lifted);
  each("zero_after", it.zero_after);
  each("instrument", it.instrument);
}

void fields(auto& each, Same<SeriesBegun> auto& it) {
  fields(each, it.at);
  each("series", it.series);
  each("spots", it.spots);
  each("reason", it.reason);
}

void fields(auto& each, Same<Confirmed> auto& it) {
  fields(each, it.at);
  each("question", it.question);
  each("remark", it.remark);
}

void fields(auto& each, Same<Advised> auto& it) {
  fields(each, it.at);
  each("side", it.side);
  each("engine", it.engine);
  each("case", it.case_json);
  each("answer", it.answer_json);
  each("conclusion", it.conclusion);
  each("shim", it.shim);
  each("candidates", it.candidates);
  each("trials_agree", it.trials_agree);
  each("mean", it.mean);
  each("spot_floats", it.spot_floats);
  each("spot_verdicts", it.spot_verdicts);
  each("expanded_u", it.expanded_u);
  each("questions", it.questions);
  each("reason", it.reason);
}

void fields(auto& each, Same<ShimChosen> auto& it) {
  fields(each, it.at);
  each("side", it.side);
  each("shim", it.shim);
  each("thickness", it.thickness);
  Nanometres uncertainty{it.u_mm};
  each("u_nm", uncertainty);
  each("by", it.by);
  each("chance_percent", it.chance_percent);
  each("reason", it.reason);
  each("questions", it.questions);
}

void fields(auto& each, Same<TeachInTried> auto& it) {
  fields(each, it.at);
  each("attempt", it.attempt);
  each("completed", it.completed);
  each("values", it.values);
  each("code", it.code);
  each("reason", it.reason);
}

void fields(auto& each, Same<Signed> auto& it) {
  fields(each, it.at);
  each("signer", it.signer);
}

void fields(auto& each, Same<Deviated> auto& it) {
  fields(each, it.at);
  each("reason", it.reason);
}

void fields(auto& each, Same<NotRequired> auto& it) {
  fields(each, it.at);
  each("reason", it.reason);
}

void fields(auto& each, Same<Withdrawn> auto& it) {
  each("entry", it.entry);
  each("reason", it.reason);
}

void fields(auto& each, Same<Noted> auto& it) {
  each("step", it.step);
  each("text", it.text);
}

void fields(auto& each, Same<Parked> auto& it) {
  each("waits_for", it.waits_for);
  each("due", it.due);
}

void fields(auto& each, Same<TakenUp> auto& it) {
  each("unproven", it.unproven);
}

void fields(auto& each, Same<HandedOver> auto& it) {
  each("to", it.to);
  each("remark", it.remark);
}

void fields(auto& each, Same<AssemblyBegun> auto& it) {
  each("assembly", it.assembly);
  each("sides", it.sides);
  each("reason", it.reason);
}

void fields(auto& each, Same<Sealed> auto& it) {
  each("digest", it.digest);
  each("signers", it.signers);
}

void fields(auto& each, Same<AddendumAdded> auto& it) {
  each("reason", it.reason);
  each("text", it.text);
}

}  // namespace shimwright::job::version_1
