#include "sheets_section.h"

#include <QFile>

#include "sheet_bench.h"
#include "sheet_words.h"
#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/store/sheet_drafts.h"

using namespace shimwright;
using test::SheetBench;

namespace {

/// A workshop's own sheet: the shipped one without its mark, as a file.
QString own_file(SheetBench& bench) {
  QFile shipped(QStringLiteral(SHIMWRIGHT_DATA_DIR "/specs/D7-2.json"));
  REQUIRE(shipped.open(QIODevice::ReadOnly));
  QByteArray content = shipped.readAll();
  content.replace("\"demonstration\": true", "\"demonstration\": false");
  content.replace("\"gearbox\": \"D7\"", "\"gearbox\": \"K9\"");
  const QString path = bench.rig.file(QStringLiteral("own.json"));
  QFile own(path);
  REQUIRE(own.open(QIODevice::WriteOnly));
  REQUIRE(own.write(content) == content.size());
  return path;
}

void bring_in(SheetBench& bench) {
  bench.file_to_open = own_file(bench);
  bench.press("button-sheet-from-file");
  bench.press("button-make-issue");
}

}  // namespace

TEST_CASE("an issue says who entered it, who uses it, and that a demonstration sheet needs no check") {
  SheetBench bench;
  bench.press("button-open-D7");
  CHECK(bench.shown().contains("No job uses it yet."));
  CHECK(bench.shown().contains("A demonstration sheet needs no check"));
  CHECK(bench.shown().contains("demonstration values"));
  CHECK(bench.page->findChild<QWidget*>("button-check-sheet") == nullptr);
}

TEST_CASE("how many jobs use a sheet is said for none, one and several") {
  CHECK(workshop::use_in_words({0, 0}) == "No job uses it yet.");
  CHECK(workshop::use_in_words({1, 0}) == "Used by 1 job, which is closed.");
  CHECK(workshop::use_in_words({1, 1}) == "Used by 1 job, which is open.");
  CHECK(workshop::use_in_words({212, 2}) == "Used by 212 jobs, 2 of them open.");
  CHECK(workshop::use_in_words({212, 0}) == "Used by 212 jobs, none of them open.");
}

TEST_CASE("a sheet from a file is kept byte for byte, waits for its check, and gets it from another person") {
  SheetBench bench;
  bring_in(bench);
  CHECK(bench.shown().contains("K9, issue 2"));
  CHECK(bench.shown().contains("Not checked yet"));
  bench.press("button-check-sheet");
  CHECK(bench.shown().contains("checks it on a later day"));
  bench.at_bench = bench.other.id;
  bench.press("button-check-sheet");
  CHECK(bench.shown().contains("Checked. Jobs can be opened on it now."));
  CHECK(bench.shown().contains(QStringLiteral("checked by %1").arg(QString::fromStdString(bench.other.initials))));
  const auto issues = store::issues_of_spec_sheet(bench.rig.store(), "K9");
  QFile own(bench.file_to_open);
  REQUIRE(own.open(QIODevice::ReadOnly));
  CHECK(issues->at(0).json == own.readAll().toStdString());
  CHECK(*store::sheet_may_be_used(bench.rig.store(), issues->at(0).hash));
}

TEST_CASE("the same person checks on a later day, and it is said so") {
  SheetBench bench;
  bring_in(bench);
  bench.now_ms += std::int64_t{24} * 3600 * 1000;
  bench.press("button-check-sheet");
  CHECK(bench.shown().contains("the same person, on a later day"));
}

TEST_CASE("an issue is written to a file and brought in as it was") {
  SheetBench bench;
  bench.file_to_save = bench.rig.file(QStringLiteral("out.json"));
  bench.press("button-open-D7");
  bench.press("button-save-sheet");
  CHECK(bench.suggested == "D7-3.json");
  QFile written(bench.file_to_save);
  REQUIRE(written.open(QIODevice::ReadOnly));
  CHECK(written.readAll().toStdString() == bench.rig.store().registers().spec_sheet(bench.rig.spec_hash())->json);
  bench.file_to_save = QStringLiteral("/nowhere/at/all.json");
  bench.press("button-save-sheet");
  CHECK(bench.shown().contains("could not be written"));
}

TEST_CASE("a file that is no sheet is refused with a sentence, and nothing is begun") {
  SheetBench bench;
  const QString path = bench.rig.file(QStringLiteral("no.json"));
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("{ \"format\": \"shimwright.job-sheet\", \"version\": 1, \"min_reader\": 1 }");
  file.close();
  bench.file_to_open = path;
  bench.press("button-sheet-from-file");
  CHECK(store::sheet_drafts(bench.rig.store(), sheet::SheetKind::spec_sheet)->empty());
  bench.file_to_open = QStringLiteral("/nowhere/at/all.json");
  bench.press("button-sheet-from-file");
  CHECK(bench.shown().contains("cannot be read"));
}

TEST_CASE("a next issue begins with the values of the one before, and the two stand side by side") {
  SheetBench bench;
  bench.press("button-open-D7");
  bench.press("button-next-issue");
  bench.press("button-next-part");
  bench.type("/lower/float/least_mm", "0,30");
  bench.press("button-make-issue");
  CHECK(bench.shown().contains("D7, issue 4"));
  CHECK(bench.shown().contains("demonstration values"));
  bench.press("button-compare-3");
  CHECK(bench.shown().contains("issue 3 beside issue 4"));
  CHECK(bench.shown().contains("1 values differ"));
  CHECK(bench.shown().contains("0.25"));
  CHECK(bench.shown().contains("0,30"));
  bench.press("button-back-to-issue");
  CHECK(bench.found("button-compare-3") != nullptr);
}

TEST_CASE("a draft is left, found again in the list after the program ended, and thrown away") {
  SheetBench bench;
  bench.press("button-new-sheet");
  bench.type("/gearbox", "K9");
  bench.press("button-leave-draft");
  bench.open();
  CHECK(bench.shown().contains("Being written: K9, issue 1"));
  bench.press("button-draft-K9");
  CHECK(bench.found<QLineEdit>("field-/gearbox")->text() == "K9");
  bench.press("button-throw-draft-away");
  CHECK(bench.shown().contains("Press again to be sure"));
  bench.press("button-throw-draft-away-now");
  CHECK_FALSE(bench.shown().contains("Being written"));
  CHECK(store::sheet_drafts(bench.rig.store(), sheet::SheetKind::spec_sheet)->empty());
}

TEST_CASE("a copy asks for another name and keeps its mark") {
  SheetBench bench;
  bench.press("button-open-D7");
  bench.press("button-copy-sheet");
  CHECK(bench.shown().contains("demonstration values"));
  bench.press("button-make-issue");
  CHECK(bench.shown().contains("still to be filled in"));
  bench.type("/gearbox", "K9");
  bench.press("button-make-issue");
  CHECK(bench.shown().contains("K9, issue 1"));
  CHECK(bench.shown().contains("demonstration values"));
}

TEST_CASE("a hold point of a job sheet goes with a reason that is asked for") {
  SheetBench bench;
  bench.press("section-job-sheets");
  bench.press("button-open-dry-pack-renewal");
  CHECK(bench.shown().contains("hold point"));
  bench.press("button-next-issue");
  auto* part = bench.found<QComboBox>("pick-part");
  for (int at = 0; at < 14; ++at) {
    bench.press("button-next-part");
  }
  auto* hold = bench.found<QComboBox>("field-/stages/0/steps/12/hold_point");
  REQUIRE(hold->currentText() == "yes");
  hold->setFocus();
  QTest::keyClick(hold, Qt::Key_Down);
  CHECK(hold->currentText() == "no");
  bench.press("button-make-issue");
  CHECK(bench.shown().contains("was taken away; put it back, or say why it may go"));
  CHECK(part->currentText().contains("Taken away"));
  bench.type("#reason/0", "It is decided at the reception.");
  bench.press("button-make-issue");
  CHECK(bench.shown().contains(", issue 4"));
  CHECK(bench.shown().contains("Taken away against the issue before"));
  CHECK(bench.shown().contains("It is decided at the reception."));
}

TEST_CASE("a job sheet is written from nothing: stages, steps in their order, a caution, another language") {
  SheetBench bench;
  bench.press("section-job-sheets");
  bench.press("button-new-sheet");
  bench.type("/name", "own-sheet");
  bench.type("/title/en", "Our own");
  bench.type("/#languages", "de");
  bench.type("/title/de", "Unser eigener");
  bench.press("button-next-part");
  bench.type("/stages/0/id", "all");
  bench.type("/stages/0/title/en", "All of it");
  bench.press("button-next-part");
  bench.type("/stages/0/steps/0/title/en", "Sign");
  bench.press("button-next-part");
  bench.press("button-next-part");
  bench.press("button-add-/stages/0/steps");
  bench.type("/stages/0/steps/1/id", "look");
  bench.type("/stages/0/steps/1/title/en", "Look at it");
  bench.type("/stages/0/steps/1/title/de", "Ansehen");
  bench.press("button-add-/stages/0/steps/1/cautions");
  bench.type("/stages/0/steps/1/cautions/0/hazard/en", "It is hot.");
  bench.type("/stages/0/steps/1/cautions/0/precaution/en", "Wait.");
  bench.press("button-up-/stages/0/steps/1");
  CHECK(bench.found<QLineEdit>("field-/stages/0/steps/0/id")->text() == "look");
  bench.press("button-make-issue");
  const auto issues = store::issues_of_job_sheet(bench.rig.store(), "own-sheet");
  REQUIRE(issues->size() == 1);
  const auto sheet = sheet::read_job_sheet(issues->front().json);
  REQUIRE(sheet);
  CHECK(sheet->title.in("de") == "Unser eigener");
  CHECK(sheet->steps()[0]->title.in("de") == "Ansehen");
  CHECK(sheet->steps()[0]->cautions.size() == 1);
  CHECK_FALSE(sheet->demonstration);
  CHECK(bench.shown().contains("It is hot."));
}
