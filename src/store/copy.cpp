#include "copy.h"

#include <algorithm>
#include <optional>

#include <QFile>

#include "disk.h"

namespace shimwright::store {

namespace {

tl::unexpected<Error> wrong_copy(const std::string& says) {
  return refuse(
      "backup_wrong", says,
      SHIMWRIGHT_TEXT("store", "The copy is not as it should be and was thrown away; run the check of the store."));
}

/// Takes the unfinished copy away however it ends.
class Unfinished {
 public:
  explicit Unfinished(QString path) : path_(std::move(path)) { remove(); }
  ~Unfinished() { remove(); }
  Unfinished(const Unfinished&) = delete;
  Unfinished& operator=(const Unfinished&) = delete;

  [[nodiscard]] const QString& path() const { return path_; }

 private:
  void remove() const {
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) {
      QFile::remove(path_ + QLatin1String(ending));
    }
  }
  QString path_;
};

Result<void> check_copy(const QString& path, const CopyCheck& check) {
  auto copy = Connection::open(path, Access::look);
  if (!copy) {
    return passed_on(copy);
  }
  auto fault = fault_of_file(**copy);
  if (!fault) {
    return passed_on(fault);
  }
  if (const auto& found = *fault) {
    return wrong_copy(*found);
  }
  return check ? check(**copy) : Result<void>();
}

}  // namespace

namespace {

/// What a check of SQLite's says, in one line; nothing where it found nothing.
std::optional<std::string> fault_in(const Value& said) {
  if (said == text_value("ok")) {
    return std::nullopt;
  }
  std::string text = std::holds_alternative<std::string>(said) ? std::get<std::string>(said) : std::string();
  std::replace(text.begin(), text.end(), '\n', ' ');
  return text;
}

}  // namespace

Result<std::optional<std::string>> quick_fault_of_file(Connection& connection) {
  auto said = connection.value("PRAGMA quick_check(1)");
  return said ? Result<std::optional<std::string>>(fault_in(*said)) : passed_on(said);
}

Result<std::optional<std::string>> fault_of_file(Connection& connection) {
  auto said = connection.value("PRAGMA integrity_check(1)");
  if (!said) {
    return passed_on(said);
  }
  if (auto fault = fault_in(*said)) {
    return fault;
  }
  auto loose = connection.rows("PRAGMA foreign_key_check");
  if (!loose) {
    return passed_on(loose);
  }
  return loose->empty() ? std::nullopt : std::optional(text_in(loose->front(), 0));
}

Result<void> lay_copy(Connection& connection, const QString& out, const CopyCheck& check) {
  const Unfinished unfinished(out + QStringLiteral(".unfinished"));
  // SQLite takes an empty file for a new one, and keeps who may read it.
  if (auto made = make_private_file(unfinished.path()); !made) {
    return made;
  }
  if (auto copied = connection.execute("VACUUM INTO ?", {unfinished.path().toStdString()}); !copied) {
    return copied;
  }
  if (auto checked = check_copy(unfinished.path(), check); !checked) {
    return checked;
  }
  if (auto synced = sync_file(unfinished.path()); !synced) {
    return synced;
  }
  return rename_over(unfinished.path(), out);
}

}  // namespace shimwright::store
