#include "lock.h"

#include <QFile>
#include <QSysInfo>

#include "workbench.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("a second writer is told who writes") {
  Workbench bench;
  const auto second = Store::open(bench.path(), {Mode::read_write, "Rui Tavares", monday_ms});
  REQUIRE_FALSE(second);
  CHECK(second.error().code == "locked");
  const std::string sentence = second.error().in_english();
  CHECK(sentence.find("Mara Kern") != std::string::npos);
  CHECK(sentence.find("since 2026-11-23 13:55 UTC+05:45;") != std::string::npos);
  const auto holder = Store::lock_holder(bench.path());
  REQUIRE(holder);
  CHECK(holder->person == "Mara Kern");
  CHECK(holder->host == QSysInfo::machineHostName().toStdString());
  CHECK(holder->since_ms == monday_ms);
}

TEST_CASE("the lock goes with the store") {
  Workbench bench;
  bench.close();
  CHECK_FALSE(Store::lock_holder(bench.path()));
  CHECK(Store::open(bench.path(), {Mode::read_write, "Rui Tavares", monday_ms}));
}

TEST_CASE("a lock of another machine stays until a person who saw it breaks it") {
  Workbench bench;
  bench.close();
  QFile lock(bench.file("workshop/bench.sqlite.lock"));
  REQUIRE(lock.open(QIODevice::WriteOnly));
  lock.write("4711\nshimwright\nother-bench\n");
  lock.close();
  CHECK(code_of(Store::open(bench.path(), {})) == "locked");
  const auto holder = Store::lock_holder(bench.path());
  REQUIRE(holder);
  CHECK(holder->host == "other-bench");
  CHECK(holder->person.empty());

  LockHolder another = *holder;
  another.process = 4712;
  CHECK(code_of(Store::break_lock(bench.path(), another)) == "lock_changed");
  went(Store::break_lock(bench.path(), *holder));
  bench.open();
  CHECK_FALSE(bench.store().looks_only());
}

TEST_CASE("a lock of a program that is gone is taken over") {
  Workbench bench;
  bench.close();
  QFile lock(bench.file("workshop/bench.sqlite.lock"));
  REQUIRE(lock.open(QIODevice::WriteOnly));
  // No process has this number.
  lock.write("2147483646\nshimwright\n" + QSysInfo::machineHostName().toUtf8() + "\n");
  lock.close();
  bench.open();
  CHECK_FALSE(bench.store().looks_only());
}

TEST_CASE("whose lock was broken does not take the next writer's away") {
  Workbench bench;
  went(Store::break_lock(bench.path(), *Store::lock_holder(bench.path())));
  const auto next = got(Store::open(bench.path(), {Mode::read_write, "Rui Tavares", monday_ms}));
  bench.close();
  const auto holder = Store::lock_holder(bench.path());
  REQUIRE(holder);
  CHECK(holder->person == "Rui Tavares");
  CHECK(code_of(Store::open(bench.path(), {Mode::read_write, "Mara Kern", monday_ms})) == "locked");
}

TEST_CASE("a name with a line break in it does not forge a lock") {
  Workbench bench;
  bench.close();
  const auto store = got(Store::open(bench.path(), {Mode::read_write, "Rui\nTavares", monday_ms}));
  CHECK(Store::lock_holder(bench.path())->person == "Rui Tavares");
}

TEST_CASE("breaking a lock that nobody holds says so") {
  Workbench bench;
  bench.close();
  CHECK(code_of(Store::break_lock(bench.path(), LockHolder{})) == "lock_changed");
}

}  // namespace shimwright::store
