#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shimwright/job/entry.h"
#include "shimwright/job/state.h"
#include "shimwright/record/record.h"

/// Jobs made by hand from entries, without asking the job logic what it would say.
namespace shimwright::record_test {

using quantity::TypedNumber;
using quantity::Unit;
using sheet::Side;

/// `0.93` in mm, or with its unit; a test that types nonsense ends here.
[[nodiscard]] TypedNumber typed(std::string_view text, Unit unit = Unit::millimetre);

/// Writes entries one after the other, each some minutes after the one before.
class Bench {
 public:
  /// Entries from here on are made by this person (`person-mk`) …
  Bench& by(std::string person);
  /// … and at this time, in minutes since the job was opened; each entry then takes one minute.
  Bench& at(int minutes);
  std::int64_t add(job::EntryBody body);

  void check(const std::string& step, bool in_order = true, const std::string& finding = "");
  void choose(const std::string& step, const std::string& choice, bool accepted = true);
  void read(const std::string& step, std::vector<job::Reading> readings);
  void peak(const std::string& step, int attempt, job::Reading reading, std::optional<int> most);
  void part(const std::string& step, const std::string& part, const std::string& number, std::int64_t quantity,
            const std::string& batch = "");
  void trial(const std::string& step, Side side, const std::string& shim, job::Fit fit);
  void choose_shim(const std::string& step, Side side, const std::string& shim, int thickness_um);
  /// One run at each spot, rest 0.00.
  void runs(const std::string& step, Side side, const std::vector<std::string>& lifted, int series = 1,
            bool as_found = false);
  void advise_float(const std::string& step, Side side, job::Conclusion conclusion,
                    const std::vector<std::int64_t>& floats, job::ReadingVerdict verdict,
                    std::optional<bool> trials_agree = std::nullopt);
  void begin_assembly(std::vector<Side> sides, const std::string& reason);

  [[nodiscard]] const std::vector<job::Entry>& entries() const { return entries_; }
  [[nodiscard]] job::StepRef here(const std::string& step) const { return {step, assembly_}; }

 private:
  std::vector<job::Entry> entries_;
  std::string person_ = "person-mk";
  int minutes_ = 0;
  int assembly_ = 1;
};

[[nodiscard]] job::Reading reading(const std::string& channel, std::string_view text, Unit unit = Unit::millimetre);
[[nodiscard]] job::Reading judged(job::Reading reading, job::ReadingVerdict verdict,
                                  std::optional<std::string_view> least, std::optional<std::string_view> most);
[[nodiscard]] job::InstrumentUsed instrument(const std::string& name);

/// The sheets shipped with the project.
[[nodiscard]] job::Sheets shipped_sheets();
[[nodiscard]] record::RecordNames sample_names();

[[nodiscard]] job::Opened opened();
/// Two assemblies, the first too large, one deviation, finished and signed.
[[nodiscard]] Bench finished_job();
/// Received, stripped, the first trials of the large bearing made.
[[nodiscard]] Bench open_job();
/// Every kind of entry, five assemblies, long texts.
[[nodiscard]] Bench long_job();

[[nodiscard]] record::Record record_of(const Bench& bench);

}  // namespace shimwright::record_test
