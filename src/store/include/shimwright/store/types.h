#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/job/context.h"
#include "shimwright/job/entry.h"
#include "shimwright/job/state.h"
#include "shimwright/record/hash.h"

/// What goes into a store and comes out of it.
namespace shimwright::store {

/// Who changes something, and when.
struct By {
  std::string person;  ///< id; blank where nobody is known yet, as when a store is made
  job::Moment moment;
};

/// A job with all that was stored for it.
struct LoadedJob {
  std::string id;
  std::vector<job::Entry> entries;
  std::vector<record::StoredEntry> stored;                          ///< the same entries with bytes and hashes
  job::Sheets sheets;                                               ///< those it was opened on
  std::map<std::string, std::optional<std::string>> private_texts;  ///< by id; no text: erased
  std::map<std::string, std::string> private_salts;  ///< by id, hexadecimal: with it the digest can be proved
};

enum class JobStanding { open, parked, closed };
/// `open`, `parked`, `closed`.
[[nodiscard]] std::string_view name_of(JobStanding standing);

/// A job in one line of a list.
struct JobSummary {
  std::string id;
  std::string number;
  std::string vehicle_key;
  std::string gearbox;
  std::optional<std::string> plate;  ///< nothing where none was given or it was erased
  JobStanding standing = JobStanding::open;
  std::string stage;      ///< id of the stage of the next step; blank where no step is left
  std::string next_step;  ///< id; blank where no step is left
  int assembly = 1;
  std::string waits_for;           ///< parked: what for
  std::optional<std::string> due;  ///< parked: ISO date
  std::string at_bench;            ///< person who wrote last, or whom it was handed to
  std::int64_t opened_at_ms = 0;
  std::int64_t last_at_ms = 0;
  std::int64_t last_seq = 0;
};

/// What a search looks in.
enum class FoundIn { vehicle, plate, number, customer_reference, gearbox_serial, pack_serial, batch };
[[nodiscard]] std::string_view name_of(FoundIn place);

struct Found {
  JobSummary job;
  FoundIn place = FoundIn::vehicle;
  std::string term;         ///< what was found there, as it is compared: capitals and digits only
  bool exact = false;       ///< false: one character differs or two are swapped
  bool taken_back = false;  ///< all entries that held it were taken back, as when a wrong box was scanned
};

struct FoundJobs {
  std::vector<Found> jobs;
  bool more = false;  ///< others have it too
  [[nodiscard]] std::size_t size() const { return jobs.size(); }
  [[nodiscard]] bool empty() const { return jobs.empty(); }
};

enum class PersonRole { technician, checker };
/// `technician`, `checker`.
[[nodiscard]] std::string_view name_of(PersonRole role);
[[nodiscard]] std::optional<PersonRole> person_role_named(std::string_view name);

struct Person {
  std::string id;
  std::string name;
  std::string initials;
  std::optional<std::string> pin_hash;  ///< made and checked by who asks for the PIN
  bool active = true;
  PersonRole role = PersonRole::technician;
  std::optional<std::string> left_on = std::nullopt;   ///< ISO date; of a person who is not active
  std::optional<std::int64_t> feel_nm = std::nullopt;  ///< standard uncertainty of the feel, as the test found it
  std::optional<std::string> feel_on = std::nullopt;   ///< ISO date of that test
  friend bool operator==(const Person&, const Person&) = default;
};

/// One reading of a shim with a micrometer.
struct ShimReading {
  quantity::TypedNumber number;
  std::string instrument;  ///< id
  friend bool operator==(const ShimReading&, const ShimReading&) = default;
};

/// What is kept of a shim beside its thickness.
struct ShimStock {
  std::optional<int> reorder_at;              ///< so many or fewer left: order
  std::optional<std::int64_t> counted_at_ms;  ///< when its count was taken; unset: jobs since are not looked at
  std::vector<ShimReading> readings;          ///< its thickness and uncertainty stand on these, where there are any
  friend bool operator==(const ShimStock&, const ShimStock&) = default;
};

/// The shims for one bearing as they lie in the workshop. Its name is the `tray_name` spec sheets use.
struct Tray {
  std::string id;
  std::string name;
  std::vector<job::TrayShim> shims;
  std::map<std::string, ShimStock> stock = {};  ///< by shim; only where something is kept
};

/// An instrument with what a reading does not carry along.
struct KeptInstrument {
  job::Instrument instrument;
  bool in_use = true;
  std::optional<std::string> repeatability_on = std::nullopt;  ///< ISO date of the repeat test
};

/// A picture for the head of the record.
struct Logo {
  std::string media_type;  ///< `image/png`, `image/jpeg`
  std::string bytes;
  friend bool operator==(const Logo&, const Logo&) = default;
};

struct Workshop {
  std::string id;
  std::string name;
  std::string address;  ///< lines as on the record
  std::optional<Logo> logo = std::nullopt;
  friend bool operator==(const Workshop&, const Workshop&) = default;
};

/// One issue of a job sheet or spec sheet in the store.
struct SheetIssue {
  std::string hash;  ///< SHA-256 of its bytes
  std::string id;
  std::string name;  ///< job sheet: its short name; spec sheet: the gearbox
  std::int64_t issue = 1;
  std::string json;  ///< byte for byte
  std::int64_t added_at_ms = 0;
};

/// One change of a register: what it was made to.
struct RegisterChange {
  std::int64_t position = 0;
  std::string table;  ///< `person`, `instrument`, `tray`, `workshop`, `job_sheet`, `spec_sheet`, `sheet_check`,
                      ///< `private_text`, `job`
  std::string id;
  By by;
  std::string body;  ///< canonical JSON of the whole item after the change
};

/// A photo on disk beside the store.
struct KeptPhoto {
  std::string sha256;
  std::string media_type;  ///< `image/jpeg`, `image/png`
  std::int64_t bytes = 0;
};

/// Where the list of chain heads ends. A seal that holds this shows later that no job and no tail was dropped.
struct HeadsEnd {
  std::int64_t position = 0;
  std::string list_hash;
  friend bool operator==(const HeadsEnd&, const HeadsEnd&) = default;
};

}  // namespace shimwright::store
