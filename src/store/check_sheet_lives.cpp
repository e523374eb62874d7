#include <map>

#include <nlohmann/json.hpp>

#include "check_parts.h"
#include "schema.h"

namespace shimwright::store {

namespace {

using nlohmann::json;

Result<std::map<std::string, json>> history_of(Connection& connection, const char* table) {
  auto rows =
      connection.rows("SELECT item, body FROM register_change WHERE register = ? ORDER BY item, position", {table});
  if (!rows) {
    return passed_on(rows);
  }
  std::map<std::string, json> bodies;
  for (const Row& row : *rows) {
    bodies[text_in(row, 0)] = json::parse(bytes_in(row, 1), nullptr, false);
  }
  return bodies;
}

Result<void> check_checks(Connection& connection, CheckReport& report) {
  auto history = history_of(connection, "sheet_check");
  auto rows =
      connection.rows("SELECT id, sheet, person, at_ms, offset_min, second_person FROM sheet_check ORDER BY id");
  if (!history || !rows) {
    return history ? passed_on(rows) : passed_on(history);
  }
  for (const Row& row : *rows) {
    const json kept{{"id", text_in(row, 0)},           {"sheet", text_in(row, 1)},
                    {"person", text_in(row, 2)},       {"at_ms", number_in(row, 3)},
                    {"offset_min", number_in(row, 4)}, {"second_person", number_in(row, 5) != 0}};
    const auto entered = history->find(text_in(row, 0));
    if (entered == history->end() || entered->second != kept) {
      add_finding(report, "sheet_check_differs", "sheet_check", "", std::nullopt,
                  {SHIMWRIGHT_TEXT("store", "That the issue {0} was checked was not entered with this program."),
                   {text_in(row, 1)}});
    }
    history->erase(text_in(row, 0));
  }
  for (const auto& [item, body] : *history) {
    add_finding(report, "sheet_check_missing", "sheet_check", "", std::nullopt,
                {SHIMWRIGHT_TEXT("store", "The check {0} of a sheet was entered and is gone."), {item}});
  }
  return {};
}

/// What the rows of each job sheet say it lost, in the form of its history.
Result<std::map<std::string, json>> lost_rows(Connection& connection) {
  auto rows = connection.rows("SELECT sheet, step, kind, text, reason FROM taken_away ORDER BY sheet, item");
  if (!rows) {
    return passed_on(rows);
  }
  std::map<std::string, json> lost;
  for (const Row& row : *rows) {
    lost[text_in(row, 0)].push_back(json{
        {"step", text_in(row, 1)}, {"kind", text_in(row, 2)}, {"text", text_in(row, 3)}, {"reason", text_in(row, 4)}});
  }
  return lost;
}

Result<void> check_lost(Connection& connection, CheckReport& report) {
  auto history = history_of(connection, "job_sheet");
  auto lost = lost_rows(connection);
  if (!history || !lost) {
    return history ? passed_on(lost) : passed_on(history);
  }
  for (const auto& [sheet, body] : *history) {
    const json entered = body.is_object() ? body.value("taken_away", json()) : json();
    if (entered != (*lost)[sheet]) {
      add_finding(report, "taken_away_differs", "taken_away", "", std::nullopt,
                  {SHIMWRIGHT_TEXT("store", "What the job sheet {0} lost is not as it was entered."), {sheet}});
    }
  }
  return {};
}

}  // namespace

Result<void> check_sheet_lives(Connection& connection, CheckReport& report) {
  auto there = has_sheet_checks(connection);
  if (!there || !*there) {
    return there ? Result<void>() : passed_on(there);
  }
  if (auto checked = check_checks(connection, report); !checked) {
    return checked;
  }
  return check_lost(connection, report);
}

}  // namespace shimwright::store
