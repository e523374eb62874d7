#include "shimwright/widgets/strip.h"

#include <catch2/catch.hpp>

#include "painted.h"
#include "shimwright/widgets/child.h"

using namespace shimwright;
using widgets::Mark;
using widgets::Strip;

namespace {

constexpr int seven_millimetres = 31;

}  // namespace

TEST_CASE("a short instruction stands in one line, its capitals higher than 7 mm") {
  test::in_both_schemes([](const widgets::Colours&) {
    Strip strip;
    strip.set_text({Mark::none, "Try 1.65", "large bearing, trial 3", false});
    CHECK(strip.heightForWidth(858) == 78);
    test::painted(strip, {858, 78});
    CHECK(strip.large_lines() == QStringList{"Try 1.65"});
    CHECK(strip.cap_height() > seven_millimetres);
    CHECK(strip.accessibleName() == "Try 1.65, large bearing, trial 3");
  });
}

TEST_CASE("capitals keep their 7 mm where the words wrap, and only then are words left out") {
  test::in_both_schemes([](const widgets::Colours&) {
    Strip strip;
    strip.set_text(
        {Mark::on_limit, "The two runs of spot 2 differ by more than the gauge allows", "allowed 0.02", false});
    for (const int width : {858, 700, 400}) {
      const int height = strip.heightForWidth(width);
      test::painted(strip, {width, height});
      CHECK(strip.cap_height() >= seven_millimetres);
      CHECK(strip.large_lines().size() == 2);
      CHECK(height < 160);
    }
    strip.resize(858, 140);
    CHECK(strip.large_lines().join(' ') == strip.text().large);
    strip.resize(400, 140);
    CHECK(strip.large_lines().last().endsWith(QChar(0x2026)));
    CHECK(strip.accessibleName().contains("gauge allows"));
  });
}

TEST_CASE("a bad verdict is brick, its mark stands left of the words") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    Strip strip;
    strip.set_text({Mark::too_large, "0.93 too large", "lower disc, limits 0.25 to 0.85", true});
    const QImage image = test::painted(strip, {858, 78});
    CHECK(test::count_of(image.copy(20, 0, 44, 78), colours.brick) > 300);
    CHECK(test::count_of(image.copy(80, 0, 300, 78), colours.brick) > 800);
    CHECK(image.pixelColor(4, 4).rgb() == colours.card.rgb());
    CHECK(image.pixelColor(4, 77).rgb() == colours.line.rgb());
  });
}

TEST_CASE("a filling strip takes type as large as there is room") {
  const test::Dressed dressed(widgets::Scheme::light);
  Strip strip;
  strip.set_text({Mark::within, "0.57 within", "lower disc", false});
  strip.set_filling(true);
  test::painted(strip, {1366, 768});
  const int whole = strip.cap_height();
  CHECK(whole > 100);
  test::painted(strip, {600, 300});
  CHECK(strip.cap_height() < whole);
  CHECK(strip.cap_height() >= seven_millimetres);
  strip.set_text({});
  test::painted(strip, {600, 300});
}

TEST_CASE("a layout gives the strip the height its words need") {
  const test::Dressed dressed(widgets::Scheme::light);
  QWidget page;
  auto* column = widgets::lay<QVBoxLayout>(&page);
  auto* strip = widgets::child_of<Strip>(&page);
  column->addWidget(strip);
  column->addStretch(1);
  strip->set_text({Mark::none, "Try 1.65", "large bearing", false});
  page.resize(858, 600);
  page.show();
  CHECK(strip->height() == 78);
  strip->set_text({Mark::none, "The two runs of spot 2 differ by more than the gauge allows", "allowed 0.02", false});
  QCoreApplication::sendPostedEvents();
  CHECK(strip->height() == strip->heightForWidth(858));
  CHECK(strip->height() > 100);
}
