#include "page_run.h"

#include <QTest>
#include <catch2/catch.hpp>
#include <memory>
#include <vector>

using namespace shimwright;

namespace {

struct Watched {
  past::PageRun run;
  std::vector<int> came;
  int drawn = 0;
  int finished = 0;
  QString end;
  std::weak_ptr<int> held;

  Watched() {
    QObject::connect(&run, &past::PageRun::came_to, [this](int page, int) { came.push_back(page); });
    QObject::connect(&run, &past::PageRun::done, [this] { end = "done"; });
    QObject::connect(&run, &past::PageRun::stopped, [this] { end = "stopped"; });
    QObject::connect(&run, &past::PageRun::failed,
                     [this](const Error& error) { end = QString::fromStdString(error.code); });
  }

  past::PageSteps steps(int pages, int fails_at = 0) {
    const auto owned = std::make_shared<int>(1);
    held = owned;
    return {pages,
            [this, owned, fails_at]() -> Result<void> {
              ++drawn;
              return drawn == fails_at ? refuse("cannot_write", "", "no room") : Result<void>();
            },
            [this, owned]() -> Result<void> {
              ++finished;
              return {};
            }};
  }
};

}  // namespace

TEST_CASE("pages come one after the other between the events of the window") {
  Watched watched;
  watched.run.begin(watched.steps(3));
  CHECK(watched.drawn == 0);
  CHECK(watched.run.runs());
  REQUIRE(QTest::qWaitFor([&] { return !watched.run.runs(); }));
  CHECK(watched.came == std::vector<int>{1, 2, 3});
  CHECK(watched.drawn == 3);
  CHECK(watched.finished == 1);
  CHECK(watched.end == "done");
  CHECK(watched.held.expired());
}

TEST_CASE("stopped, it draws no further page and lets go of what it held") {
  Watched watched;
  watched.run.begin(watched.steps(3));
  QObject::connect(&watched.run, &past::PageRun::came_to, [&](int page, int) {
    if (page == 2) {
      QTimer::singleShot(0, &watched.run, &past::PageRun::stop);
    }
  });
  REQUIRE(QTest::qWaitFor([&] { return !watched.run.runs(); }));
  CHECK(watched.end == "stopped");
  CHECK(watched.finished == 0);
  CHECK(watched.held.expired());
  watched.run.begin(watched.steps(1));
  REQUIRE(QTest::qWaitFor([&] { return !watched.run.runs(); }));
  CHECK(watched.end == "done");
}

TEST_CASE("a page that cannot be drawn ends it with the reason") {
  Watched watched;
  watched.run.begin(watched.steps(3, 2));
  REQUIRE(QTest::qWaitFor([&] { return !watched.run.runs(); }));
  CHECK(watched.end == "cannot_write");
  CHECK(watched.drawn == 2);
  CHECK(watched.finished == 0);
}
