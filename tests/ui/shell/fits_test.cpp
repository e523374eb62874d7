// Every screen in every language on the smallest screen, and on the same at twice the size: the window keeps to it, and
// shows the whole of what it says.
#include <QSettings>
#include <catch2/catch.hpp>

#include "cut_texts.h"
#include "earlier_job.h"
#include "shimwright/bench/job_page.h"
#include "shimwright/shell/languages.h"
#include "shimwright/shell/start_window.h"
#include "window_bench.h"

using namespace shimwright;

namespace {

constexpr QSize smallest_at_twice(683, 384);

void fits(QWidget& window, const std::string& screen) {
  for (const QSize& size : {test::smallest_screen, smallest_at_twice}) {
    // What gives way does so as the window becomes narrower; only then it may become as low.
    for (int pull = 0; pull < 2; ++pull) {
      test::settle();
      window.resize(size);
    }
    test::settle();
    INFO(screen << " at " << size.width() << " x " << size.height() << ", needs " << window.minimumSizeHint().width()
                << " x " << window.minimumSizeHint().height());
    CHECK(window.width() == size.width());
    CHECK(window.height() == size.height());
    for (const QString& cut : test::cut_texts(window)) {
      FAIL_CHECK(cut.toStdString());
    }
  }
}

void fit_steps(test::WindowBench& it, const std::string& job, const std::vector<const char*>& steps) {
  REQUIRE(it.window->go(shell::PageName::job, job));
  auto* page = it.window->findChild<bench::JobPage*>();
  REQUIRE(page != nullptr);
  fits(*it.window, "as it is taken up");
  for (const char* step : steps) {
    page->show_step(step);
    fits(*it.window, step);
  }
}

/// On a narrow screen a button may stand in the foot, hidden, and elsewhere too.
void press_shown(const QWidget& window, const QString& name) {
  for (auto* each : window.findChildren<QAbstractButton*>(name)) {
    if (each->isVisible()) {
      each->click();
      return;
    }
  }
  FAIL("no button " << name.toStdString());
}

QStringList sections_of(const QWidget& window) {
  QStringList names;
  for (const auto* each : window.findChildren<QAbstractButton*>()) {
    if (each->objectName().startsWith("section-")) {
      names << each->objectName();
    }
  }
  return names;
}

template <class Look>
void in_every_language(const Look& look) {
  for (const shell::Language& language : shell::languages()) {
    INFO(language.name.toStdString());
    const shell::Spoken spoken(language.code);
    look();
  }
}

}  // namespace

TEST_CASE("the places fit the smallest screen in every language") {
  in_every_language([] {
    test::WindowBench it;
    const std::string job = it.bench.go_to("lower-float", 6);
    it.open();
    for (const auto& [page, name] : {std::pair{shell::PageName::home, "home"},
                                     {shell::PageName::new_job, "new job"},
                                     {shell::PageName::past_jobs, "past jobs"}}) {
      REQUIRE(it.window->go(page));
      fits(*it.window, name);
    }
    QTest::keyClick(it.window.get(), Qt::Key_Comma, Qt::ControlModifier);
    fits(*it.window, "settings");
    QTest::keyClick(it.window.get(), Qt::Key_F9);
    fits(*it.window, "who is at the bench");
    REQUIRE(it.window->go(shell::PageName::workshop));
    for (const QString& section : sections_of(*it.window)) {
      it.window->findChild<QAbstractButton*>(section)->click();
      fits(*it.window, section.toStdString());
    }
    REQUIRE(it.window->go(shell::PageName::record, job));
    fits(*it.window, "record");
  });
}

TEST_CASE(
    "a record to be sealed, a vehicle, two of its jobs compared, and the figures fit the smallest screen in every "
    "language") {
  in_every_language([] {
    test::WindowBench it;
    const std::string closed = test::fit_the_pack_before(it.bench);
    const std::string job = it.bench.go_to("lower-float", 6);
    it.open();
    // The page of a job needs more room than a record; it is not to hold the window up once it is left.
    REQUIRE(it.window->go(shell::PageName::job, job));
    REQUIRE(it.window->go(shell::PageName::record, closed));
    fits(*it.window, "record to be sealed");
    REQUIRE(it.window->go(shell::PageName::vehicle, it.bench.workbench().state().opened->vehicle_key));
    fits(*it.window, "vehicle");
    press_shown(*it.window, "button-compare");
    fits(*it.window, "two jobs compared");
    REQUIRE(it.window->go(shell::PageName::workshop));
    it.window->findChild<QAbstractButton*>("section-figures")->click();
    auto* read = it.window->findChild<QAbstractButton*>("button-read-figures");
    REQUIRE(QTest::qWaitFor([&] { return read->isEnabled(); }, 60000));
    fits(*it.window, "figures");
  });
}

TEST_CASE("the windows without a store fit the smallest screen in every language") {
  in_every_language([] {
    const test::Dressed dressed(widgets::Scheme::light);
    const QTemporaryDir folder;
    shell::Settings settings(test::settings_file(folder.filePath("settings.ini")));
    shell::StartWindow window(settings);
    window.first()->set_offer("/data/workshop.shimwright", true);
    window.show_first();
    window.show();
    fits(window, "first start");
    window.hindrance()->show_hindrance(
        Error{"locked", "", Message{"Somebody else writes in this store by now; look again who it is.", {}}},
        "/data/workshop.shimwright", store::LockHolder{});
    window.show_hindrance();
    fits(window, "hindrance");
    window.hindrance()->show_offer(
        store::BackupOffer{"/backup/workshop-day-1.shimwright", 1795770000000, 12, 4711, std::nullopt}, "/backup");
    fits(window, "hindrance with a backup");
  });
}

TEST_CASE("the steps of a job by gauge fit the smallest screen in every language") {
  in_every_language([] {
    test::WindowBench it;
    const std::string job = it.bench.go_to("lower-float", 6);
    it.open();
    fit_steps(it, job,
              {"vehicle-number", "complaint-when", "complaint-gears", "received-photos", "battery-off", "odometer",
               "press-peak", "new-pack", "large-gauge-fit", "lower-float", "upper-float", "teach-in-lower",
               "sign-technician"});
    for (const char* button : {"button-more", "button-pick-park"}) {
      press_shown(*it.window, button);
      fits(*it.window, button);
    }
  });
}

TEST_CASE("the steps of a job by depth fit the smallest screen in every language") {
  in_every_language([] {
    test::WindowBench it("03-sum-on-the-border");
    const std::string job = it.bench.go_to("small-depth", 3);
    it.open();
    fit_steps(it, job, {"small-temperature", "large-depth", "small-depth"});
  });
}

TEST_CASE("a window that begins at twice the size stays as small on its way to a job and back") {
  in_every_language([] {
    test::WindowBench it;
    const std::string job = it.bench.go_to("lower-float", 6);
    it.open(smallest_at_twice);
    const auto stays = [&](const std::string& screen) {
      test::settle();
      INFO(screen << ": " << it.window->width() << " x " << it.window->height());
      CHECK((it.window->size() == smallest_at_twice));
    };
    stays("home");
    REQUIRE(it.window->go(shell::PageName::job, job));
    stays("job");
    QTest::keyClick(it.window.get(), Qt::Key_F9);
    stays("who is at the bench");
    for (const auto& [page, name] : {std::pair{shell::PageName::new_job, "new job"},
                                     {shell::PageName::past_jobs, "past jobs"},
                                     {shell::PageName::workshop, "workshop"},
                                     {shell::PageName::home, "home again"}}) {
      REQUIRE(it.window->go(page));
      stays(name);
    }
  });
}
