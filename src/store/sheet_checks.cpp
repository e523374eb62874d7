#include "shimwright/store/sheet_checks.h"

#include <algorithm>

#include <QDateTime>
#include <QTimeZone>

#include "connection.h"
#include "register_history.h"
#include "schema.h"
#include "sheet_issues.h"
#include "shimwright/sheet/sheet_check.h"
#include "shimwright/store/ids.h"

namespace shimwright::store {

namespace {

sheet::OnDay on_day(const By& by) {
  const auto there = QDateTime::fromMSecsSinceEpoch(by.moment.at_ms, QTimeZone(by.moment.offset_min * 60));
  return {by.person, there.date().toString(Qt::ISODate).toStdString()};
}

Result<void> is_known_person(Connection& connection, const std::string& person) {
  auto known = connection.value("SELECT 1 FROM person WHERE id = ?", {person});
  if (!known) {
    return passed_on(known);
  }
  if (*known != number_value(1)) {
    return refuse("unknown_person", "person",
                  SHIMWRIGHT_TEXT("store", "This person is not in the workshop's list: enter them first."));
  }
  return {};
}

Result<void> insert_check(Connection& connection, const SheetCheck& check, const By& by) {
  auto transaction = Transaction::begin(connection);
  if (!transaction) {
    return passed_on(transaction);
  }
  auto inserted = connection.execute(
      "INSERT INTO sheet_check (id, sheet, person, at_ms, offset_min, second_person) VALUES (?, ?, ?, ?, ?, ?)",
      {check.id, check.sheet, check.person, number_value(check.moment.at_ms), number_value(check.moment.offset_min),
       flag_value(check.second_person)});
  if (!inserted) {
    return inserted;
  }
  const nlohmann::json body{{"id", check.id},
                            {"sheet", check.sheet},
                            {"person", check.person},
                            {"at_ms", check.moment.at_ms},
                            {"offset_min", check.moment.offset_min},
                            {"second_person", check.second_person}};
  if (auto added = add_change(connection, "sheet_check", check.id, body, by); !added) {
    return added;
  }
  return transaction->commit();
}

Result<void> may_check(Connection& connection, const std::string& id, const std::string& person) {
  if (connection.looks_only()) {
    return refuse("look_only", "",
                  SHIMWRIGHT_TEXT("store", "The store can only be looked at here; nothing was saved."));
  }
  if (!is_uuid(id)) {
    return refuse("bad_id", "sheet_check/id",
                  SHIMWRIGHT_TEXT("store", "The id of this is not a UUID; report this fault."));
  }
  return is_known_person(connection, person);
}

/// An issue that waits for its check leaves the one before it in use.
Result<std::vector<SheetIssue>> usable_sheets(Connection& connection, const SheetTable& table) {
  auto latest = sheet_issues(connection, table.latest, {});
  if (!latest) {
    return latest;
  }
  std::vector<SheetIssue> usable;
  for (const SheetIssue& named : *latest) {
    auto issues = sheet_issues(connection, table.by_name, {named.name});
    if (!issues) {
      return issues;
    }
    for (SheetIssue& each : *issues) {
      const auto may = may_be_used(connection, table, each);
      if (!may) {
        return tl::make_unexpected(may.error());
      }
      if (*may) {
        usable.push_back(std::move(each));
        break;
      }
    }
  }
  return usable;
}

}  // namespace

Result<std::vector<SheetIssue>> usable_job_sheets(const Store& store) {
  return usable_sheets(store.connection(), job_sheet_table);
}

Result<std::vector<SheetIssue>> usable_spec_sheets(const Store& store) {
  return usable_sheets(store.connection(), spec_sheet_table);
}

Result<std::vector<SheetIssue>> issues_of_job_sheet(const Store& store, const std::string& name) {
  return sheet_issues(store.connection(), job_sheet_table.by_name, {name});
}

Result<std::vector<SheetIssue>> issues_of_spec_sheet(const Store& store, const std::string& gearbox) {
  return sheet_issues(store.connection(), spec_sheet_table.by_name, {gearbox});
}

Result<By> sheet_entered_by(const Store& store, const std::string& hash) {
  auto rows = store.connection().rows(
      "SELECT person, at_ms, offset_min, clock_went_back FROM register_change WHERE register IN ('job_sheet', "
      "'spec_sheet') AND item = ? ORDER BY position LIMIT 1",
      {hash});
  if (!rows) {
    return passed_on(rows);
  }
  if (rows->empty()) {
    return refuse("unknown_sheet", hash,
                  SHIMWRIGHT_TEXT("store", "This issue of a sheet is not in the store; add it first."));
  }
  const Row& row = rows->front();
  return By{text_in(row, 0), {number_in(row, 1), static_cast<int>(number_in(row, 2)), number_in(row, 3) != 0}};
}

Result<std::vector<SheetCheck>> checks_of_sheet(const Store& store, const std::string& hash) {
  auto there = has_sheet_checks(store.connection());
  if (!there || !*there) {
    return there ? Result<std::vector<SheetCheck>>() : passed_on(there);
  }
  auto rows = store.connection().rows(
      "SELECT id, sheet, person, at_ms, offset_min, second_person FROM sheet_check WHERE sheet = ? ORDER BY at_ms, id",
      {hash});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<SheetCheck> checks;
  for (const Row& row : *rows) {
    checks.push_back({text_in(row, 0),
                      text_in(row, 1),
                      text_in(row, 2),
                      {number_in(row, 3), static_cast<int>(number_in(row, 4)), false},
                      number_in(row, 5) != 0});
  }
  return checks;
}

Result<SheetCheck> check_sheet(Store& store, const std::string& id, const std::string& hash, const By& by) {
  if (auto may = may_check(store.connection(), id, by.person); !may) {
    return passed_on(may);
  }
  auto entered = sheet_entered_by(store, hash);
  auto checks = entered ? checks_of_sheet(store, hash) : tl::make_unexpected(std::move(entered.error()));
  if (!checks) {
    return passed_on(checks);
  }
  const auto own =
      std::find_if(checks->begin(), checks->end(), [&by](const SheetCheck& each) { return each.person == by.person; });
  if (own != checks->end()) {
    return *own;
  }
  const auto second_person = sheet::check_counts(on_day(*entered), on_day(by));
  if (!second_person) {
    return tl::make_unexpected(second_person.error());
  }
  const SheetCheck check{id, hash, by.person, {by.moment.at_ms, by.moment.offset_min, false}, *second_person};
  auto inserted = insert_check(store.connection(), check, by);
  return inserted ? Result<SheetCheck>(check) : passed_on(inserted);
}

Result<bool> sheet_may_be_used(const Store& store, const std::string& hash) {
  auto job = sheet_with_hash(store.connection(), job_sheet_table, hash);
  if (job || job.error().code != "unknown_sheet") {
    return job ? may_be_used(store.connection(), job_sheet_table, *job) : passed_on(job);
  }
  auto spec = sheet_with_hash(store.connection(), spec_sheet_table, hash);
  return spec ? may_be_used(store.connection(), spec_sheet_table, *spec) : passed_on(spec);
}

Result<SheetUse> use_of_sheet(const Store& store, const std::string& hash) {
  SheetUse use;
  for (const char* sql : {"SELECT count(*), coalesce(sum(standing <> 'closed'), 0) FROM job WHERE spec_hash = ?",
                          "SELECT count(*), coalesce(sum(standing <> 'closed'), 0) FROM job WHERE sheet_hash = ?"}) {
    auto rows = store.connection().rows(sql, {hash});
    if (!rows) {
      return passed_on(rows);
    }
    use.jobs += number_in(rows->front(), 0);
    use.open += number_in(rows->front(), 1);
  }
  return use;
}

Result<std::vector<sheet::TakenAway>> lost_by_sheet(const Store& store, const std::string& hash) {
  auto there = has_sheet_checks(store.connection());
  if (!there || !*there) {
    return there ? Result<std::vector<sheet::TakenAway>>() : passed_on(there);
  }
  auto rows =
      store.connection().rows("SELECT step, kind, text, reason FROM taken_away WHERE sheet = ? ORDER BY item", {hash});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<sheet::TakenAway> lost;
  for (const Row& row : *rows) {
    const auto guard = text_in(row, 1) == "caution" ? sheet::Guard::caution : sheet::Guard::hold_point;
    lost.push_back({text_in(row, 0), guard, text_in(row, 2), text_in(row, 3)});
  }
  return lost;
}

}  // namespace shimwright::store
