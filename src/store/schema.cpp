#include "schema.h"

#include <QDir>
#include <QFile>

// Qt's macro has to stand outside of any namespace.
static void load_resources() {
  Q_INIT_RESOURCE(shimwright_store);
}

namespace shimwright::store {

namespace {

Result<void> take_step(Connection& connection, const SchemaStep& step) {
  auto transaction = Transaction::begin(connection);
  if (!transaction) {
    return passed_on(transaction);
  }
  const QByteArray script = step.sql + "\nPRAGMA application_id = " + QByteArray::number(qlonglong{application_id}) +
                            ";\nPRAGMA user_version = " + QByteArray::number(step.version) + ";";
  if (auto ran = connection.run_script(script); !ran) {
    // What the database said is for whoever looks into it, and of no language.
    return refuse("schema_step", std::to_string(step.version) + ": " + ran.error().in_english(),
                  SHIMWRIGHT_TEXT("store",
                                  "The store could not be brought to version {0} and stays as it was; see that its "
                                  "disk has room and may be written to, then open it again."),
                  {std::to_string(step.version)});
  }
  return transaction->commit();
}

}  // namespace

std::vector<SchemaStep> schema_steps() {
  load_resources();
  std::vector<SchemaStep> steps;
  const QDir folder(QStringLiteral(":/shimwright/store"));
  for (const QString& name : folder.entryList({QStringLiteral("*.sql")}, QDir::Files, QDir::Name)) {
    QFile file(folder.filePath(name));
    if (file.open(QIODevice::ReadOnly)) {
      steps.push_back({name.left(4).toInt(), file.readAll()});
    }
  }
  return steps;
}

Result<int> schema_version(Connection& connection) {
  auto version = connection.value("PRAGMA user_version");
  if (!version) {
    return passed_on(version);
  }
  const auto* number = std::get_if<std::int64_t>(&*version);
  return number == nullptr ? 0 : static_cast<int>(*number);
}

namespace {

Result<bool> is_from(Connection& connection, int first_version) {
  auto version = schema_version(connection);
  if (!version) {
    return passed_on(version);
  }
  return *version >= first_version;
}

}  // namespace

Result<bool> has_seals(Connection& connection) {
  return is_from(connection, first_version_with_seals);
}

Result<bool> has_sheet_checks(Connection& connection) {
  return is_from(connection, first_version_with_sheet_checks);
}

Result<bool> has_own_values(Connection& connection) {
  return is_from(connection, first_version_with_own_values);
}

Result<bool> has_suffixes(Connection& connection) {
  return is_from(connection, first_version_with_suffixes);
}

Result<void> take_steps(Connection& connection, const std::vector<SchemaStep>& steps) {
  auto version = schema_version(connection);
  if (!version) {
    return passed_on(version);
  }
  for (const SchemaStep& step : steps) {
    if (step.version > *version) {
      if (auto taken = take_step(connection, step); !taken) {
        return taken;
      }
    }
  }
  return {};
}

Result<std::vector<Row>> schema_texts(Connection& connection) {
  return connection.rows("SELECT type, name, sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type, name");
}

}  // namespace shimwright::store
