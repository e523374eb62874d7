#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/record/record.h"

/// How each part of the record is gathered from a job's entries. Every function takes only entries that count, but for
/// taken_back().
namespace shimwright::record {

/// A job with what is needed to name things in it.
struct Source {
  const job::JobState& state;
  const RecordNames& names;
  std::string language;
  std::vector<const job::Entry*> live;  ///< entries that count, in order
};

[[nodiscard]] Source source_of(const job::JobState& state, const RecordNames& names);

[[nodiscard]] Stamp stamp_of(const Source& source, const job::Entry& entry);
[[nodiscard]] std::string initials_of(const Source& source, const std::string& person);
/// The step as its sheet has it; nullptr for an unknown id.
[[nodiscard]] const sheet::Step* step_named(const Source& source, std::string_view id);
/// An unknown step is named by its id.
[[nodiscard]] Place place_of(const Source& source, const std::string& step, int assembly);
[[nodiscard]] std::string text_of(const Source& source, const sheet::Text& text);
/// Steps of the sheet in order; none where there is no sheet.
[[nodiscard]] std::vector<const sheet::Step*> steps_of(const Source& source);
/// The reading step's channel; nullptr where step or channel is unknown.
[[nodiscard]] const sheet::Channel* channel_named(const sheet::Step* step, std::string_view id);
/// Title of the channel; its id where it is unknown.
[[nodiscard]] std::string channel_title(const Source& source, const sheet::Step* step, const std::string& channel);
[[nodiscard]] bool is_only_channel(const sheet::Step* step);
[[nodiscard]] std::optional<Personal> personal_of(const Source& source,
                                                  const std::optional<job::PrivateReference>& reference);
[[nodiscard]] ReadingLine reading_line(const Source& source, const job::Entry& entry, const job::StepRef& at,
                                       const job::Reading& reading);

[[nodiscard]] JobHead job_head(const Source& source);
[[nodiscard]] Vehicle vehicle(const Source& source);
[[nodiscard]] std::vector<ShimUse> shim_uses(const Source& source);
[[nodiscard]] std::vector<OldShim> old_shims(const Source& source);
[[nodiscard]] std::vector<FloatSeries> float_series(const Source& source);
[[nodiscard]] std::vector<Disagreement> disagreements(const Source& source, const std::vector<FloatSeries>& floats);
[[nodiscard]] std::vector<ReadingLine> readings(const Source& source);
[[nodiscard]] std::vector<ReadingLine> peaks(const Source& source);
[[nodiscard]] std::vector<TeachIn> teach_ins(const Source& source);
[[nodiscard]] std::vector<PartLine> parts(const Source& source);
[[nodiscard]] std::vector<WorkValueLine> work_values(const Source& source);
[[nodiscard]] std::vector<Deviation> deviations(const Source& source);
[[nodiscard]] std::vector<NotMeasured> not_measured(const Source& source);
[[nodiscard]] std::vector<Answer> answers(const Source& source);
[[nodiscard]] std::vector<Confirmation> confirmations(const Source& source);
[[nodiscard]] std::vector<Photo> photos(const Source& source);
[[nodiscard]] std::vector<Signature> signatures(const Source& source);
[[nodiscard]] std::vector<NoteLine> notes(const Source& source);
[[nodiscard]] std::vector<Stop> stops(const Source& source);
[[nodiscard]] std::vector<Assembly> assemblies(const Source& source);
[[nodiscard]] std::vector<TakenBack> taken_back(const Source& source);
/// What an entry said, digits as typed.
[[nodiscard]] std::vector<Message> what_was_entered(const Source& source, const job::Entry& entry);
/// The record's first words, from the rest of it.
[[nodiscard]] std::vector<Message> result_of(const Source& source, const Record& record);

}  // namespace shimwright::record
