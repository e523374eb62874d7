// Every screen in every language on the smallest screen, and on the same at twice the size: the window keeps to it, and
// shows the whole of what it says.
#include <QAbstractScrollArea>
#include <QScrollBar>
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

/// Pages that could scroll sideways do not: who reads one would have to push every line to and fro.
QStringList wide_pages(const QWidget& window) {
  QStringList names;
  for (const auto* each : window.findChildren<QAbstractScrollArea*>()) {
    const bool may = each->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff;
    if (may && each->isVisible() && each->horizontalScrollBar()->maximum() > 0) {
      names << each->parentWidget()->objectName();
    }
  }
  return names;
}

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
    for (const QString& wide : wide_pages(window)) {
      FAIL_CHECK("scrolls sideways: " << wide.toStdString());
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

QAbstractButton* first_shown(const QWidget& window, const QString& beginning) {
  for (auto* each : window.findChildren<QAbstractButton*>()) {
    if (each->isVisible() && each->objectName().startsWith(beginning)) {
      return each;
    }
  }
  return nullptr;
}

void press_first(const QWidget& window, const QString& beginning) {
  test::settle();
  QAbstractButton* const found = first_shown(window, beginning);
  INFO(beginning.toStdString());
  REQUIRE(found != nullptr);
  found->click();
  test::settle();
}

void put_in(const QWidget& window, const QString& field, const QString& text) {
  auto* found = window.findChild<QLineEdit*>(field);
  INFO(field.toStdString());
  REQUIRE(found != nullptr);
  found->setText(text);
  emit found->editingFinished();
}

bool in_sight(const QWidget* widget) {
  return widget != nullptr && widget->isVisible() &&
         widget->visibleRegion().boundingRect().height() == widget->height();
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

TEST_CASE("the open forms of the workshop fit the smallest screen in every language") {
  in_every_language([] {
    test::WindowBench it;
    static_cast<void>(it.bench.go_to("lower-float", 6));
    it.open();
    REQUIRE(it.window->go(shell::PageName::workshop));
    press_first(*it.window, "section-trays");
    press_first(*it.window, "row-");
    fits(*it.window, "a shim");
    press_first(*it.window, "section-instruments");
    press_first(*it.window, "button-add-instrument");
    fits(*it.window, "a new instrument");
    press_first(*it.window, "button-leave");
    press_first(*it.window, "row-");
    fits(*it.window, "an instrument");
    press_first(*it.window, "button-repeat-test");
    fits(*it.window, "a repeat test");
    press_first(*it.window, "section-people");
    press_first(*it.window, "row-");
    fits(*it.window, "a person");
    press_first(*it.window, "button-feel-test");
    fits(*it.window, "a test of the feel");
  });
}

TEST_CASE("the open sheets fit the smallest screen in every language") {
  in_every_language([] {
    test::WindowBench it;
    static_cast<void>(it.bench.go_to("lower-float", 6));
    it.open();
    REQUIRE(it.window->go(shell::PageName::workshop));
    press_first(*it.window, "button-open-");
    fits(*it.window, "values");
    press_first(*it.window, "button-next-issue");
    for (int part = 0; part < 6; ++part) {
      fits(*it.window, "part " + std::to_string(part) + " of a draft");
      press_first(*it.window, "button-next-part");
    }
    press_first(*it.window, "button-next-part");
    put_in(*it.window, "field-/lower/float/least_mm", "0.30");
    put_in(*it.window, "field-/lower/float/source", "own service information, edition 4, invented");
    press_first(*it.window, "button-make-issue");
    press_first(*it.window, "button-compare-");
    fits(*it.window, "two issues beside each other");
    press_first(*it.window, "section-job-sheets");
    press_first(*it.window, "button-open-");
    fits(*it.window, "steps");
  });
}

TEST_CASE("what is chosen, opened, told or missing in the workshop is in sight on the smallest screen") {
  test::WindowBench it;
  static_cast<void>(it.bench.go_to("lower-float", 6));
  it.open(smallest_at_twice);
  REQUIRE(it.window->go(shell::PageName::workshop));
  for (const QString& section : sections_of(*it.window)) {
    INFO(section.toStdString());
    press_first(*it.window, section);
    CHECK(in_sight(it.window->findChild<QWidget*>(section)));
  }
  auto* check = it.window->findChild<QAbstractButton*>("button-check");
  check->click();
  REQUIRE(QTest::qWaitFor([&] { return check->isEnabled(); }, 60000));
  test::settle();
  CHECK(in_sight(it.window->findChild<QWidget*>("check-result")));
  press_first(*it.window, "section-instruments");
  for (const char* form : {"row-", "button-repeat-test"}) {
    press_first(*it.window, form);
    INFO(form);
    CHECK(in_sight(it.window->focusWidget()));
  }
  press_first(*it.window, "section-spec-sheets");
  press_first(*it.window, "button-new-sheet");
  press_first(*it.window, "button-make-issue");
  CHECK(it.window->focusWidget()->objectName().startsWith("field-"));
  CHECK(in_sight(it.window->focusWidget()));
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
