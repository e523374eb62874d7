// A store of every age of the schema is brought up to today's and says the same as on the day it was made.
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include "schema.h"
#include "shimwright/record/hash.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/check.h"
#include "shimwright/store/job_record.h"
#include "shimwright/store/rescue.h"
#include "shimwright/store/signing.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

const QString ages = QStringLiteral(SHIMWRIGHT_SOURCE_DIR "/tests/store/ages/");

QByteArray content_of(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

void copy_file(const QString& from, const QString& to) {
  REQUIRE(QDir().mkpath(QFileInfo(to).absolutePath()));
  REQUIRE(QFile::copy(from, to));
  REQUIRE(QFile::setPermissions(to, QFile::ReadOwner | QFile::WriteOwner));
}

/// A store of that age in a folder of its own, with its photo.
class OldStore {
 public:
  explicit OldStore(int version) : version_(version) {
    copy_file(ages + name(".sqlite"), path());
    const QString photo = QStringLiteral("photos/a1/a1abfd410973b0111c215baa879b9edcd739e601659ba44168269767cc2e9108");
    copy_file(ages + QStringLiteral("pixel.png"), folder_.filePath(photo));
  }

  [[nodiscard]] QString path() const { return folder_.filePath(QStringLiteral("old.sqlite")); }
  [[nodiscard]] QString file(const QString& name) const { return folder_.filePath(name); }
  /// The last line of the replay that made it.
  [[nodiscard]] QByteArray made_as() const { return content_of(ages + name(".json")).trimmed(); }
  [[nodiscard]] std::unique_ptr<Store> open(Mode mode = Mode::read_write) const {
    return got(Store::open(path().toStdString(), {mode, "Mara Kern", monday_ms}));
  }

 private:
  [[nodiscard]] QString name(const char* ending) const {
    return QStringLiteral("version-%1").arg(version_) + QLatin1String(ending);
  }

  int version_;
  QTemporaryDir folder_;
};

std::string only_job_of(const Store& store) {
  const auto jobs = got(store.jobs());
  REQUIRE(jobs.size() == 1);
  return jobs.front().id;
}

/// The same line, from what the store says today; sealing came after it.
QByteArray said_of(Store& store) {
  std::map<std::string, std::string> initials;
  for (const Person& person : got(store.registers().persons())) {
    initials[person.id] = person.initials;
  }
  LoadedJob job = got(store.load(only_job_of(store)));
  if (std::holds_alternative<job::Sealed>(job.entries.back().body)) {
    job.entries.pop_back();
  }
  const std::string line = R"({"job":")" + job.id + R"(","entries":)" + std::to_string(job.entries.size()) +
                           R"(,"fold_hash":")" + record::fold_hash(job.entries, initials) + R"(","unexpected":0})";
  return QByteArray::fromStdString(line);
}

/// Chain, list of chain heads, tables made anew and compared with those of that day, photos, schema.
void is_whole(const Store& store) {
  const CheckReport report = got(check(store));
  for (const Finding& each : report.findings) {
    FAIL_CHECK(each.code << ", " << each.place() << ": " << each.message.in_english());
  }
  CHECK(report.jobs == 1);
  CHECK(report.photos == 5);
}

std::vector<int> all_versions() {
  std::vector<int> versions;
  for (const SchemaStep& step : schema_steps()) {
    versions.push_back(step.version);
  }
  return versions;
}

}  // namespace

TEST_CASE("a store of every age is brought up to date and says the same") {
  for (const int version : all_versions()) {
    INFO("version " << version);
    const OldStore old(version);
    const auto before = old.open(Mode::look_only);
    CHECK(got(before->schema_version()) == version);
    const LoadedJob then = got(before->load(only_job_of(*before)));
    const auto today = old.open();
    CHECK(got(today->schema_version()) == schema_steps().back().version);
    CHECK(said_of(*today) == old.made_as());
    CHECK(got(today->load(then.id)).stored == then.stored);
    is_whole(*today);
    const bool is_older = version < schema_steps().back().version;
    CHECK(QFileInfo::exists(old.path() + QStringLiteral(".schema-%1").arg(version)) == is_older);
  }
}

TEST_CASE("the folded job is the one whose rows were stored that day") {
  for (const int version : all_versions()) {
    INFO("version " << version);
    const OldStore old(version);
    const auto today = old.open();
    const JobSummary line = got(today->jobs()).front();
    CHECK(line.standing == JobStanding::closed);
    CHECK(line.next_step.empty());
    const record::Record record = got(record_of(*today, line.id));
    CHECK(record.job.number == line.number);
    CHECK(record.entries == line.last_seq - (record.seal ? 1 : 0));
    CHECK(record.seal.has_value() == (version >= first_version_with_seals));
  }
}

TEST_CASE("an older store is looked at as it is") {
  for (const int version : all_versions()) {
    INFO("version " << version);
    const OldStore old(version);
    const auto store = old.open(Mode::look_only);
    CHECK(store->looks_only());
    CHECK(said_of(*store) == old.made_as());
    is_whole(*store);
    static_cast<void>(got(record_of(*store, only_job_of(*store))));
    static_cast<void>(got(signing_keys(*store)));
    CHECK(got(store->schema_version()) == version);
  }
}

TEST_CASE("a backup of every age is offered and put back") {
  for (const int version : all_versions()) {
    INFO("version " << version);
    const OldStore old(version);
    const std::string folder = old.file("backups").toStdString();
    static_cast<void>(got(back_up(old.path().toStdString(), folder + "/monday.sqlite")));
    QFile damaged(old.path());
    REQUIRE(damaged.open(QIODevice::ReadWrite));
    REQUIRE(damaged.write(QByteArray(100, '\0')) == 100);
    damaged.close();
    const auto offer = got(last_whole_backup(old.path().toStdString(), folder));
    REQUIRE(offer);
    CHECK(offer->file == folder + "/monday.sqlite");
    static_cast<void>(got(put_back(old.path().toStdString(), offer->file, {Mode::read_write, "", monday_ms})));
    const auto today = old.open();
    CHECK(said_of(*today) == old.made_as());
    is_whole(*today);
  }
}

TEST_CASE("a store of a program to come is looked at, nothing in it changes, and the reason is told") {
  const OldStore old(schema_steps().back().version);
  const int newer = schema_steps().back().version + 1;
  {
    const auto connection = got(Connection::open(old.path(), Access::write));
    went(connection->run_script("PRAGMA journal_mode = DELETE; PRAGMA user_version = " + QByteArray::number(newer)));
  }
  const QByteArray before = content_of(old.path());
  {
    const auto store = old.open();
    CHECK(store->looks_only());
    REQUIRE(store->why_look_only());
    CHECK(store->why_look_only()->in_english() ==
          "This store was written by a newer program and can only be looked at; write in it with the newer program.");
    CHECK(said_of(*store) == old.made_as());
    is_whole(*store);
    const auto loaded = got(store->load(only_job_of(*store)));
    CHECK(code_of(store->append(loaded.id, {loaded.entries.back()}, {}, job::JobState())) == "look_only");
  }
  CHECK(content_of(old.path()) == before);
}

}  // namespace shimwright::store
