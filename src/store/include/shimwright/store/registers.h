#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shimwright/quantity/error.h"
#include "shimwright/store/types.h"

namespace shimwright::store {

class Connection;

/// Code: `logo_unusable` (no PNG or JPEG by its first bytes, or larger than 500 kB).
[[nodiscard]] Result<void> check_logo(const Logo& logo);

/// What a workshop keeps over all jobs. Each change is written beside its history (`changes`); ids are UUIDs.
/// Codes of refusal: those of Store, and `bad_id`, `bad_item` (a name is blank; the place is the field), `bad_date`,
/// `bad_amount` (below or above what it can be), `initials_taken`, `last_person` (nobody else is at work),
/// `shim_twice`, `shim_alike` (two of one thickness), `logo_unusable` and `too_many` (a tray of more than 200 shims).
class Registers {
 public:
  explicit Registers(Connection& connection) : connection_(&connection) {}

  [[nodiscard]] Result<void> put(const Person& person, const By& by);
  /// One that is in use.
  [[nodiscard]] Result<void> put(const job::Instrument& instrument, const By& by) {
    return put(KeptInstrument{instrument}, by);
  }
  [[nodiscard]] Result<void> put(const KeptInstrument& kept, const By& by);
  /// The whole tray as it lies there now.
  [[nodiscard]] Result<void> put(const Tray& tray, const By& by);
  [[nodiscard]] Result<void> put(const Workshop& workshop, const By& by);

  [[nodiscard]] Result<std::vector<Person>> persons() const;
  /// Those in use.
  [[nodiscard]] Result<std::vector<job::Instrument>> instruments() const;
  /// All there ever were.
  [[nodiscard]] Result<std::vector<KeptInstrument>> kept_instruments() const;
  [[nodiscard]] Result<std::vector<Tray>> trays() const;
  [[nodiscard]] Result<std::optional<Tray>> tray_named(const std::string& name) const;
  [[nodiscard]] Result<std::optional<Workshop>> workshop() const;

  /// Keeps an issue for ever, after it was read and found valid; gives its hash. Adding the same bytes again changes
  /// nothing. Refused as sheet::read_job_sheet() and sheet::read_spec_sheet() refuse, and `issue_taken`: another file
  /// says it is this issue; `mark_lost`: an issue of a demonstration sheet without its mark; `no_reason`: a job sheet
  /// has a caution or hold point less than the issue before (sheet::taken_away_for, drafts carry the reasons).
  [[nodiscard]] Result<std::string> add_job_sheet(const std::string& json, const By& by);
  [[nodiscard]] Result<std::string> add_spec_sheet(const std::string& json, const By& by);
  /// The latest issue of each name, by name.
  [[nodiscard]] Result<std::vector<SheetIssue>> job_sheets() const;
  [[nodiscard]] Result<std::vector<SheetIssue>> spec_sheets() const;
  /// Code: `unknown_sheet`.
  [[nodiscard]] Result<SheetIssue> job_sheet(const std::string& hash) const;
  [[nodiscard]] Result<SheetIssue> spec_sheet(const std::string& hash) const;

  /// The history of one item, oldest first.
  [[nodiscard]] Result<std::vector<RegisterChange>> changes(const std::string& table, const std::string& id) const;

 private:
  Connection* connection_;
};

}  // namespace shimwright::store
