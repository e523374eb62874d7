#include "own_schema.h"

#include <algorithm>
#include <iterator>

#include "schema.h"
#include "shimwright/record/hash.h"

namespace shimwright::store {

namespace {

void add_with_length(std::string& all, const std::string& text) {
  all += std::to_string(text.size()) + ':' + text;
}

/// What the schema of a store of that version has to be.
Result<std::vector<Row>> schema_made_anew(int version) {
  auto fresh = Connection::open(QStringLiteral(":memory:"), Access::make);
  if (!fresh) {
    return passed_on(fresh);
  }
  std::vector<SchemaStep> steps = schema_steps();
  steps.erase(
      std::remove_if(steps.begin(), steps.end(), [version](const SchemaStep& step) { return step.version > version; }),
      steps.end());
  if (auto taken = take_steps(**fresh, steps); !taken) {
    return passed_on(taken);
  }
  return schema_texts(**fresh);
}

tl::unexpected<Error> foreign_schema(const std::string& name) {
  return refuse("store_damaged", "",
                SHIMWRIGHT_TEXT("store",
                                "“{0}” in this store is not as this program makes it, so it is not opened; keep it as "
                                "it is and go on with the latest backup."),
                {name.substr(0, 100)});
}

/// By its text alone: SQLite does not ask what the columns beside it call a thing.
bool only_holds(const std::string& sql) {
  constexpr std::string_view harmless[] = {"CREATE TABLE ", "CREATE INDEX ", "CREATE UNIQUE INDEX ", "CREATE VIEW "};
  return std::any_of(std::begin(harmless), std::end(harmless),
                     [&](std::string_view start) { return sql.rfind(start, 0) == 0; });
}

/// The name of the first of our tables that is not there as it should be, or of what acts and is none of ours.
std::optional<std::string> first_foreign(const std::vector<Row>& kept, const std::vector<Row>& expected) {
  for (const Row& row : expected) {
    if (text_in(row, 0) == "table" && std::find(kept.begin(), kept.end(), row) == kept.end()) {
      return text_in(row, 1);
    }
  }
  for (const Row& row : kept) {
    if (!only_holds(text_in(row, 2)) && std::find(expected.begin(), expected.end(), row) == expected.end()) {
      return text_in(row, 1);
    }
  }
  return std::nullopt;
}

bool is_trigger(const Row& row) {
  return text_in(row, 2).rfind("CREATE TRIGGER ", 0) == 0;
}

}  // namespace

std::string schema_digest(const std::vector<Row>& texts) {
  std::string all;
  for (const Row& row : texts) {
    for (std::size_t column = 0; column < row.size(); ++column) {
      add_with_length(all, text_in(row, column));
    }
  }
  return record::sha256_hex(all);
}

Result<bool> has_own_schema(Connection& connection) {
  auto version = schema_version(connection);
  if (!version) {
    return passed_on(version);
  }
  if (*version > schema_steps().back().version) {
    return true;
  }
  auto expected = schema_made_anew(*version);
  if (!expected) {
    return passed_on(expected);
  }
  auto kept = schema_texts(connection);
  if (!kept) {
    return passed_on(kept);
  }
  return *kept == *expected;
}

Result<void> check_nothing_acts(Connection& connection) {
  auto version = schema_version(connection);
  if (!version) {
    return passed_on(version);
  }
  auto kept = schema_texts(connection);
  if (!kept) {
    return passed_on(kept);
  }
  if (schema_digest(*kept) == newest_schema) {
    return {};
  }
  const bool newer = *version > schema_steps().back().version;
  auto expected = newer ? Result<std::vector<Row>>() : schema_made_anew(*version);
  if (!expected) {
    return passed_on(expected);
  }
  if (newer) {
    // It is only looked at, and then no trigger acts.
    kept->erase(std::remove_if(kept->begin(), kept->end(), is_trigger), kept->end());
  }
  const auto foreign = first_foreign(*kept, *expected);
  return foreign ? foreign_schema(*foreign) : Result<void>();
}

}  // namespace shimwright::store
