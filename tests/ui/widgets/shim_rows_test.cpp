#include "shimwright/widgets/shim_rows.h"

#include <QAbstractButton>
#include <QTest>
#include <catch2/catch.hpp>

#include "painted.h"
#include "shim_row_button.h"
#include "shimwright/widgets/child.h"

using namespace shimwright;
using widgets::ShimRow;
using widgets::ShimRows;

namespace {

/// 2.15 down to 1.30: live from 1.70 to 1.60.
std::vector<ShimRow> three_live() {
  std::vector<ShimRow> rows;
  for (int at = 215; at >= 130; at -= 5) {
    ShimRow row;
    row.shim = QString::number(at / 100.0, 'f', 2).toStdString();
    row.struck = at > 170 || at < 160;
    if (!row.struck) {
      row.share = at == 165 ? 0.4 : 0.3;
      row.words = at == 165 ? "40 in 100" : "30 in 100";
      row.tray = "2 in the tray";
      row.advised = at == 165;
    }
    rows.push_back(row);
  }
  return rows;
}

std::vector<ShimRow> all_live() {
  std::vector<ShimRow> rows = three_live();
  for (ShimRow& row : rows) {
    row.struck = false;
    row.share = 0.05;
  }
  return rows;
}

QAbstractButton& row_named(const QWidget& rows, const char* name) {
  auto* button = rows.findChild<QAbstractButton*>(QLatin1String(name));
  REQUIRE(button != nullptr);
  return *button;
}

struct Picking {
  QWidget window;
  ShimRows* rows = widgets::child_of<ShimRows>(&window);
  std::vector<std::string> picked;

  Picking() {
    widgets::lay<QVBoxLayout>(&window)->addWidget(rows);
    QObject::connect(rows, &ShimRows::picked, [this](const std::string& shim) { picked.push_back(shim); });
    rows->set_rows(three_live(), "try this one");
    window.resize(858, 400);
    window.show();
    REQUIRE(QTest::qWaitForWindowActive(&window));
  }
};

}  // namespace

TEST_CASE("ruled-out shims fold into one line, but for those next to a live one") {
  ShimRows rows;
  rows.set_rows(three_live(), "try this one");
  rows.set_fold_words("ruled out by trial 1", "ruled out by trial 2");
  CHECK(rows.shown() == std::vector<std::string>{"1.75", "1.70", "1.65", "1.60", "1.55"});
  CHECK(rows.fold_above() == "1.80 to 2.15: ruled out by trial 1");
  CHECK(rows.fold_below() == "1.30 to 1.50: ruled out by trial 2");
  CHECK(rows.sizeHint().height() == 5 * 50 + 2 * 25);
}

TEST_CASE("where there is no room for all live rows those far from the advised one fold, with their chance") {
  test::in_both_schemes([](const widgets::Colours&) {
    ShimRows rows;
    rows.set_rows(all_live(), "try this one");
    test::painted(rows, {858, 400});
    CHECK(rows.shown().size() == 8);
    CHECK(rows.shown()[4] == "1.65");
    CHECK(row_named(rows, "shim-1.65").height() == 40);
    CHECK(rows.fold_above() == "1.90 to 2.15: 30 in 100 together");
    CHECK(rows.sizeHint().height() <= 400);
    test::painted(rows, {858, 200});
    CHECK(rows.shown().size() == 3);
    CHECK(rows.shown()[1] == "1.65");
    test::painted(rows, {858, 900});
    CHECK(rows.shown().size() == 18);
    CHECK(rows.fold_above().isEmpty());
    CHECK(row_named(rows, "shim-1.65").height() == 50);
    rows.set_rows({}, "");
    test::painted(rows, {858, 400});
    CHECK(rows.shown().empty());
  });
}

TEST_CASE("a bar is as long as its share, and leaves room for the words") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    ShimRows rows;
    rows.set_rows(three_live(), "try this one");
    for (const int width : {400, 810}) {
      const QImage image = test::painted(rows, {width, 300});
      const int middle = 25 + 2 * 50 + 25;
      const auto long_is = [&image](int y, const QColor& colour) {
        int x = 120;
        while (image.pixelColor(x, y).rgb() == colour.rgb()) {
          ++x;
        }
        return x - 118;
      };
      const int advised = long_is(middle, colours.blue);
      const int next = long_is(middle - 50, colours.metal);
      CHECK(advised > 20);
      CHECK(next == Approx(advised * 0.75).margin(2));
    }
  });
}

TEST_CASE("each row says all it shows") {
  ShimRows rows;
  auto some = three_live();
  some[8].conflicting = true;
  some[8].words = "tight, trial 1";
  some[9].picked = true;
  rows.set_rows(some, "try this one");
  CHECK(row_named(rows, "shim-1.65").accessibleName() == "1.65, 40 in 100, try this one, 2 in the tray");
  CHECK(row_named(rows, "shim-1.75").accessibleName() == "1.75, ruled out, tight, trial 1, contradicted");
  CHECK(row_named(rows, "shim-1.70").accessibleName() == "1.70, 30 in 100, picked, 2 in the tray");
}

TEST_CASE("what is in the tray is said in short before it is cut") {
  widgets::ShimRowButton button;
  widgets::ShimRow row;
  row.shim = "1.65";
  row.tray = "5 in the tray, measured 1.652";
  row.tray_in_short = "5 in the tray";
  button.set_row(row, "advised");
  CHECK(button.tray_shown(1000) == row.tray);
  const auto shortest = [&] {
    int room = 1000;
    while (room > 0 && !button.tray_shown(room).endsWith(QChar(0x2026))) {
      --room;
    }
    return room;
  };
  const int cut_at = shortest();
  CHECK(button.tray_shown(cut_at + 1) == row.tray_in_short);
  row.tray_in_short.clear();
  button.set_row(row, "advised");
  CHECK(shortest() > cut_at);
}

TEST_CASE("a contradicted trial stays in sight, however far off") {
  ShimRows rows;
  auto some = three_live();
  some[5].conflicting = true;  // 1.90
  rows.set_rows(some, "try this one");
  rows.resize(858, 400);
  CHECK(rows.shown().front() == "1.90");
  CHECK(rows.shown().back() == "1.60");
  CHECK(row_named(rows, "shim-1.90").isVisibleTo(&rows));
}

TEST_CASE("a click picks a row only where picking is allowed") {
  Picking picking;
  QTest::mouseClick(&row_named(*picking.rows, "shim-1.60"), Qt::LeftButton);
  CHECK(picking.picked.empty());
  picking.rows->set_pickable(true);
  QTest::mouseClick(&row_named(*picking.rows, "shim-1.60"), Qt::LeftButton);
  CHECK(picking.picked == std::vector<std::string>{"1.60"});
}

TEST_CASE("Up and Down go from row to row from the advised one on, Enter and Space pick") {
  Picking picking;
  picking.rows->set_pickable(true);
  picking.rows->take_focus();
  CHECK(row_named(*picking.rows, "shim-1.65").hasFocus());
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
  CHECK(row_named(*picking.rows, "shim-1.60").hasFocus());
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Up);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Up);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
  CHECK(picking.picked == std::vector<std::string>{"1.60", "1.70"});
}

TEST_CASE("rows may be set anew from within a pick, and the focus stays") {
  Picking picking;
  picking.rows->set_pickable(true);
  QObject::connect(picking.rows, &ShimRows::picked, [&picking](const std::string&) {
    auto fewer = three_live();
    fewer[9].struck = true;
    picking.rows->set_rows(fewer, "try this one");
  });
  picking.rows->take_focus();
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  QTest::mouseClick(&row_named(*picking.rows, "shim-1.60"), Qt::LeftButton);
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  CHECK(picking.picked.size() == 2);
  CHECK(picking.rows->shown().size() == 4);
  CHECK(row_named(*picking.rows, "shim-1.60").hasFocus());
}

TEST_CASE("a share has the same length whatever its row and the others say, and the words stand in one column") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    const auto bar_of = [&colours](const QString& words) {
      ShimRows rows;
      auto some = three_live();
      some[10].words = words;  // 1.65
      rows.set_rows(some, "fit this one");
      const QImage image = test::painted(rows, {810, 300});
      int x = 120;
      while (image.pixelColor(x, 25 + 2 * 50 + 25).rgb() == colours.blue.rgb()) {
        ++x;
      }
      return x;
    };
    CHECK(bar_of("40 in 100") == bar_of("snug, trial 3 and trial 5 · 40 in 100"));
  });
}
