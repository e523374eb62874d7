#include "depth_page.h"

#include "judged_pages.h"
#include "shimwright/widgets/units.h"
#include "shown_page.h"

using namespace shimwright;

namespace {

const std::string depth_step = "large-depth";

struct DepthSitting : test::ShownPage {
  explicit DepthSitting(test::UiBench& ui) : ShownPage(ui, depth_step, bench::make_depth_page) {}
  void type(const QString& one, const QString& two, const QString& reference, const QString& stamp) {
    for (const QString& each : {one, two, reference, stamp}) {
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
      enter(each);
    }
  }
};

}  // namespace

TEST_CASE("depths are typed from field to field, kept with Enter in the last, and the shim is taken") {
  test::UiBench ui("03-sum-on-the-border");
  ui.go_to(depth_step);
  DepthSitting shown(ui);
  CHECK(shown.page->strip().large.isEmpty());
  CHECK(shown.page->findChild<QLabel*>("depth-said")->text() == "Type each value and press Enter; the sum follows.");
  CHECK_FALSE(shown.page->has_unsent());
  shown.type("5,06", "5.05", "2.93", "-0.12");
  CHECK(shown.refusals.empty());
  CHECK(shown.count<job::DepthsRead>(depth_step) == 1);
  CHECK_FALSE(shown.page->has_unsent());
  CHECK(shown.page->strip().large == "Fit 1.65");
  CHECK(shown.main_action() == "take-shim");
  shown.act("take-shim");
  CHECK(shown.bench.state().shims.at(sheet::Side::lower) == "1.65");
}

TEST_CASE("a depth mistyped in inch is no depth in mm, whichever key keeps it") {
  widgets::show_in({quantity::Unit::inch, quantity::Unit::newton_metre});
  {
    test::UiBench ui("03-sum-on-the-border");
    ui.go_to(depth_step);
    DepthSitting shown(ui);
    shown.type("0.2", "0.2", "0.1", "0.00");
    const auto before = shown.count<job::DepthsRead>(depth_step);
    shown.page->take_focus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), "395");
    CHECK_FALSE(shown.page->commit());
    CHECK(shown.count<job::DepthsRead>(depth_step) == before);
    CHECK(shown.page->has_unsent());
  }
  widgets::show_in({});
}

TEST_CASE("the stamp is not kept without its sign") {
  test::UiBench ui("03-sum-on-the-border");
  ui.go_to(depth_step);
  DepthSitting shown(ui);
  shown.type("5.06", "5.05", "2.93", "0.12");
  CHECK(shown.count<job::DepthsRead>(depth_step) == 0);
  CHECK(shown.page->has_unsent());
  CHECK(shown.main_action() == "take");
  shown.press("stamp-minus");
  shown.act("take");
  CHECK(shown.count<job::DepthsRead>(depth_step) == 1);
  CHECK_FALSE(shown.offers("take"));
}

TEST_CASE("on the border both shims are offered, and measured again counts anew") {
  test::UiBench ui("03-sum-on-the-border");
  ui.go_to(depth_step);
  DepthSitting shown(ui);
  shown.type("5.12", "5.13", "2.93", "-0.12");
  CHECK(shown.page->strip().large == "1.65 or 1.80");
  CHECK(shown.offers("take-1.65"));
  CHECK(shown.offers("take-1.80"));
  CHECK(shown.main_action() == "measure-again");
  shown.page->findChild<QLineEdit*>("field-depth-1")->setFocus();
  QTest::keyClicks(QApplication::focusWidget(), "1");
  CHECK(shown.page->has_unsent());
  CHECK(shown.page->strip().large.isEmpty());
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backspace);
  CHECK_FALSE(shown.page->has_unsent());
  shown.act("measure-again");
  CHECK(test::ShownPage::focus() == "field-depth-1");
  CHECK(shown.count<job::DepthsRead>(depth_step) == 1);
  shown.act("take-1.80");
  CHECK(shown.asks.empty());
  CHECK(shown.bench.state().shims.at(sheet::Side::lower) == "1.80");
}

TEST_CASE("tilted depths are said in place of a sum, and an unreadable depth keeps the focus") {
  test::UiBench ui("03-sum-on-the-border");
  ui.go_to(depth_step);
  DepthSitting shown(ui);
  test::ShownPage::enter("5.1.2");
  CHECK(test::ShownPage::focus() == "field-depth-1");
  shown.type("5.12", "5.33", "2.93", "-0.12");
  CHECK(shown.page->strip().large == "Tilted");
  CHECK(shown.main_action() == "measure-again");
  shown.act("another-shim");
  shown.press("shim-1.65");
  REQUIRE(shown.asks.size() == 1);
}

TEST_CASE("what an earlier sitting kept stands in the fields and is not unsent") {
  test::UiBench ui("03-sum-on-the-border");
  ui.go_to("large-shim-measured");
  DepthSitting shown(ui);
  CHECK_FALSE(shown.page->has_unsent());
  CHECK(shown.page->findChild<QLineEdit*>("field-depth-4") != nullptr);
  CHECK(shown.page->findChild<QLineEdit*>("field-reference")->text() == "2.93");
  CHECK(shown.page->strip().large == "Fit 1.80");
}
