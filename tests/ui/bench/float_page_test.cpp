#include "float_page.h"

#include "judged_pages.h"
#include "shimwright/widgets/units.h"
#include "shown_page.h"

using namespace shimwright;

namespace {

const std::string float_step = "lower-float";

struct FloatSitting : test::ShownPage {
  explicit FloatSitting(test::UiBench& ui, const std::string& step = float_step)
      : ShownPage(ui, step, bench::make_float_page) {}
  void lift(const QString& lifted) {
    for (const QString& each : {QString("0.00"), lifted, QString("0,00")}) {
      enter(each);
    }
  }
  void lift_all(const std::vector<QString>& floats) {
    for (const QString& each : floats) {
      lift(each);
    }
  }
  [[nodiscard]] QString said(const char* name) { return page->findChild<QLabel*>(name)->text(); }
  [[nodiscard]] QString advice() {
    QStringList all;
    for (const QLabel* each : page->findChild<QFrame*>("float-advice")->findChildren<QLabel*>()) {
      all.append(each->text());
    }
    return all.join('|');
  }
};

}  // namespace

TEST_CASE("Enter goes from rest to lifted to zero after, keeps the run and goes to the next spot") {
  test::UiBench ui;
  ui.go_to(float_step);
  FloatSitting shown(ui);
  CHECK(shown.page->strip().large == "Lift at spot 1");
  CHECK(test::ShownPage::focus() == "field-rest");
  test::ShownPage::enter("0.00");
  CHECK(test::ShownPage::focus() == "field-lifted");
  CHECK(shown.page->has_unsent());
  test::ShownPage::enter("0,93");
  CHECK(test::ShownPage::focus() == "field-zero-after");
  test::ShownPage::enter({});
  CHECK(shown.count<job::FloatRun>(float_step) == 1);
  CHECK_FALSE(shown.page->has_unsent());
  CHECK(test::ShownPage::focus() == "field-rest");
  CHECK(shown.page->strip().large == "Lift at spot 2");
  CHECK(shown.said("float-run") == "Spot 2, run 1 of 2");
}

TEST_CASE("a length mistyped in inch is no length in mm, whichever key keeps the run") {
  widgets::show_in({quantity::Unit::inch, quantity::Unit::newton_metre});
  {
    test::UiBench ui;
    ui.go_to(float_step);
    FloatSitting shown(ui);
    test::ShownPage::enter("0");
    QTest::keyClicks(QApplication::focusWidget(), "395");
    CHECK_FALSE(shown.page->commit());
    CHECK(shown.count<job::FloatRun>(float_step) == 0);
    CHECK(shown.page->has_unsent());
  }
  widgets::show_in({});
}

TEST_CASE("another spot can be measured next") {
  test::UiBench ui;
  ui.go_to(float_step);
  FloatSitting shown(ui);
  shown.press("spot-3");
  shown.lift("0.93");
  const auto* run = job::latest<job::FloatRun>(shown.bench.state(), float_step);
  REQUIRE(run != nullptr);
  CHECK(run->spot == 3);
  CHECK(shown.page->strip().large == "Lift at spot 1");
}

TEST_CASE("one spot is measured again alone, while runs are entered and once they are judged") {
  test::UiBench ui;
  ui.go_to(float_step);
  FloatSitting shown(ui);
  CHECK_FALSE(shown.offers("spot-again-1"));
  shown.lift_all({"0.93", "0.95", "0.93"});
  CHECK(shown.offers("spot-again-1"));
  CHECK_FALSE(shown.offers("spot-again-2"));
  shown.press("spot-2");
  REQUIRE(shown.offers("spot-again-2"));
  shown.act("spot-again-2");
  CHECK(shown.count<job::SeriesBegun>(float_step) == 1);
  CHECK(shown.said("float-run") == "Spot 2, run 1 of 2");
  CHECK(test::ShownPage::focus() == "field-rest");
  shown.lift_all({"0.93", "0.93", "0.93", "0.93"});
  REQUIRE(shown.page->says_what_to_do());
  REQUIRE(shown.offers("spot-again-3"));
  shown.act("spot-again-3");
  CHECK(shown.said("float-run") == "Spot 3, run 1 of 2");
}

TEST_CASE("a zero that did not come back is said at its field, and nothing is kept or lost") {
  test::UiBench ui;
  ui.go_to(float_step);
  FloatSitting shown(ui);
  for (const QString& each : {QString("0.00"), QString("0.56"), QString("0.05")}) {
    test::ShownPage::enter(each);
  }
  CHECK(shown.refusals == std::vector<std::string>{"zero_lost"});
  CHECK(shown.count<job::FloatRun>(float_step) == 0);
  CHECK(test::ShownPage::focus() == "field-zero-after");
  CHECK(shown.page->has_unsent());
}

TEST_CASE("where trials and float disagree, seating again stands before another shim") {
  test::UiBench ui;
  ui.go_to(float_step);
  FloatSitting shown(ui);
  shown.lift_all({"0.93", "0.90", "0.96"});
  CHECK(shown.page->strip().large == "0.93 mm too large");
  CHECK(shown.page->strip().small == "lower disc, limits 0.25 to 0.85 mm");
  CHECK(shown.advice().contains("Seat the large bearing again"));
  CHECK(shown.main_action() == "seat-again");
  shown.act("change-shim");
  shown.press("shim-1.95");
  CHECK(shown.asks.size() == 1);  // against the advice: with a reason
  CHECK(shown.bench.state().assembly == 1);
  shown.act("seat-again");
  CHECK(shown.said("float-facts").contains("Measured before: 0.930, 0.900, 0.960."));
  shown.lift_all({"0.93", "0.91", "0.95", "0.93", "0.91", "0.95"});
  CHECK(shown.main_action() == "change-shim");
}

TEST_CASE("changing the shim says what it costs, begins the next assembly and leaves the page") {
  test::UiBench ui;
  ui.go_to(float_step);
  FloatSitting shown(ui);
  shown.lift_all({"0.93", "0.90", "0.96"});
  shown.act("seat-again");
  shown.lift_all({"0.93", "0.91", "0.95", "0.93", "0.91", "0.95"});
  const auto* advised = job::latest<job::Advised>(shown.bench.state(), float_step);
  REQUIRE(advised != nullptr);
  const QString wanted = QString::fromStdString(advised->shim.value_or(std::string()));
  shown.act("change-shim");
  CHECK(shown.said("shim-choice-text").contains("Retaining ring, pack"));
  CHECK(shown.said("shim-choice-text").contains("Pressings of this pack so far: 1"));
  shown.press("shim-" + wanted);
  CHECK(shown.asks.empty());
  CHECK(shown.bench.state().assembly == 2);
  CHECK(shown.left == 1);
}

TEST_CASE("every shim with its chance is one key away") {
  test::UiBench ui;
  ui.go_to(float_step);
  FloatSitting shown(ui);
  CHECK_FALSE(shown.offers("all-shims"));
  shown.lift_all({"0.93", "0.90", "0.96"});
  CHECK(shown.page->findChild<QWidget*>("float-promises")->isHidden());
  shown.act("all-shims");
  CHECK_FALSE(shown.page->findChild<QWidget*>("float-promises")->isHidden());
}

TEST_CASE("within its limits the verdict stays in sight until the person goes on") {
  test::UiBench ui("01-smooth-day");
  ui.go_to(float_step);
  FloatSitting shown(ui);
  shown.lift_all({"0.54", "0.56", "0.53"});
  CHECK(shown.advice().contains("Measure each spot once more"));
  shown.lift_all({"0.54", "0.55", "0.54"});
  CHECK(shown.page->strip().mark == widgets::Mark::within);
  CHECK(shown.left == 0);
  CHECK(shown.main_action() == "go-on");
  shown.act("go-on");
  CHECK(shown.left == 1);
}

TEST_CASE("on the limit, where more runs decide nothing, no button is the main one; where no shim helps, seating is") {
  const auto& [lift, main] = GENERATE(table<const char*, const char*>({{"0.85", ""}, {"1.54", "seat-again"}}));
  test::UiBench ui("01-smooth-day");
  ui.go_to(float_step);
  FloatSitting shown(ui);
  shown.lift_all({lift, lift, lift, lift, lift, lift});
  INFO(shown.advice().toStdString());
  REQUIRE(shown.advice().contains(QLatin1String(main).isEmpty() ? "you decide" : "No shim of the tray"));
  CHECK(shown.main_action() == main);
}

TEST_CASE("a float as found is for information, without a verdict") {
  test::UiBench ui;
  ui.go_to("hub-ring-off");
  FloatSitting shown(ui, "upper-float-as-found");
  CHECK(shown.page->strip().large == "0.67 mm as found");
  CHECK(shown.page->strip().mark == widgets::Mark::none);
  CHECK_FALSE(shown.offers("change-shim"));
}

TEST_CASE("what to know of the dial stands there until the first run is kept") {
  test::UiBench ui;
  ui.go_to(float_step);
  FloatSitting shown(ui);
  const auto says_it = [&] {
    const auto labels = shown.page->findChildren<QLabel*>();
    return std::any_of(labels.begin(), labels.end(), [](const QLabel* each) {
      return each->isVisible() && each->text().startsWith("Lifted is the higher reading");
    });
  };
  CHECK(says_it());
  shown.lift("0.93");
  CHECK_FALSE(says_it());
}

TEST_CASE("once judged the advice has the focus and stands right below the verdict") {
  test::UiBench ui;
  ui.go_to(float_step);
  FloatSitting shown(ui);
  CHECK_FALSE(shown.page->says_what_to_do());
  shown.lift_all({"0.93", "0.90", "0.96", "0.93", "0.90", "0.96"});
  CHECK(shown.page->says_what_to_do());
  CHECK(test::ShownPage::focus() == "float-advice");
}
