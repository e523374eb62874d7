#include "sheet_form.h"

#include "sheet_bench.h"
#include "shimwright/store/sheet_drafts.h"

using namespace shimwright;
using test::SheetBench;

namespace {

std::string kept_text(SheetBench& bench, const std::string& place) {
  const auto drafts = store::sheet_drafts(bench.rig.store(), sheet::SheetKind::spec_sheet);
  for (const sheet::DraftSection& section : sheet::sections_of(drafts->at(0).draft)) {
    for (const sheet::DraftGroup& group : section.groups) {
      for (const sheet::DraftField& field : group.fields) {
        if (field.place == place) {
          return field.text;
        }
      }
    }
  }
  return "no such field";
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

TEST_CASE("a wrong value has its sentence at once, a blank one when the sheet shall be kept") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.press("button-next-part");
  CHECK_FALSE(bench.shown().contains("This is still to be filled in."));
  bench.type("/lower/float/most_mm", "0,8,5");
  CHECK(bench.shown().contains("decimal"));
  bench.press("button-make-issue");
  CHECK(bench.shown().contains("Not kept yet"));
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
