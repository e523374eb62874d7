#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/job/command.h"
#include "shimwright/job/state.h"
#include "shimwright/quantity/error.h"
#include "shimwright/store/types.h"

namespace shimwright::store {

class Connection;
class Registers;
class SheetShelf;
class WriterLock;

enum class Mode { read_write, look_only };

/// Who opens a store and what for.
struct Opening {
  Mode mode = Mode::read_write;
  std::string person;       ///< shown to whoever finds the store locked: a name, not an id
  std::int64_t now_ms = 0;  ///< UTC, milliseconds; when the lock was taken
};

/// Who writes in a store.
struct LockHolder {
  std::string person;
  std::string host;
  std::int64_t since_ms = 0;
  std::int64_t process = 0;
  friend bool operator==(const LockHolder&, const LockHolder&) = default;
};

/// One workshop's store: an SQLite file with a folder `photos` beside it (docs/store-schema.md). Belongs to the thread
/// that opened it; another thread opens its own. One program at a time writes; any number look.
///
/// Codes of refusal that any function may give: `disk_full`, `disk_fault` (the disk does not read or write),
/// `store_busy` (another program holds it just now), `store_damaged`, `look_only` (asked to write, opened for looking).
class Store {
 public:
  /// Opens, or makes where nothing lies at `path` and the mode is read_write. A new store and its folder are readable
  /// by their owner alone. An older store is brought up to date after a verified copy of it was laid beside it.
  /// A newer store, and one on a network share, opens for looking only; why_look_only() says why.
  ///
  /// `path` is absolute, UTF-8. Codes of refusal: `path_not_absolute`, `no_store` (looking, and nothing is there),
  /// `not_a_store` (not a database, or another program's), `store_damaged`, `locked` (someone writes; the sentence says
  /// who), `sqlite_differs` (two versions of SQLite in one program), `cannot_open`.
  [[nodiscard]] static Result<std::unique_ptr<Store>> open(const std::string& path, const Opening& opening);
  /// Once more what this program has open for writing, for another of its threads; the lock stays with the first, which
  /// must be open as long as this is. Codes: as open(), and `look_only` (it is not written here).
  [[nodiscard]] static Result<std::unique_ptr<Store>> open_beside(const std::string& path);
  ~Store();
  Store(const Store&) = delete;
  Store& operator=(const Store&) = delete;

  /// Who has the store open for writing; nothing where nobody has.
  [[nodiscard]] static std::optional<LockHolder> lock_holder(const std::string& path);
  /// Takes away the lock of a program that is gone. Only for a person who was shown whose it is: `shown` must still be
  /// the holder. Codes: `lock_changed`, `cannot_open`.
  [[nodiscard]] static Result<void> break_lock(const std::string& path, const LockHolder& shown);

  [[nodiscard]] const std::string& path() const;
  [[nodiscard]] bool looks_only() const;
  /// Why a store that was opened for writing can only be looked at; nothing where it can be written or looking was
  /// asked for.
  [[nodiscard]] const std::optional<Message>& why_look_only() const;
  /// Of the open file.
  [[nodiscard]] Result<int> schema_version() const;

  /// Persons, instruments, trays, sheets, workshop.
  [[nodiscard]] Registers& registers();
  /// Does what `work` does, or nothing where that is refused.
  [[nodiscard]] Result<void> all_or_nothing(const std::function<Result<void>()>& work);

  /// Keeps entries, their personal texts and all that is derived from them, in one transaction; after a return without
  /// error they are on the disk. `after` is the job as these entries have made it: its next step, pack serials and the
  /// like come from there. Codes: `lost_race` (the first entry does not follow the last one stored: load again),
  /// `not_utf8`, and where a job is opened `unknown_sheet` (it is not in the store) and `not_checked` (a sheet without
  /// the demonstration mark that nobody checked).
  [[nodiscard]] Result<void> append(const std::string& job, const std::vector<job::Entry>& entries,
                                    const std::vector<job::PrivateText>& texts, const job::JobState& after);

  /// Codes: `unknown_job`, `not_foldable` (the opening is not its first entry), `unknown_sheet`; as the readers of
  /// sheets; as job::decode() for an entry of a newer program.
  [[nodiscard]] Result<LoadedJob> load(const std::string& job) const;

  /// Latest first.
  [[nodiscard]] Result<std::vector<JobSummary>> jobs(std::int64_t most = 1000) const;
  [[nodiscard]] Result<std::int64_t> job_count() const;
  /// Open and parked ones, latest first.
  [[nodiscard]] Result<std::vector<JobSummary>> open_jobs(std::int64_t most = 1000) const;
  [[nodiscard]] Result<std::int64_t> open_job_count() const;
  [[nodiscard]] Result<std::vector<JobSummary>> jobs_of_vehicle(const std::string& vehicle_key) const;
  /// By number, which two jobs may share.
  [[nodiscard]] Result<std::vector<JobSummary>> jobs_numbered(const std::string& number) const;
  /// One more than the highest job number that is all digits (18 at most); `1` where there is none.
  [[nodiscard]] Result<std::string> next_job_number() const;
  /// Jobs whose vehicle number, plate, job number, customer reference, serial or batch holds this text, from two
  /// characters on; from four on, one wrong character or two swapped ones are forgiven where exact ones leave room.
  /// Exact ones first, then latest first. Code: `search_too_short`.
  [[nodiscard]] Result<FoundJobs> search(const std::string& text, std::int64_t most = 50) const;

  /// What decide may know beyond the job: instruments, trays that the spec sheet names, pairs and the previous pack.
  /// `job` may be an id not stored yet.
  [[nodiscard]] Result<job::Context> context(const std::string& job, const sheet::SpecSheet& spec,
                                             const std::string& vehicle_key, const By& by) const;
  /// Shim change and change of float between one assembly and the next, from other jobs on this gearbox type.
  [[nodiscard]] Result<std::vector<job::Pair>> pairs(const std::string& gearbox, job::Side side,
                                                     const std::string& without_job) const;
  /// What the last job on this vehicle before this one left in it; nothing where there was none.
  [[nodiscard]] Result<std::optional<job::PreviousPack>> previous_pack(const std::string& vehicle_key,
                                                                       const std::string& before_job) const;

  /// Copies a photo into the store, before its entry, without the place where it was taken. JPEG or PNG, at most 20 MB.
  /// Codes: `photo_unreadable`, `photo_too_large`, `photo_kind`, `photo_damaged`.
  [[nodiscard]] Result<KeptPhoto> keep_photo(const std::string& file);
  /// Where a photo lies; the file may be missing.
  [[nodiscard]] std::string photo_path(const std::string& sha256) const;

  /// Takes a personal text out of the store, for good; the entries stay. Codes: `unknown_text`, and `erased_in_use` (it
  /// is erased, but its bytes stay in the log until whoever reads the store now is done and this is called again).
  [[nodiscard]] Result<void> erase_private_text(const std::string& id, const By& by);
  /// The same for plate, customer reference and complaint of every job of a vehicle; gives how many there were still.
  /// Backups made before keep them. Codes: `unknown_vehicle`, `erased_in_use`.
  [[nodiscard]] Result<std::int64_t> erase_vehicle_texts(const std::string& vehicle_key, const By& by);

  /// The end of the store-wide list of chain heads.
  [[nodiscard]] Result<HeadsEnd> heads_end() const;
  /// Whether the list still holds that end, at its place: false where something before it was dropped or changed.
  [[nodiscard]] Result<bool> holds_end(const HeadsEnd& end) const;

  /// For the functions of this layer that live beside the class.
  [[nodiscard]] Connection& connection() const;
  [[nodiscard]] SheetShelf& sheet_shelf() const;

 private:
  friend Result<std::unique_ptr<Store>> open_on(const std::string& file_system, const std::string& path,
                                                const Opening& opening);
  Store(std::unique_ptr<WriterLock> lock, std::unique_ptr<Connection> connection, std::optional<Message> why);

  [[nodiscard]] Result<void> may_write() const;

  std::unique_ptr<WriterLock> lock_;
  std::unique_ptr<Connection> connection_;
  std::unique_ptr<Registers> registers_;
  std::unique_ptr<SheetShelf> sheet_shelf_;
  std::string path_;
  std::optional<Message> why_look_only_;
};

}  // namespace shimwright::store
