#include "sheet_form.h"

#include <QComboBox>
#include <QLocale>

#include "sheet_bench.h"
#include "shimwright/store/sheet_drafts.h"

using namespace shimwright;
using test::SheetBench;

namespace {

std::string kept_text(SheetBench& bench, const std::string& place) {
  const auto drafts = store::sheet_drafts(bench.rig.store(), sheet::SheetKind::spec_sheet);
  return test::field_text(drafts->at(0).draft, place);
}

}  // namespace

TEST_CASE("each field is on the disk when Enter leaves it, right or wrong") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.type("/gearbox", "K9");
  CHECK(kept_text(bench, "/gearbox") == "K9");
  bench.press("button-next-part");
  bench.type("/lower/float/most_mm", "0,8,5");
  CHECK(kept_text(bench, "/lower/float/most_mm") == "0,8,5");
  CHECK(bench.found<QLineEdit>("field-/lower/float/most_mm")->text() == "0,8,5");
}

TEST_CASE("an issue is made of what the screen shows, or not at all, though one keeping was refused before") {
  SheetBench bench;
  bench.press("button-open-D7");
  bench.press("button-next-issue");
  bench.press("button-next-part");
  bench.refuse_drafts(true);
  bench.type("/lower/float/most_mm", "0,79");
  CHECK(bench.found<QLabel>("sheet-outcome")->isVisible());
  bench.press("button-make-issue");
  CHECK(bench.found<QWidget>("sheet-form")->isVisible());
  CHECK(bench.page->has_unsent());
  bench.refuse_drafts(false);
  bench.press("button-make-issue");
  QCoreApplication::processEvents();
  const auto issues = store::issues_of_spec_sheet(bench.rig.store(), "D7");
  REQUIRE(issues);
  std::string made;
  for (const store::SheetIssue& each : *issues) {
    made = each.issue > 3 ? each.json : made;
  }
  CHECK(made.find("0,79") != std::string::npos);
  CHECK_FALSE(bench.page->has_unsent());
}

TEST_CASE("a name that is there already is a fault of the sheet, stays typed, and holds the leaving") {
  SheetBench bench;
  bench.press("button-open-D7");
  bench.press("button-next-issue");
  for (int part = 0; part < 3; ++part) {
    bench.press("button-next-part");
  }
  bench.type("/limits/press_torque/#name", "gear_oil");
  const QString other = bench.found<QLineEdit>("field-/limits/press_torque/#name")->text();
  REQUIRE(bench.shown().contains("stands here twice"));
  for (const char* button : {"button-make-issue", "button-leave-draft"}) {
    bench.press(button);
    INFO(button);
    CHECK(bench.shown().contains("stands here twice"));
    CHECK(bench.found<QLineEdit>("field-/limits/press_torque/#name")->text() == other);
  }
  CHECK(bench.page->has_unsent());
  bench.type("/limits/press_torque/#name", "press_torque");
  CHECK_FALSE(bench.page->has_unsent());
}

TEST_CASE("a draft that could not be kept is not left, and the page says that it has something unsent") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.refuse_drafts(true);
  bench.type("/gearbox", "K9");
  bench.press("button-leave-draft");
  CHECK(bench.found<QLineEdit>("field-/gearbox")->text() == "K9");
  CHECK(bench.page->has_unsent());
  bench.refuse_drafts(false);
  CHECK_FALSE(bench.page->has_unsent());
  CHECK(kept_text(bench, "/gearbox") == "K9");
  bench.press("button-leave-draft");
  CHECK(bench.shown().contains("Being written: K9"));
}

TEST_CASE("a draft is thrown away from the list, after it was asked once more") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.type("/gearbox", "K9");
  bench.press("button-leave-draft");
  bench.press("button-throw-away-K9");
  CHECK(store::sheet_drafts(bench.rig.store(), sheet::SheetKind::spec_sheet)->size() == 1);
  bench.press("button-throw-away-now-K9");
  CHECK_FALSE(bench.shown().contains("Being written"));
  CHECK(store::sheet_drafts(bench.rig.store(), sheet::SheetKind::spec_sheet)->empty());
}

TEST_CASE("a wrong value has its sentence at once, a blank one when the sheet shall be kept") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.press("button-next-part");
  CHECK_FALSE(bench.shown().contains("This is still to be filled in."));
  bench.type("/lower/float/most_mm", "0,8,5");
  CHECK(bench.shown().contains("decimal"));
  bench.press("button-make-issue");
  CHECK(bench.shown().contains("Not kept yet, "));
  CHECK(bench.shown().contains("This is still to be filled in."));
  CHECK(bench.found<QLineEdit>("field-/gearbox")->hasFocus());
}

TEST_CASE("Enter goes from field to field and never to a button") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.press("button-next-part");
  bench.found<QWidget>("field-/lower/method")->setFocus();
  int fields = 0;
  for (int at = 0; at < 60; ++at) {
    QTest::keyClick(bench.page->focusWidget(), Qt::Key_Return);
    fields += bench.page->focusWidget()->objectName().startsWith("field-") ? 1 : 0;
  }
  CHECK(fields == 60);
}

TEST_CASE("another method brings its own fields, and back again what was filled in") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.press("button-next-part");
  bench.type("/lower/gauge_fit/snug_band_mm", "0,05");
  auto* method = bench.found<QComboBox>("field-/lower/method");
  method->setFocus();
  QTest::keyClick(method, Qt::Key_Down);
  CHECK(bench.found<QComboBox>("field-/lower/method")->hasFocus());
  bench.type("/lower/depth/max_spread_mm", "0.10");
  method = bench.found<QComboBox>("field-/lower/method");
  method->setFocus();
  QTest::keyClick(method, Qt::Key_Up);
  CHECK(bench.found<QLineEdit>("field-/lower/gauge_fit/snug_band_mm")->text() == "0,05");
}

TEST_CASE("rows are added with the focus in them, and taken out") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.press("button-next-part");
  bench.press("button-add-/lower/tray/shims");
  CHECK(bench.found<QLineEdit>("field-/lower/tray/shims/0/id")->hasFocus());
  bench.press("button-take-out-/lower/tray/shims/0");
  QCoreApplication::processEvents();
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  CHECK(bench.page->findChild<QWidget*>("field-/lower/tray/shims/0/id") == nullptr);
}

TEST_CASE("all sizes of a tray are laid at once, and what cannot be is said") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.press("button-next-part");
  for (const auto& [name, text] : {std::pair("tray-from", "1,30"), std::pair("tray-to", "2,15"),
                                   std::pair("tray-step", "0"), std::pair("tray-u", "0.003")}) {
    bench.type(name, text);
  }
  bench.press("button-lay-sizes");
  CHECK(bench.shown().contains("in steps above 0"));
  bench.type("tray-step", "0,05");
  bench.press("button-lay-sizes");
  CHECK(bench.found<QLineEdit>("field-/lower/tray/shims/17/thickness_mm")->text() == "2.15");
}

namespace {

/// Begins the next issue of the shipped job sheet and goes to one of its parts, counted from its beginning or end.
void open_part(SheetBench& bench, Qt::Key from, int steps) {
  bench.press("section-job-sheets");
  bench.press("button-open-dry-pack-renewal");
  bench.press("button-next-issue");
  auto* part = bench.found<QComboBox>("pick-part");
  part->setFocus();
  QTest::keyClick(part, from);
  for (int at = 0; at < steps; ++at) {
    QTest::keyClick(part, from == Qt::Key_End ? Qt::Key_Up : Qt::Key_Down);
  }
}

}  // namespace

TEST_CASE("a step goes over the border of its stage and back, by key and by touch, with the focus at its button") {
  for (const char* locale : {"en_US", "de_DE", "fr_FR"}) {
    INFO(locale);
    QLocale::setDefault(QLocale(QLatin1String(locale)));
    SheetBench bench;
    open_part(bench, Qt::Key_Home, 16);
    const auto* part = bench.found<QComboBox>("pick-part");
    REQUIRE(part->currentText().startsWith("1.15"));
    const QString id = bench.found<QLineEdit>("field-/stages/0/steps/14/id")->text();
    bench.press("button-down-/stages/0/steps/14");
    CHECK(bench.found<QLineEdit>("field-/stages/1/steps/0/id")->text() == id);
    CHECK(bench.found<QWidget>("button-down-/stages/1/steps/0")->hasFocus());
    CHECK(part->currentText().startsWith("2.1 "));
    CHECK(bench.shown().contains("It stands in “2 Remove, make safe” now."));
    QTest::mouseClick(bench.found<QAbstractButton>("button-up-/stages/1/steps/0"), Qt::LeftButton);
    CHECK(bench.found<QLineEdit>("field-/stages/0/steps/14/id")->text() == id);
    CHECK(part->currentText().startsWith("1.15"));
    CHECK(bench.found<QLabel>("moved-/stages/0/steps/14")->text() == "It stands in “1 Receive” now.");
    const auto* up = bench.found<QWidget>("button-up-/stages/0/steps/14");
    CHECK(up->visibleRegion().boundingRect() == up->rect());
    bench.press("button-up-/stages/0/steps/14");
    CHECK(part->currentText().startsWith("1.14"));
    CHECK_FALSE(bench.page->findChild<QLabel*>("moved-/stages/0/steps/13")->isVisible());
  }
  QLocale::setDefault(QLocale::c());
}

TEST_CASE("a move that would make the sheet invalid is refused with one sentence, and nothing moves") {
  SheetBench bench;
  open_part(bench, Qt::Key_End, 2);
  bench.press("button-down-/stages/11/steps/4");
  const QString part = bench.found<QComboBox>("pick-part")->currentText();
  bench.press("button-down-/stages/11/steps/5");
  CHECK(bench.shown().contains("The signature closes the job, so it has to be the last step; leave it at the end."));
  CHECK(bench.found<QComboBox>("pick-part")->currentText() == part);
  CHECK(bench.found<QWidget>("button-down-/stages/11/steps/5")->hasFocus());
  SheetBench other;
  open_part(other, Qt::Key_Home, 2);
  other.press("button-up-/stages/0/steps/0");
  CHECK(other.shown().contains("It stands at the end already."));
}

TEST_CASE("every part of a sheet is as narrow as the smallest window") {
  SheetBench bench;
  constexpr int smallest_window = 683;
  constexpr int list_of_sections = 214;
  bench.page->resize(smallest_window, 334);
  for (const char* section : {"section-spec-sheets", "section-job-sheets"}) {
    bench.press(section);
    bench.press(QLatin1String(section) == QLatin1String("section-spec-sheets") ? "button-open-D7"
                                                                               : "button-open-dry-pack-renewal");
    bench.press("button-next-issue");
    const auto* form = bench.found<workshop::SheetForm>("sheet-form");
    const int parts = std::min(20, bench.found<QComboBox>("pick-part")->count());
    for (int part = 0; part < parts; ++part) {
      INFO(section << ", part " << part);
      CHECK(form->minimumSizeHint().width() <= smallest_window - list_of_sections - 2 * 24);
      bench.press("button-next-part");
    }
  }
}
