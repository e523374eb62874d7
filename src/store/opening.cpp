#include "opening.h"

#include <QFileInfo>
#include <QtEndian>

#include <sqlite3.h>

#include "copy.h"
#include "shimwright/store/ids.h"

namespace shimwright::store {

namespace {

constexpr qint64 header_size = 100;

tl::unexpected<Error> not_a_store() {
  return refuse("not_a_store", "",
                SHIMWRIGHT_TEXT("store", "This file is not a store of this program; choose another."));
}

tl::unexpected<Error> unreadable() {
  return refuse("cannot_open", "",
                SHIMWRIGHT_TEXT("store", "This cannot be read; look whether it is a file and may be read by you."));
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

/// Of a change that a power cut broke off before the store had its log: SQLite takes that change back.
bool has_unfinished_change(const QString& path) {
  return QFileInfo(path + QStringLiteral("-journal")).size() > 0;
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

Result<void> check_file(const Connection& connection) {
  sqlite3_file* file = nullptr;
  sqlite3_int64 size = 0;
  if (sqlite3_file_control(connection.handle(), "main", SQLITE_FCNTL_FILE_POINTER, &file) != SQLITE_OK ||
      file == nullptr || file->pMethods == nullptr || file->pMethods->xFileSize(file, &size) != SQLITE_OK) {
    return unreadable();
  }
  if (size == 0 || has_unfinished_change(connection.path())) {
    return {};
  }
  QByteArray header(static_cast<int>(qMin<qint64>(size, header_size)), '\0');
  if (file->pMethods->xRead(file, header.data(), static_cast<int>(header.size()), 0) != SQLITE_OK) {
    return unreadable();
  }
  if (!QByteArray("SQLite format 3\0", 16).startsWith(header.left(16))) {
    return not_a_store();
  }
  // While pages wait in the log, the file itself may be shorter than it says.
  if (header.size() < header_size || (!has_unsaved_log(connection.path()) && size < size_by_header(header))) {
    return cut_short();
  }
  return {};
}

Result<std::unique_ptr<Connection>> connect_checked(const QString& path, Access access) {
  if (!QFileInfo(path).isFile() || !QFileInfo(path).isReadable()) {
    return unreadable();
  }
  auto connection = Connection::open(path, access);
  if (!connection) {
    return connection;
  }
  if (auto checked = check_file(**connection); !checked) {
    return passed_on(checked);
  }
  return connection;
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

Result<std::unique_ptr<Connection>> connect_beside(const QString& path) {
  auto connection = connect_checked(path, Access::write);
  if (!connection) {
    return connection;
  }
  auto kinship = kinship_of(**connection);
  if (!kinship) {
    return passed_on(kinship);
  }
  auto version = schema_version(**connection);
  if (!version) {
    return passed_on(version);
  }
  if (*kinship != Kinship::ours || *version != schema_steps().back().version) {
    return refuse("look_only", "",
                  SHIMWRIGHT_TEXT("store", "The store can only be looked at here; nothing was saved."));
  }
  if (auto durable = make_durable(**connection); !durable) {
    return passed_on(durable);
  }
  return connection;
}

Result<void> name_store(Connection& connection, std::int64_t now_ms) {
  return connection.execute("INSERT INTO store (id, made_at_ms) SELECT ?, ? WHERE NOT EXISTS (SELECT 1 FROM store)",
                            {IdSource().id(now_ms), number_value(now_ms)});
}

}  // namespace shimwright::store
