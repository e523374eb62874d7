#include "code_card.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>
#include <memory>

#include "shimwright/job/to_decide.h"
#include "shimwright/past/past_jobs.h"
#include "shimwright/store/seal.h"
#include "ui_bench.h"

using namespace shimwright;

namespace {

/// Past jobs over a store with one sealed job.
struct ScanBench {
  test::UiBench bench{"01-smooth-day"};
  std::string job = bench.go_to("");
  QString code;
  QString chosen;
  std::unique_ptr<past::PastJobs> page;
  QLineEdit* field = nullptr;

  ScanBench() {
    store::SigningRules rules;
    rules.cost = {1, 8192};
    const store::By by{bench.workbench().person().id, bench.workbench().now()};
    std::vector<store::SealPin> pins;
    for (const std::string& signer : job::signers_of(bench.workbench().state())) {
      std::string first = "2580";
      std::string again = "2580";
      REQUIRE(store::set_pin(bench.store(), signer, record::Pin::taken_from(first), by, rules));
      pins.push_back({signer, record::Pin::taken_from(again)});
    }
    REQUIRE(store::seal_job(bench.store(), job, pins, by, rules));
    code = QString::fromStdString(store::signed_record_of(bench.store(), job)->code);
    page = std::make_unique<past::PastJobs>(bench.store(), [this] { return chosen; });
    page->resize(1000, 640);
    page->show();
    REQUIRE(QTest::qWaitForWindowActive(page.get()));
    field = page->findChild<QLineEdit*>("field-search");
    field->setFocus();
  }
  [[nodiscard]] QString text(const char* name) const {
    auto* label = page->findChild<QLabel*>(name);
    return label == nullptr || !label->isVisible() ? QString() : label->text().replace(QChar::Nbsp, ' ');
  }
  [[nodiscard]] QAbstractButton* row() const {
    for (QAbstractButton* each : page->findChildren<QAbstractButton*>()) {
      if (each->objectName().startsWith("result-") && each->isVisible()) {
        return each;
      }
    }
    return nullptr;
  }
};

}  // namespace

TEST_CASE("a scanned code shows what was signed, and its job is one Enter further than the scanner's own") {
  ScanBench scan;
  std::string opened;
  QObject::connect(scan.page.get(), &past::PastJobs::open_record, [&](const std::string& id) { opened = id; });
  QTest::keyClicks(scan.field, scan.code);
  QTest::keyClick(scan.field, Qt::Key_Return);
  CHECK(scan.text("code-standing").startsWith("Whole and ours: sealed by "));
  CHECK(scan.text("code-lower").contains("shim 1."));
  CHECK(scan.text("code-lower").contains(" mm"));
  CHECK(scan.text("code-seal").size() == 24);
  CHECK(opened.empty());
  REQUIRE(scan.row() != nullptr);
  CHECK(scan.row()->hasFocus());
  QTest::keyClick(scan.row(), Qt::Key_Return);
  CHECK(opened == scan.job);
}

TEST_CASE("a code that was changed shows no values") {
  ScanBench scan;
  QString changed = scan.code;
  changed[20] = changed.at(20) == '7' ? '8' : '7';
  QTest::keyClicks(scan.field, changed);
  CHECK(scan.text("code-standing").contains("it was changed"));
  CHECK(scan.text("code-lower").isEmpty());
  CHECK(scan.row() == nullptr);
  scan.field->clear();
  CHECK(scan.text("code-standing").isEmpty());
  CHECK(scan.row() != nullptr);
}

TEST_CASE("another record after a first shows its own values alone") {
  ScanBench scan;
  QTest::keyClicks(scan.field, scan.code);
  scan.field->clear();
  QTest::keyClicks(scan.field, scan.code);
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  CHECK(scan.page->findChildren<QLabel*>("code-lower").size() == 1);
  CHECK(scan.page->findChild<past::CodeCard*>()->height() < 400);
}

TEST_CASE("a signed file is checked from the page, and a file that is none is told as such") {
  ScanBench scan;
  QTemporaryDir folder;
  const auto file = store::write_job_file(scan.bench.store(), scan.job, folder.path().toStdString());
  REQUIRE(file);
  auto* button = scan.page->findChild<QPushButton*>("button-check-file");
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(scan.text("code-standing").isEmpty());  // nothing was chosen
  scan.chosen = QString::fromStdString(*file);
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(scan.text("code-standing").startsWith("Whole and ours"));
  scan.chosen = folder.filePath("none.signed.json");
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(scan.text("code-standing").contains("cannot be read"));
}

TEST_CASE("a float that was signed is shown where no shim stands, and whose key in a file does not hold") {
  past::CodeCard card;
  store::ScannedCode scanned;
  scanned.values.lower.worst_um = 540;
  card.show_code(scanned);
  const QString lower = card.findChild<QLabel*>("code-lower")->text().replace(QChar::Nbsp, ' ');
  CHECK(lower.toStdString() == "no shim, float 0.54 mm");
  CHECK(card.findChild<QLabel*>("code-upper")->text() == "no shim");
  scanned.fault = Error{"unknown_key", "Ada Vale", {"This is whole, but its key is not known here.", {}}};
  card.show_code(scanned);
  CHECK(card.findChild<QLabel*>("code-standing")->text().startsWith("Signed by Ada Vale: This is whole"));
}
