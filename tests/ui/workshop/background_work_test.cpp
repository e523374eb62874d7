#include "shimwright/workshop/background_work.h"

#include <QTest>
#include <QThread>
#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("work is done in a thread of its own, and its outcome arrives in the window's") {
  workshop::BackgroundWork work;
  QThread* const here = QThread::currentThread();
  QThread* worker = nullptr;
  QThread* told = nullptr;
  qint64 seen = 0;
  QObject::connect(&work, &workshop::BackgroundWork::came_to, [&](qint64 step, qint64) { seen = step; });
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
  workshop::BackgroundWork work;
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
    workshop::BackgroundWork work;
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
