#include "shimwright/widgets/turning_row.h"

#include <QLabel>
#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/widgets/child.h"

using namespace shimwright;

namespace {

struct Rowed {
  QWidget window;
  widgets::TurningRow* row = widgets::lay<widgets::TurningRow>(&window, 10);
  QWidget* left = widgets::child_of<QWidget>(&window);
  QWidget* right = widgets::child_of<QWidget>(&window);

  Rowed() {
    left->setMinimumSize(200, 40);
    right->setMinimumSize(300, 40);
    row->addWidget(left);
    row->addWidget(right, 1);
  }
  void at(int width) {
    window.resize(width, 300);
    window.show();
    QCoreApplication::processEvents();
  }
  [[nodiscard]] bool turned() const { return right->y() >= left->y() + left->height(); }
};

}  // namespace

TEST_CASE("parts stand side by side as long as there is room, and go back when it comes again") {
  Rowed it;
  it.at(510);
  CHECK_FALSE(it.turned());
  it.at(509);
  CHECK(it.turned());
  CHECK(it.right->width() == 509);
  it.at(700);
  CHECK_FALSE(it.turned());
  CHECK(it.right->x() == it.left->x() + it.left->width() + 10);
}

TEST_CASE("the row asks for no more than its widest part needs") {
  Rowed it;
  CHECK(it.window.minimumSizeHint().width() == 300);
  it.at(300);
  CHECK(it.window.width() == 300);
  CHECK(it.turned());
}

TEST_CASE("a row may turn sooner than its parts have to") {
  Rowed it;
  it.row->set_least_width(800);
  it.at(799);
  CHECK(it.turned());
  it.at(800);
  CHECK_FALSE(it.turned());
}
