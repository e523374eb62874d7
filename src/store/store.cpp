#include "shimwright/store/store.h"

#include <utility>

#include <QFileInfo>

#include "connection.h"
#include "disk.h"
#include "lock.h"
#include "opening.h"
#include "own_schema.h"
#include "photos.h"
#include "schema.h"
#include "sheet_shelf.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

namespace {

/// A store on its way to being open.
struct Opened {
  std::unique_ptr<WriterLock> lock;
  std::unique_ptr<Connection> connection;
  std::optional<Message> why_look_only;
};

Message lies_elsewhere() {
  return {SHIMWRIGHT_TEXT("store",
                          "This store lies on a network share and can only be looked at; copy it to a disk of "
                          "this machine to write in it."),
          {}};
}

Message is_newer() {
  return {SHIMWRIGHT_TEXT("store",
                          "This store was written by a newer program and can only be looked at; write in it "
                          "with the newer program."),
          {}};
}

tl::unexpected<Error> no_store() {
  return refuse("no_store", "", SHIMWRIGHT_TEXT("store", "There is no store at this place; choose another."));
}

Result<Opened> open_for_looking(const QString& path, std::optional<Message> why) {
  if (!QFileInfo::exists(path)) {
    return no_store();
  }
  auto connection = connect_checked(path, Access::look);
  if (!connection) {
    return passed_on(connection);
  }
  auto kinship = kinship_of(**connection);
  if (!kinship) {
    return passed_on(kinship);
  }
  if (*kinship == Kinship::empty) {
    return no_store();
  }
  if (auto tables = check_nothing_acts(**connection); !tables) {
    return passed_on(tables);
  }
  return Opened{nullptr, std::move(*connection), std::move(why)};
}

/// A store that is ours and of today, with all that lies beside it.
Result<void> make_ready(Connection& connection, Kinship kinship, std::int64_t now_ms) {
  if (auto durable = make_durable(connection); !durable) {
    return durable;
  }
  if (auto current = bring_up_to_date(connection, kinship, schema_steps()); !current) {
    return current;
  }
  if (auto named = name_store(connection, now_ms); !named) {
    return named;
  }
  return make_private_folder(photo_folder(connection.path()));
}

Result<void> make_place(const QString& path) {
  if (auto made = make_private_folder(QFileInfo(path).absolutePath()); !made) {
    return made;
  }
  return make_private_file(path);
}

Result<Opened> open_for_writing(const QString& path, const Opening& opening) {
  if (auto made = make_place(path); !made) {
    return passed_on(made);
  }
  auto lock = WriterLock::take(path, opening.person, opening.now_ms);
  if (!lock) {
    return passed_on(lock);
  }
  auto connection = connect_checked(path, Access::write);
  if (!connection) {
    return passed_on(connection);
  }
  auto kinship = kinship_of(**connection);
  if (!kinship) {
    return passed_on(kinship);
  }
  if (*kinship == Kinship::newer) {
    return open_for_looking(path, is_newer());
  }
  if (*kinship == Kinship::ours) {
    if (auto tables = check_nothing_acts(**connection); !tables) {
      return passed_on(tables);
    }
  }
  if (auto ready = make_ready(**connection, *kinship, opening.now_ms); !ready) {
    return passed_on(ready);
  }
  return Opened{std::move(*lock), std::move(*connection), std::nullopt};
}

}  // namespace

Store::Store(std::unique_ptr<WriterLock> lock, std::unique_ptr<Connection> connection, std::optional<Message> why)
    : lock_(std::move(lock)),
      connection_(std::move(connection)),
      registers_(std::make_unique<Registers>(*connection_)),
      sheet_shelf_(std::make_unique<SheetShelf>(*connection_)),
      path_(connection_->path().toStdString()),
      why_look_only_(std::move(why)) {}

Store::~Store() = default;

Result<std::unique_ptr<Store>> Store::open(const std::string& path, const Opening& opening) {
  const QByteArray file_system = file_system_of(QFileInfo(QString::fromStdString(path)).absolutePath());
  return open_on(file_system.toStdString(), path, opening);
}

Result<std::unique_ptr<Store>> open_on(const std::string& file_system, const std::string& path,
                                       const Opening& opening) {
  if (auto checked = check_path(path); !checked) {
    return passed_on(checked);
  }
  const QString place = QString::fromStdString(path);
  Result<Opened> opened;
  if (opening.mode == Mode::look_only) {
    opened = open_for_looking(place, std::nullopt);
  } else if (is_network_file_system(QByteArray::fromStdString(file_system))) {
    opened = open_for_looking(place, lies_elsewhere());
  } else {
    opened = open_for_writing(place, opening);
  }
  if (!opened) {
    Error error = std::move(opened.error());
    error.place = error.place.empty() ? path : error.place;
    return tl::make_unexpected(std::move(error));
  }
  // NOLINTNEXTLINE(cppcoreguidelines-owning-memory): the constructor is private, the owner takes it at once.
  return std::unique_ptr<Store>(
      new Store(std::move(opened->lock), std::move(opened->connection), std::move(opened->why_look_only)));
}

Result<std::unique_ptr<Store>> Store::open_beside(const std::string& path) {
  if (auto checked = check_path(path); !checked) {
    return passed_on(checked);
  }
  auto connection = connect_beside(QString::fromStdString(path));
  if (!connection) {
    return passed_on(connection);
  }
  // NOLINTNEXTLINE(cppcoreguidelines-owning-memory): the constructor is private, the owner takes it at once.
  return std::unique_ptr<Store>(new Store(nullptr, std::move(*connection), std::nullopt));
}

std::optional<LockHolder> Store::lock_holder(const std::string& path) {
  return holder_of(QString::fromStdString(path));
}

Result<void> Store::break_lock(const std::string& path, const LockHolder& shown) {
  return break_lock_of(QString::fromStdString(path), shown);
}

const std::string& Store::path() const {
  return path_;
}

bool Store::looks_only() const {
  return connection_->looks_only();
}

const std::optional<Message>& Store::why_look_only() const {
  return why_look_only_;
}

Result<int> Store::schema_version() const {
  return store::schema_version(*connection_);
}

Registers& Store::registers() {
  return *registers_;
}

Result<void> Store::all_or_nothing(const std::function<Result<void>()>& work) {
  auto transaction = Transaction::begin(*connection_);
  if (!transaction) {
    return passed_on(transaction);
  }
  if (auto done = work(); !done) {
    return done;
  }
  return transaction->commit();
}

Connection& Store::connection() const {
  return *connection_;
}

SheetShelf& Store::sheet_shelf() const {
  return *sheet_shelf_;
}

Result<void> Store::may_write() const {
  if (looks_only()) {
    return refuse("look_only", "",
                  SHIMWRIGHT_TEXT("store", "The store can only be looked at here; nothing was saved."));
  }
  return {};
}

}  // namespace shimwright::store
