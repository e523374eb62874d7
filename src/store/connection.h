#pragma once

#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>

#include "shimwright/quantity/error.h"
#include "value.h"

struct sqlite3;

namespace shimwright::store {

enum class Access {
  make,   ///< make the file where there is none
  write,  ///< the file is there
  look,
};

/// One connection to one file, for the thread that opened it. All that speaks to the database goes through here; Qt
/// Sql's registry of connections is seen nowhere else.
class Connection {
 public:
  /// Opens and sets what every connection of ours has, since any file may come from elsewhere: foreign keys, no text in
  /// double quotation marks, defensive, nothing trusted from the schema, no views, cells checked for their size, not
  /// mapped into memory, limits of length and depth, erased content overwritten. Codes: `sqlite_differs`, and those of
  /// database_error().
  [[nodiscard]] static Result<std::unique_ptr<Connection>> open(const QString& path, Access access);
  ~Connection();
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;

  [[nodiscard]] const QString& path() const { return path_; }
  [[nodiscard]] bool looks_only() const { return access_ == Access::look; }

  /// Runs one statement. What it was prepared to is kept and used again for the same text.
  [[nodiscard]] Result<void> execute(std::string_view sql, const Row& values = {});
  /// All rows at once, so that no statement stays open.
  [[nodiscard]] Result<std::vector<Row>> rows(std::string_view sql, const Row& values = {});
  /// The first column of the first row; nothing where there is no row.
  [[nodiscard]] Result<Value> value(std::string_view sql, const Row& values = {});
  /// Runs several fixed statements one after the other, triggers among them.
  [[nodiscard]] Result<void> run_script(const QByteArray& script);
  /// How many rows the last statement changed.
  [[nodiscard]] std::int64_t changes() const;

  /// For what only SQLite itself can be asked.
  [[nodiscard]] sqlite3* handle() const;

 private:
  Connection(QString path, Access access, QString name);

  [[nodiscard]] Result<void> connect();
  [[nodiscard]] Result<void> prove_one_sqlite();
  [[nodiscard]] Result<void> harden();
  [[nodiscard]] Result<void> switch_on(int option, int wanted);
  [[nodiscard]] Result<QSqlQuery*> run(std::string_view sql, const Row& values);

  QString path_;
  Access access_;
  QString name_;
  QSqlDatabase database_;
  std::map<std::string, QSqlQuery, std::less<>> prepared_;
};

/// Everything or nothing: taken back at its end unless committed. Within another one it is a part of that: taken back
/// by itself, on the disk only with the whole.
class Transaction {
 public:
  /// Takes the right to write at once, so that a later statement cannot find it gone.
  [[nodiscard]] static Result<Transaction> begin(Connection& connection);
  Transaction(Transaction&& other) noexcept
      : connection_(std::exchange(other.connection_, nullptr)), is_part_(other.is_part_) {}
  Transaction& operator=(Transaction&&) = delete;
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  ~Transaction();

  /// After this it is on the disk.
  [[nodiscard]] Result<void> commit();

 private:
  Transaction(Connection& connection, bool is_part) : connection_(&connection), is_part_(is_part) {}
  Connection* connection_;
  bool is_part_;
};

/// One view of the store from the first to the last read, though somebody may write meanwhile.
class OneView {
 public:
  [[nodiscard]] static Result<OneView> begin(Connection& connection);
  OneView(OneView&& other) noexcept : connection_(std::exchange(other.connection_, nullptr)) {}
  OneView& operator=(OneView&&) = delete;
  OneView(const OneView&) = delete;
  OneView& operator=(const OneView&) = delete;
  ~OneView();

 private:
  explicit OneView(Connection& connection) : connection_(&connection) {}
  Connection* connection_;
};

/// Hands an error on as one of another type of result.
template <class Content>
[[nodiscard]] tl::unexpected<Error> passed_on(Result<Content>& failed) {
  return tl::make_unexpected(std::move(failed.error()));
}

}  // namespace shimwright::store
