#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/job/entry.h"
#include "shimwright/job/state.h"
#include "shimwright/quantity/error.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/record/record_parts.h"
#include "shimwright/sheet/words.h"

/// What a record says. Every number in it was entered, or is plainly derived from such (mean, spread, ± 95 %) and was
/// kept with the job when it was derived: nothing is computed anew by today's engine.
namespace shimwright::record {

/// What the record needs beyond the job: names that belong to ids.
struct RecordNames {
  std::string workshop_name;
  std::string workshop_address;                              ///< one line
  std::string logo;                                          ///< the bytes of a picture; none: empty
  std::map<std::string, PersonName> persons;                 ///< by id
  std::map<std::string, std::optional<PersonalText>> texts;  ///< personal texts by id; unset: erased
};

struct Record {
  std::string workshop_name;
  std::string workshop_address;
  std::string logo;  ///< of the paper only: neither exported nor sealed
  /// Photos shown on pages of their own, PNG or JPEG by the hash of the file; of the paper only. None: no such page.
  std::map<std::string, std::string> pictures;
  bool with_photos = false;  ///< pages of photos are wanted; one whose picture is not there is told
  JobHead job;
  Vehicle vehicle;
  std::vector<Message> result;  ///< sentences; the first is the verdict
  std::vector<ShimUse> shims;   ///< lower before upper, by assembly
  std::vector<OldShim> old_shims;
  std::vector<FloatSeries> floats;  ///< in the order they were begun
  std::vector<ReadingLine> readings;
  std::vector<ReadingLine> peaks;  ///< every attempt
  std::vector<TeachIn> teach_ins;  ///< every attempt
  std::vector<PartLine> parts;
  std::vector<Deviation> deviations;
  std::vector<Disagreement> disagreements;
  std::vector<NotMeasured> not_measured;
  std::vector<Answer> answers;
  std::vector<Confirmation> confirmations;
  std::vector<Photo> photos;
  std::vector<Signature> signatures;
  std::vector<NoteLine> notes;
  std::vector<Stop> stops;
  std::vector<Assembly> assemblies;  ///< from the second on
  std::vector<TakenBack> taken_back;
  std::vector<WorkValueLine> work_values;
  std::vector<std::int64_t> clock_went_back;  ///< entries before which the clock was set back; order is by entry
  std::int64_t entries = 0;                   ///< how many entries the record was made from

  /// From which assembly on answers count, by step and by bearing; earlier ones were asked again. Not sealed.
  std::map<std::string, int> step_counts_from;
  std::map<Side, int> side_counts_from;

  std::optional<SealMark> seal;       ///< unset: a draft
  std::vector<AddendumLine> addenda;  ///< after the sealed part, which they do not change

  /// Whether sheet or spec sheet hold demonstration values: said on every page.
  [[nodiscard]] bool demonstration() const { return job.sheet.demonstration || job.spec.demonstration; }
};

/// Pure and total: a job that is not finished, or not even opened, gives a record that says so.
[[nodiscard]] Record make_record(const job::JobState& state, const RecordNames& names);

/// The shim that lies at a bearing in the end; blank where none stands.
[[nodiscard]] std::string shim_fitted(const Record& record, Side side);

}  // namespace shimwright::record
