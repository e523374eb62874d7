#include "opening.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

#include "copy.h"
#include "shimwright/store/ids.h"

namespace shimwright::store {

namespace {

constexpr qint64 header_size = 100;

tl::unexpected<Error> not_a_store() {
  return refuse("not_a_store", "",
                SHIMWRIGHT_TEXT("store", "This file is not a store of this program; choose another."));
}

tl::unexpected<Error> cut_short() {
  return refuse("store_damaged", "",
                SHIMWRIGHT_TEXT("store",
                                "The end of this store is missing; keep it as it is and go on with the latest "
                                "backup."));
}

/// SQLite's header: page size at 16, number of pages at 28, most significant byte first.
qint64 size_by_header(const QByteArray& header) {
  const auto* bytes = header.constData();
  const auto page_size = qFromBigEndian<quint16>(bytes + 16);
  const auto pages = qFromBigEndian<quint32>(bytes + 28);
  return (page_size == 1 ? qint64{65536} : qint64{page_size}) * qint64{pages};
}

bool has_unsaved_log(const QString& path) {
  return QFileInfo(path + QStringLiteral("-wal")).size() > 0;
}

Result<std::int64_t> number(Connection& connection, const char* sql) {
  auto value = connection.value(sql);
  if (!value) {
    return passed_on(value);
  }
  const auto* found = std::get_if<std::int64_t>(&*value);
  return found == nullptr ? 0 : *found;
}

int newest_version(const std::vector<SchemaStep>& steps) {
  return steps.empty() ? 0 : steps.back().version;
}

}  // namespace

Result<void> check_path(const std::string& path) {
  // SQLite may take such a name for an address with options in it.
  if (path.empty() || path.front() != '/' || path.rfind("file:", 0) == 0) {
    return refuse("path_not_absolute", path,
                  SHIMWRIGHT_TEXT("store", "The whole path of the store is needed, from the top folder on."));
  }
  return {};
}

Result<void> check_file(const QString& path) {
  QFile file(path);
  if (!QFileInfo(path).isFile() || !file.open(QIODevice::ReadOnly)) {
    return refuse("cannot_open", "",
                  SHIMWRIGHT_TEXT("store", "This cannot be read; look whether it is a file and may be read by you."));
  }
  const QByteArray header = file.read(header_size);
  if (header.isEmpty()) {
    return {};
  }
  if (!QByteArray("SQLite format 3\0", 16).startsWith(header.left(16))) {
    return not_a_store();
  }
  // While pages wait in the log, the file itself may be shorter than it says.
  if (header.size() < header_size || (!has_unsaved_log(path) && file.size() < size_by_header(header))) {
    return cut_short();
  }
  return {};
}

Result<Kinship> kinship_of(Connection& connection) {
  auto owner = number(connection, "PRAGMA application_id");
  if (!owner) {
    return passed_on(owner);
  }
  auto tables = number(connection, "SELECT count(*) FROM sqlite_schema");
  if (!tables) {
    return passed_on(tables);
  }
  auto version = schema_version(connection);
  if (!version) {
    return passed_on(version);
  }
  if (*owner == 0 && *tables == 0 && *version == 0) {
    return Kinship::empty;
  }
  if (*owner != application_id || *version <= 0) {
    return not_a_store();
  }
  return *version > newest_version(schema_steps()) ? Kinship::newer : Kinship::ours;
}

Result<void> make_durable(Connection& connection) {
  if (auto set = connection.run_script("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL"); !set) {
    return set;
  }
  auto journal = connection.value("PRAGMA journal_mode");
  auto synchronous = number(connection, "PRAGMA synchronous");
  constexpr std::int64_t full = 2;
  if (!journal || !synchronous || *journal != text_value("wal") || *synchronous != full) {
    return refuse("not_durable", "",
                  SHIMWRIGHT_TEXT("store",
                                  "This disk cannot keep a store so that it survives a power cut; put the store "
                                  "on another one."));
  }
  return {};
}

Result<void> bring_up_to_date(Connection& connection, Kinship kinship, const std::vector<SchemaStep>& steps) {
  auto version = schema_version(connection);
  if (!version) {
    return passed_on(version);
  }
  if (*version == newest_version(steps)) {
    return {};
  }
  if (kinship == Kinship::ours) {
    const QString kept = connection.path() + QStringLiteral(".schema-%1").arg(*version);
    if (auto copied = lay_copy(connection, kept); !copied) {
      return copied;
    }
  }
  return take_steps(connection, steps);
}

Result<void> name_store(Connection& connection, std::int64_t now_ms) {
  return connection.execute("INSERT INTO store (id, made_at_ms) SELECT ?, ? WHERE NOT EXISTS (SELECT 1 FROM store)",
                            {IdSource().id(now_ms), number_value(now_ms)});
}

}  // namespace shimwright::store
