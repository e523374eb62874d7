#include "connection.h"

#include <utility>

#include <QSqlDriver>
#include <QSqlError>
#include <QSqlRecord>
#include <QUuid>
#include <QVariant>

#include <sqlite3.h>

#include "database_error.h"

namespace shimwright::store {

namespace {

QVariant variant_of(const Value& value) {
  if (const auto* number = std::get_if<std::int64_t>(&value)) {
    return QVariant::fromValue(static_cast<qlonglong>(*number));
  }
  if (const auto* text = std::get_if<std::string>(&value)) {
    return QString::fromStdString(*text);
  }
  if (const auto* bytes = std::get_if<Bytes>(&value)) {
    return QByteArray::fromStdString(bytes->content);
  }
  return {};
}

Value value_of(const QVariant& variant) {
  if (variant.isNull()) {
    return Nothing();
  }
  switch (variant.typeId()) {
    case QMetaType::LongLong:
    case QMetaType::Int:
      return std::int64_t{variant.toLongLong()};
    case QMetaType::QByteArray:
      return Bytes{variant.toByteArray().toStdString()};
    default:
      return variant.toString().toStdString();
  }
}

Row row_of(const QSqlQuery& query, int columns) {
  Row row;
  row.reserve(static_cast<std::size_t>(columns));
  for (int column = 0; column < columns; ++column) {
    row.push_back(value_of(query.value(column)));
  }
  return row;
}

}  // namespace

Connection::Connection(QString path, Access access, QString name)
    : path_(std::move(path)), access_(access), name_(std::move(name)) {}

Connection::~Connection() {
  prepared_.clear();
  database_.close();
  // The registry warns as long as anybody holds the connection.
  database_ = QSqlDatabase();
  QSqlDatabase::removeDatabase(name_);
}

Result<std::unique_ptr<Connection>> Connection::open(const QString& path, Access access) {
  // NOLINTNEXTLINE(cppcoreguidelines-owning-memory): the constructor is private, the owner takes it at once.
  std::unique_ptr<Connection> connection(new Connection(path, access, QUuid::createUuid().toString()));
  if (auto connected = connection->connect(); !connected) {
    return passed_on(connected);
  }
  if (auto proved = connection->prove_one_sqlite(); !proved) {
    return passed_on(proved);
  }
  if (auto hardened = connection->harden(); !hardened) {
    return passed_on(hardened);
  }
  return connection;
}

Result<void> Connection::connect() {
  database_ = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name_);
  QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=3000");
  if (access_ == Access::look) {
    options += QStringLiteral(";QSQLITE_OPEN_READONLY");
  }
  database_.setConnectOptions(options);
  database_.setDatabaseName(path_);
  if (!database_.open()) {
    return tl::make_unexpected(database_error(database_.lastError()));
  }
  return {};
}

// The raw handle was made by the driver's SQLite. Handing it to another one would break it.
Result<void> Connection::prove_one_sqlite() {
  QSqlQuery query(database_);
  if (!query.exec(QStringLiteral("SELECT sqlite_source_id()")) || !query.next()) {
    return tl::make_unexpected(database_error(query.lastError()));
  }
  if (query.value(0).toByteArray() != sqlite3_sourceid() || handle() == nullptr) {
    return refuse("sqlite_differs", "",
                  SHIMWRIGHT_TEXT("store",
                                  "This program was put together with two different versions of SQLite and "
                                  "does not open a store; install it again."));
  }
  return {};
}

Result<void> Connection::switch_on(int option, int wanted) {
  int now = -1;
  const int code = sqlite3_db_config(handle(), option, wanted, &now);
  if (code != SQLITE_OK || now != wanted) {
    return tl::make_unexpected(database_error(code, QStringLiteral("a safeguard could not be switched on")));
  }
  return {};
}

Result<void> Connection::harden() {
  // We have no views; a view by the name of a table could answer without end.
  constexpr std::pair<int, int> safeguards[] = {
      {SQLITE_DBCONFIG_DEFENSIVE, 1},   {SQLITE_DBCONFIG_DQS_DML, 0},        {SQLITE_DBCONFIG_DQS_DDL, 0},
      {SQLITE_DBCONFIG_ENABLE_FKEY, 1}, {SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0}, {SQLITE_DBCONFIG_ENABLE_TRIGGER, 1},
      {SQLITE_DBCONFIG_ENABLE_VIEW, 0}, {SQLITE_DBCONFIG_WRITABLE_SCHEMA, 0}};
  for (const auto& [option, wanted] : safeguards) {
    if (auto switched = switch_on(option, wanted); !switched) {
      return switched;
    }
  }
  // Far above what any statement or value of ours needs. One file may be attached: a copy is laid that way.
  constexpr std::pair<int, int> limits[] = {{SQLITE_LIMIT_LENGTH, 64 * 1024 * 1024},
                                            {SQLITE_LIMIT_SQL_LENGTH, 100'000},
                                            {SQLITE_LIMIT_COLUMN, 100},
                                            {SQLITE_LIMIT_EXPR_DEPTH, 100},
                                            {SQLITE_LIMIT_COMPOUND_SELECT, 10},
                                            {SQLITE_LIMIT_VDBE_OP, 100'000},
                                            {SQLITE_LIMIT_FUNCTION_ARG, 8},
                                            {SQLITE_LIMIT_ATTACHED, 1},
                                            {SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 100},
                                            {SQLITE_LIMIT_VARIABLE_NUMBER, 250},
                                            {SQLITE_LIMIT_TRIGGER_DEPTH, 10}};
  for (const auto& [limit, most] : limits) {
    sqlite3_limit(handle(), limit, most);
  }
  return run_script("PRAGMA secure_delete = ON; PRAGMA cell_size_check = ON; PRAGMA mmap_size = 0");
}

sqlite3* Connection::handle() const {
  const QVariant handle = database_.driver()->handle();
  // Qt hands the pointer out as a QVariant that holds a sqlite3*.
  return qstrcmp(handle.typeName(), "sqlite3*") == 0 ? *static_cast<sqlite3* const*>(handle.data()) : nullptr;
}

Result<QSqlQuery*> Connection::run(std::string_view sql, const Row& values) {
  auto found = prepared_.find(sql);
  if (found == prepared_.end()) {
    QSqlQuery query(database_);
    query.setForwardOnly(true);
    if (!query.prepare(QString::fromUtf8(sql.data(), static_cast<qsizetype>(sql.size())))) {
      return tl::make_unexpected(database_error(query.lastError()));
    }
    found = prepared_.emplace(std::string(sql), std::move(query)).first;
  }
  QSqlQuery& query = found->second;
  for (std::size_t index = 0; index < values.size(); ++index) {
    query.bindValue(static_cast<int>(index), variant_of(values[index]));
  }
  if (!query.exec()) {
    const Error error = database_error(query.lastError());
    query.finish();
    return tl::make_unexpected(error);
  }
  return &query;
}

Result<void> Connection::execute(std::string_view sql, const Row& values) {
  auto query = run(sql, values);
  if (!query) {
    return passed_on(query);
  }
  (*query)->finish();
  return {};
}

Result<std::vector<Row>> Connection::rows(std::string_view sql, const Row& values) {
  auto query = run(sql, values);
  if (!query) {
    return passed_on(query);
  }
  std::vector<Row> rows;
  const int columns = static_cast<int>((*query)->record().count());
  while ((*query)->next()) {
    rows.push_back(row_of(**query, columns));
  }
  const QSqlError error = (*query)->lastError();
  (*query)->finish();
  if (error.isValid()) {
    return tl::make_unexpected(database_error(error));
  }
  return rows;
}

Result<Value> Connection::value(std::string_view sql, const Row& values) {
  auto found = rows(sql, values);
  if (!found) {
    return passed_on(found);
  }
  return found->empty() ? Value() : std::move(found->front().front());
}

Result<void> Connection::run_script(const QByteArray& script) {
  const int code = sqlite3_exec(handle(), script.constData(), nullptr, nullptr, nullptr);
  if (code != SQLITE_OK) {
    return tl::make_unexpected(database_error(code, QString::fromUtf8(sqlite3_errmsg(handle()))));
  }
  return {};
}

std::int64_t Connection::changes() const {
  return sqlite3_changes(handle());
}

Result<Transaction> Transaction::begin(Connection& connection) {
  const bool is_part = sqlite3_get_autocommit(connection.handle()) == 0;
  if (auto begun = connection.execute(is_part ? "SAVEPOINT part" : "BEGIN IMMEDIATE"); !begun) {
    return passed_on(begun);
  }
  return Transaction(connection, is_part);
}

Transaction::~Transaction() {
  if (connection_ != nullptr && sqlite3_get_autocommit(connection_->handle()) == 0) {
    // A fault here was told by the statement that failed; SQLite takes the rest back when the file is opened next.
    static_cast<void>(connection_->execute(is_part_ ? "ROLLBACK TO part" : "ROLLBACK"));
    if (is_part_) {
      static_cast<void>(connection_->execute("RELEASE part"));
    }
  }
}

Result<void> Transaction::commit() {
  auto committed = connection_->execute(is_part_ ? "RELEASE part" : "COMMIT");
  if (committed) {
    connection_ = nullptr;
  }
  return committed;
}

Result<OneView> OneView::begin(Connection& connection) {
  if (auto begun = connection.execute("BEGIN"); !begun) {
    return passed_on(begun);
  }
  return OneView(connection);
}

OneView::~OneView() {
  if (connection_ != nullptr) {
    static_cast<void>(connection_->execute("ROLLBACK"));
  }
}

}  // namespace shimwright::store
