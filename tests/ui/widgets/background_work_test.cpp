#include "shimwright/widgets/background_work.h"

#include <QTest>
#include <QThread>
#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("work is done in a thread of its own, and its outcome arrives in the window's") {
  widgets::BackgroundWork work;
  QThread* const here = QThread::currentThread();
  QThread* worker = nullptr;
  QThread* told = nullptr;
  qint64 seen = 0;
  QObject::connect(&work, &widgets::BackgroundWork::came_to, [&](qint64 step, qint64) { seen = step; });
  work.begin([&](const store::BackupWatch& watch) {
    worker = QThread::currentThread();
    watch.progress(3, 7);
    return [&] { told = QThread::currentThread(); };
  });
  CHECK(work.runs());
  REQUIRE(QTest::qWaitFor([&] { return told != nullptr; }, 60000));
  CHECK(worker != here);
  CHECK(told == here);
  CHECK(seen == 3);
  CHECK_FALSE(work.runs());
}

TEST_CASE("an outcome may begin the next work") {
  widgets::BackgroundWork work;
  int done = 0;
  work.begin([&](const store::BackupWatch&) {
    return [&] {
      ++done;
      work.begin([&](const store::BackupWatch&) { return [&] { ++done; }; });
    };
  });
  REQUIRE(QTest::qWaitFor([&] { return done == 2; }, 60000));
}

TEST_CASE("thrown away while it works, it stops, waits for the thread and calls nothing afterwards") {
  bool stopped = false;
  bool called = false;
  {
    widgets::BackgroundWork work;
    work.begin([&](const store::BackupWatch& watch) {
      while (!watch.stop->load()) {
        QThread::yieldCurrentThread();
      }
      stopped = true;
      return [&] { called = true; };
    });
  }
  QCoreApplication::processEvents();
  CHECK(stopped);
  CHECK_FALSE(called);
}

TEST_CASE("of two pieces of work only the later one has an outcome, and begins when the first has ended") {
  widgets::BackgroundWork work;
  bool first_ended = false;
  bool first_came = false;
  bool later_came = false;
  bool in_turn = false;
  work.begin([&](const store::BackupWatch& watch) {
    while (!watch.stop->load()) {
      QThread::yieldCurrentThread();
    }
    first_ended = true;
    return [&] { first_came = true; };
  });
  work.begin_instead([&](const store::BackupWatch& watch) {
    in_turn = first_ended && !watch.stop->load();
    return [&] { later_came = true; };
  });
  CHECK(work.runs());
  REQUIRE(QTest::qWaitFor([&] { return later_came; }, 60000));
  CHECK(in_turn);
  CHECK_FALSE(first_came);
  CHECK_FALSE(work.runs());
}

TEST_CASE("what is dropped says nothing any more, and other work can begin after it") {
  widgets::BackgroundWork work;
  int steps = 0;
  bool dropped_came = false;
  bool next_came = false;
  QObject::connect(&work, &widgets::BackgroundWork::came_to, [&](qint64, qint64) { ++steps; });
  work.begin([&](const store::BackupWatch& watch) {
    watch.progress(1, 2);
    return [&] { dropped_came = true; };
  });
  work.begin_instead([&](const store::BackupWatch&) { return [&] { dropped_came = true; }; });
  work.drop();
  REQUIRE(QTest::qWaitFor([&] { return !work.runs(); }, 60000));
  CHECK(steps == 0);
  CHECK_FALSE(dropped_came);
  work.begin([&](const store::BackupWatch&) { return [&] { next_came = true; }; });
  REQUIRE(QTest::qWaitFor([&] { return next_came; }, 60000));
}

TEST_CASE("ended now, its thread is done, and the news that is still on its way changes nothing") {
  widgets::BackgroundWork work;
  bool ended = false;
  bool came = false;
  work.begin([&](const store::BackupWatch&) {
    ended = true;
    return [&] { came = true; };
  });
  work.end_now();
  CHECK(ended);
  CHECK_FALSE(work.runs());
  QCoreApplication::processEvents();
  CHECK_FALSE(came);
}
