#include <string>
#include <string_view>

#include <sqlite3.h>

#include "fuzz_target.h"
#include "fuzz_workshop.h"
#include "shimwright/store/check.h"
#include "shimwright/store/job_record.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/restore.h"
#include "shimwright/store/seal.h"

using namespace shimwright;
using fuzz::require;

namespace {

const fuzz::FuzzWorkshop& workshop() {
  static const fuzz::FuzzWorkshop made;
  return made;
}

/// Three bytes where, one how many, then those: over and over.
QByteArray with_bytes_changed(std::string_view edits) {
  QByteArray file = workshop().store_file();
  while (edits.size() > 4) {
    const auto byte = [&](std::size_t at) { return static_cast<qsizetype>(static_cast<unsigned char>(edits[at])); };
    const qsizetype at = (byte(0) * 65536 + byte(1) * 256 + byte(2)) % file.size();
    const auto count = std::min<std::size_t>(static_cast<std::size_t>(byte(3) % 32 + 1), edits.size() - 4);
    for (std::size_t each = 0; each < count && at + static_cast<qsizetype>(each) < file.size(); ++each) {
      file[at + static_cast<qsizetype>(each)] = edits[4 + each];
    }
    edits.remove_prefix(4 + count);
  }
  return file;
}

class Raw {
 public:
  explicit Raw(const QString& path) {
    require(sqlite3_open(path.toUtf8().constData(), &handle_) == SQLITE_OK, "the file opens");
    sqlite3_progress_handler(handle_, 1000, &Raw::is_over, this);
  }
  ~Raw() { sqlite3_close(handle_); }
  Raw(const Raw&) = delete;
  Raw& operator=(const Raw&) = delete;
  void run(const std::string& sql) {
    left_ = 200;
    sqlite3_exec(handle_, sql.c_str(), nullptr, nullptr, nullptr);
  }
  [[nodiscard]] std::string text(const char* sql) {
    std::string all;
    left_ = 200;
    sqlite3_exec(
        handle_, sql,
        [](void* into, int, char** values, char**) {
          static_cast<std::string*>(into)->append(values[0] == nullptr ? "" : values[0]).append(";\n");
          return 0;
        },
        &all, nullptr);
    return all;
  }

 private:
  static int is_over(void* self) { return --static_cast<Raw*>(self)->left_ < 0 ? 1 : 0; }
  sqlite3* handle_ = nullptr;
  int left_ = 0;
};

/// As somebody who has the file and a program for SQLite would change it: our triggers are put back afterwards.
void change_by_sql(const QString& path, std::string_view sql) {
  Raw raw(path);
  const std::string triggers = raw.text("SELECT sql FROM sqlite_schema WHERE type = 'trigger' ORDER BY rowid");
  raw.run("PRAGMA journal_mode = DELETE; PRAGMA synchronous = OFF; PRAGMA foreign_keys = OFF");
  raw.run(raw.text("SELECT 'DROP TRIGGER ' || name FROM sqlite_schema WHERE type = 'trigger'"));
  raw.run(std::string(sql));
  raw.run("ROLLBACK");
  raw.run(triggers);
}

template <class Content>
bool taken(const Result<Content>& result) {
  if (result) {
    return true;
  }
  const std::string sentence = result.error().in_english();
  require(!result.error().code.empty(), "a refusal has a code");
  require(sentence.find('\n') == std::string::npos && sentence.size() < 4000, "a refusal is one line");
  return false;
}

void look_at_job(store::Store& store, const std::string& job) {
  static_cast<void>(taken(store.load(job)));
  static_cast<void>(taken(store::record_of(store, job)));
  static_cast<void>(taken(store::signed_record_of(store, job)));
}

/// What a person who opens such a file sees of it; of jobs only while it is looked at: reading one takes the longest.
void look_through(const std::string& path, store::Mode mode) {
  auto opened = store::Store::open(path, {mode, "fuzz", fuzz::now_ms});
  if (!taken(opened)) {
    return;
  }
  store::Store& store = **opened;
  static_cast<void>(taken(store.open_jobs()));
  static_cast<void>(taken(store.search("0304")));
  static_cast<void>(taken(store.registers().persons()));
  static_cast<void>(taken(store.registers().trays()));
  static_cast<void>(taken(store.registers().workshop()));
  const auto jobs = store.jobs(20);
  if (taken(jobs) && mode == store::Mode::look_only) {
    for (const store::JobSummary& each : *jobs) {
      look_at_job(store, each.id);
    }
  }
}

/// The check of it all is part of looking at a backup; a file that is refused there is checked as a store.
void try_store(const QString& place) {
  const std::string path = place.toStdString();
  const auto offer = store::look_at_backup(workshop().place(QStringLiteral("none.shimwright")).toStdString(), path);
  look_through(path, store::Mode::look_only);
  look_through(path, store::Mode::read_write);
  const auto store = store::Store::open(path, {store::Mode::look_only, "fuzz", fuzz::now_ms});
  const bool may_replace = taken(offer);
  require(store.has_value() || !may_replace, "what may take a store's place opens");
  if (store && !may_replace) {
    static_cast<void>(taken(store::check(**store)));
  }
}

}  // namespace

/// `b`: bytes changed in a good store; `q`: SQL run on one; else the whole file.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) {
    return 0;
  }
  static const QString place = workshop().place(QStringLiteral("foreign.shimwright"));
  const auto text = fuzz::text_of(data + 1, size - 1);
  switch (static_cast<char>(data[0])) {
    case 'b':
      workshop().lay(place, with_bytes_changed(text));
      break;
    case 'q':
      workshop().lay(place, workshop().store_file());
      change_by_sql(place, text);
      break;
    default:
      workshop().lay(place, QByteArray(text.data(), static_cast<qsizetype>(text.size())));
  }
  try_store(place);
  return 0;
}
