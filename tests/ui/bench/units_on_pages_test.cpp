// The pages of readings in inch and lbf·ft: what is typed is stored as the same micrometres and milli-newton-metres,
// and what was stored in other units is shown in these.
#include "depth_page.h"
#include "float_page.h"
#include "judged_pages.h"
#include "page_driver.h"
#include "shimwright/widgets/units.h"
#include "shown_page.h"

using namespace shimwright;

namespace {

struct InchAndPound {
  InchAndPound() { widgets::show_in({quantity::Unit::inch, quantity::Unit::pound_foot}); }
  ~InchAndPound() { widgets::show_in({}); }
  InchAndPound(const InchAndPound&) = delete;
  InchAndPound& operator=(const InchAndPound&) = delete;
};

void enter_all(const std::vector<QString>& texts) {
  for (const QString& each : texts) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
    test::ShownPage::enter(each);
  }
}

}  // namespace

TEST_CASE("a torque typed in lbf·ft is stored in milli-newton-metres and judged by the limit in N·m") {
  const InchAndPound units;
  test::PageDriver driver("press-peak");
  CHECK(driver.shows("at most 8.85 lbf·ft"));
  CHECK_FALSE(driver.shows("N·m"));
  driver.type("field-torque", "7,0");
  driver.enter("field-torque");
  CHECK(driver.state() == "accepted");
  const job::Reading& reading = driver.latest<job::PeakRead>()->reading;
  CHECK(reading.number == quantity::TypedNumber{9491, 1, quantity::Unit::pound_foot});
  CHECK(reading.verdict == job::ReadingVerdict::within);
  CHECK(driver.shows("7.0 lbf·ft within"));
}

TEST_CASE("a torque with its unit typed is taken in that unit, and shown in the one chosen") {
  const InchAndPound units;
  test::PageDriver driver("press-peak");
  driver.type("field-torque", "9.5 Nm");
  driver.enter("field-torque");
  const job::Reading& reading = driver.latest<job::PeakRead>()->reading;
  CHECK(reading.number == quantity::TypedNumber{9500, 1, quantity::Unit::newton_metre});
  CHECK(driver.shows("7.007 lbf·ft within"));
}

TEST_CASE("a float typed in inch is the same micrometres, and its verdict is said in inch") {
  const InchAndPound units;
  test::UiBench ui;
  ui.go_to("lower-float");
  test::ShownPage shown(ui, "lower-float", bench::make_float_page);
  enter_all({"0.0000", "0.0366", ""});
  const auto* run = job::latest<job::FloatRun>(ui.workbench().state(), "lower-float");
  REQUIRE(run != nullptr);
  CHECK(run->lifted == quantity::TypedNumber{930, 4, quantity::Unit::inch});
  CHECK(run->rest.base == 0);
  enter_all({"0.0000", "0.0366", "", "0.0000", "0.0366", ""});
  CHECK(shown.page->strip().large.startsWith("0.0366 in "));
  CHECK(shown.page->strip().small.endsWith(" in"));
  CHECK_FALSE(shown.page->strip().small.contains("0.85"));
}

TEST_CASE("depths stored in mm stand in inch when the page is opened again, and sent again they are the same") {
  test::UiBench ui("03-sum-on-the-border");
  ui.go_to("large-depth");
  {
    test::ShownPage metric(ui, "large-depth", bench::make_depth_page);
    enter_all({"5,06", "5.05", "2.93", "-0.12"});
  }
  const auto before = *job::latest<job::DepthsRead>(ui.workbench().state(), "large-depth");
  const InchAndPound units;
  test::ShownPage shown(ui, "large-depth", bench::make_depth_page);
  CHECK_FALSE(shown.page->has_unsent());
  CHECK(shown.page->findChild<QLineEdit*>("field-depth-1")->text() == "0.1992");
  // The first place is measured again and found the same to the last digit; the page sends all of them.
  auto* first = shown.page->findChild<QLineEdit*>("field-depth-1");
  first->setFocus();
  first->setText("0.19921");
  shown.act("take");
  const auto after = *job::latest<job::DepthsRead>(ui.workbench().state(), "large-depth");
  CHECK(after.readings[0].base == before.readings[0].base);
  CHECK(after.readings[1].base == before.readings[1].base);
  CHECK(after.reference.base == before.reference.base);
  CHECK(after.stamp->base == before.stamp->base);
}
