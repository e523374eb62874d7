// One store in several hands: windows, programs, backups. One writes, the others look, and nothing is lost or doubled.
#include <QFile>
#include <QSysInfo>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include "shimwright/store/backup.h"
#include "shimwright/store/check.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

/// Whether another program finds SQLite's lock on the file: without it, that program takes the log away when it closes.
bool others_see_the_lock(const std::string& path) {
  const pid_t child = fork();
  if (child == 0) {
    constexpr off_t first_shared_byte = 0x40000002;
    struct flock range = {};
    range.l_type = F_WRLCK;
    range.l_whence = SEEK_SET;
    range.l_start = first_shared_byte;
    range.l_len = 510;
    const int file = ::open(path.c_str(), O_RDWR | O_CLOEXEC);
    _exit(::fcntl(file, F_GETLK, &range) == 0 && range.l_type != F_UNLCK ? 0 : 1);
  }
  int status = -1;
  REQUIRE(waitpid(child, &status, 0) == child);
  return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

/// A second window that broke the lock of the first, as after a misunderstanding between two people.
std::unique_ptr<Store> broken_into(Workbench& bench) {
  went(Store::break_lock(bench.path(), *Store::lock_holder(bench.path())));
  return got(Store::open(bench.path(), {Mode::read_write, "Rui Tavares", monday_ms}));
}

}  // namespace

TEST_CASE("nothing this program does beside an open store gives up the store's locks") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  REQUIRE(others_see_the_lock(bench.path()));
  SECTION("a look") {
    static_cast<void>(got(Store::open(bench.path(), {Mode::look_only, "", monday_ms})));
  }
  SECTION("a second writer that is refused") {
    CHECK(code_of(Store::open(bench.path(), {Mode::read_write, "Rui Tavares", monday_ms})) == "locked");
  }
  SECTION("a backup") {
    static_cast<void>(got(back_up(bench.path(), bench.file("backup.sqlite").toStdString())));
  }
  SECTION("a backup that would lie on the store itself") {
    CHECK(code_of(back_up(bench.path(), bench.path())) == "backup_in_the_way");
  }
  SECTION("a check") {
    CHECK(got(check(bench.store())).in_order());
  }
  CHECK(others_see_the_lock(bench.path()));
}

TEST_CASE("a second window looks and sees what the first one stored") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const auto second = got(Store::open(bench.path(), {Mode::look_only, "Rui Tavares", monday_ms}));
  job.add(job::Done{{"battery-off", 1}});
  CHECK(got(second->load(job.id())).entries == job.state().entries);
  CHECK(code_of(second->append(job.id(), {job.last()}, {}, job.state())) == "look_only");
  CHECK(got(check(*second)).entries == 2);
}

TEST_CASE("two writers after a broken lock lose and double nothing") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  const auto second = broken_into(bench);
  const job::Entry theirs{2, by_mk(5).moment, rt, job::Done{{"battery-off", 1}}};
  went(second->append(job.id(), {theirs}, {}, job::evolve(job.state(), theirs)));
  CHECK(code_of(job.try_to_add({job::Done{{"battery-off", 1}}})) == "lost_race");
  CHECK(got(bench.store().load(job.id())).entries.back() == theirs);
  // In another job the first one still keeps what is entered.
  TestJob other(bench, "20", "2026-0148", "TESTVN0020A000123");
  other.open();
  CHECK(got(second->load(other.id())).entries == other.state().entries);
  const CheckReport report = got(check(*second));
  CHECK(report.in_order());
  CHECK(report.entries == 3);
}

TEST_CASE("what a writer stores after another has closed is there") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  broken_into(bench).reset();
  job.add(job::Done{{"battery-off", 1}});
  bench.close();
  const auto later = got(Store::open(bench.path(), {Mode::look_only, "", monday_ms}));
  CHECK(got(later->load(job.id())).entries == job.state().entries);
}

TEST_CASE("a backup between two entries holds the first, and the second is stored") {
  Workbench bench;
  TestJob job(bench, "10", "2026-0147");
  job.open();
  BackupWatch watch;
  int added = 0;
  watch.progress = [&](std::int64_t, std::int64_t) {
    job.add(job::Done{{"battery-off", 1}});
    ++added;
  };
  const std::string out = bench.file("backup.sqlite").toStdString();
  CHECK(got(back_up(bench.path(), out, watch)).entries == 1);
  CHECK(added == 1);
  CHECK(got(check(bench.store())).entries == 2);
}

}  // namespace shimwright::store
