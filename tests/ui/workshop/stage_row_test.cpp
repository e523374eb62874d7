#include "stage_row.h"

#include <QComboBox>
#include <QLocale>

#include "sheet_bench.h"
#include "shimwright/store/sheet_drafts.h"

using namespace shimwright;
using test::field_text;
using test::SheetBench;

namespace {

void begin_own_sheet(SheetBench& bench) {
  bench.press("section-job-sheets");
  bench.press("button-new-sheet");
  bench.type("/name", "own-sheet");
  bench.type("/title/en", "Our own");
}

/// By the arrow keys, as long as that word does not stand there.
void pick(QComboBox& box, const QString& wanted) {
  box.setFocus();
  for (int at = 0; at < box.count() && box.currentText() != wanted; ++at) {
    QTest::keyClick(&box, Qt::Key_Down);
  }
  CHECK(box.currentText() == wanted);
}

sheet::SheetDraft kept_draft(SheetBench& bench) {
  return store::sheet_drafts(bench.rig.store(), sheet::SheetKind::job_sheet)->at(0).draft;
}

}  // namespace

TEST_CASE("a stage is taken over by keys or by touch, said in the language of the window") {
  for (const auto& [locale, stage] :
       {std::pair("en_US", "Press on"), std::pair("de_DE", "Aufpressen"), std::pair("fr_FR", "Emmancher")}) {
    for (const bool by_keys : {true, false}) {
      INFO(locale << (by_keys ? " by keys" : " by touch"));
      QLocale::setDefault(QLocale(QLatin1String(locale)));
      SheetBench bench;
      begin_own_sheet(bench);
      CHECK(bench.found<QComboBox>("pick-other-sheet")->currentIndex() == 0);
      QTest::keyClick(bench.found<QComboBox>("pick-other-sheet"), Qt::Key_Return);
      CHECK(bench.found<QComboBox>("pick-other-stage")->hasFocus());
      pick(*bench.found<QComboBox>("pick-other-stage"), QLatin1String(stage));
      if (by_keys) {
        bench.press("button-take-stage-over");
      } else {
        QTest::mouseClick(bench.found<QAbstractButton>("button-take-stage-over"), Qt::LeftButton);
      }
      CHECK(bench.found<QLineEdit>("field-/stages/0/id")->text() == "press-on");
      CHECK(bench.found<QLineEdit>("field-/stages/0/id")->hasFocus());
      CHECK(bench.found<QComboBox>("pick-part")->currentText().startsWith("1 Press on"));
      CHECK(bench.shown().contains("Taken over."));
      CHECK(bench.shown().contains("demonstration values"));
      CHECK(field_text(kept_draft(bench), "/stages/0/steps/8/hold_point") == "yes");
      CHECK(field_text(kept_draft(bench), "/stages/1/steps/0/kind") == "sign");
    }
  }
  QLocale::setDefault(QLocale::c());
}

TEST_CASE("a stage can stand before any other, and one that is there already gets names of its own") {
  SheetBench bench;
  bench.press("section-job-sheets");
  bench.press("button-open-dry-pack-renewal");
  bench.press("button-copy-sheet");
  bench.type("/name", "own-sheet");
  pick(*bench.found<QComboBox>("pick-other-stage"), "Press on");
  auto* place = bench.found<QComboBox>("pick-stage-place");
  CHECK(place->currentText() == "12 Hand over");
  place->setFocus();
  QTest::keyClick(place, Qt::Key_Home);
  bench.press("button-take-stage-over");
  CHECK(bench.found<QLineEdit>("field-/stages/0/id")->text() == "press-on-2");
  CHECK(field_text(kept_draft(bench), "/stages/7/id") == "press-on");
  CHECK(field_text(kept_draft(bench), "/stages/0/steps/0/unproven_until") == "pack-ring-seated-2");
}

TEST_CASE("nothing is taken over before a stage is chosen, and one sentence says so") {
  SheetBench bench;
  begin_own_sheet(bench);
  bench.press("button-take-stage-over");
  CHECK(bench.shown().contains("Choose a sheet and one of its stages first."));
  CHECK(bench.found<QComboBox>("pick-other-stage")->hasFocus());
  pick(*bench.found<QComboBox>("pick-other-stage"), "Receive");
  CHECK_FALSE(bench.shown().contains("Choose a sheet and one of its stages first."));
  CHECK(field_text(kept_draft(bench), "/stages/0/steps/0/kind") == "sign");
}

TEST_CASE("a hold point that came with a stage goes with a reason that is asked for") {
  SheetBench bench;
  begin_own_sheet(bench);
  pick(*bench.found<QComboBox>("pick-other-stage"), "Press on");
  bench.press("button-take-stage-over");
  for (int step = 0; step < 9; ++step) {
    bench.press("button-next-part");
  }
  auto* hold = bench.found<QComboBox>("field-/stages/0/steps/8/hold_point");
  REQUIRE(hold->currentText() == "yes");
  hold->setFocus();
  QTest::keyClick(hold, Qt::Key_Down);
  for (int part = 0; part < 2; ++part) {
    bench.press("button-next-part");
  }
  bench.type("/stages/1/steps/0/title/en", "Sign");
  for (const auto& [place, text] : {std::pair("/stages/1/id", "end"), std::pair("/stages/1/title/en", "End")}) {
    bench.found<QComboBox>("pick-part")->setFocus();
    QTest::keyClick(bench.found<QComboBox>("pick-part"), Qt::Key_Home);
    for (int part = 0; part < 11; ++part) {
      bench.press("button-next-part");
    }
    bench.type(place, text);
  }
  bench.press("button-make-issue");
  CHECK(bench.shown().contains("was taken away; put it back, or say why it may go"));
  bench.type("#reason/0", "It is looked at twice later.");
  bench.press("button-make-issue");
  CHECK(bench.shown().contains("Taken away against the issue before"));
  CHECK(bench.shown().contains("It is looked at twice later."));
}
