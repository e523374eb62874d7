#include "shimwright/widgets/giving.h"

#include <QApplication>
#include <QLabel>
#include <catch2/catch.hpp>

#include "shimwright/widgets/child.h"

using namespace shimwright;

TEST_CASE("a window may be as small as the page that is shown, whatever the others need") {
  QWidget window;
  auto* stack = widgets::child_of<widgets::PageStack>(&window);
  widgets::lay<QVBoxLayout>(&window)->addWidget(stack);
  CHECK_FALSE(stack->minimumSizeHint().isValid());
  auto* high = widgets::child_of<QWidget>(stack);
  auto* low = widgets::child_of<QWidget>(stack);
  widgets::lay<QVBoxLayout>(high)->addSpacing(600);
  widgets::lay<QVBoxLayout>(low)->addSpacing(100);
  stack->addWidget(high);
  stack->addWidget(low);
  const auto least = [&](QWidget* page) {
    stack->setCurrentWidget(page);
    QCoreApplication::processEvents();
    window.layout()->activate();
    return window.minimumSizeHint();
  };
  CHECK(least(high).height() >= 600);
  CHECK(least(low).height() < 200);
  CHECK(least(high).height() >= 600);
}

TEST_CASE("what gives way is as high as its content where there is room, and scrolls where there is none") {
  QWidget window;
  auto* column = widgets::lay<QVBoxLayout>(&window, 0);
  auto* scroll = widgets::child_of<widgets::GivingScroll>(&window);
  column->addWidget(scroll);
  auto* below = widgets::child_of<QWidget>(&window);
  below->setMinimumHeight(100);
  below->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
  column->addWidget(below, 1);
  auto* content = widgets::child_of<QWidget>(scroll->content());
  scroll->column()->addWidget(content);
  content->setFixedHeight(250);
  auto* words =
      widgets::child_of<widgets::Text>(scroll->content(), QStringLiteral("many words that wrap ").repeated(12));
  words->hide();
  scroll->column()->addWidget(words);
  const auto at = [&](int height) {
    window.resize(400, height);
    window.show();
    for (int turn = 0; turn < 4; ++turn) {  // what it learns by being resized it asks for in the next turn
      QCoreApplication::processEvents();
    }
  };
  at(600);
  CHECK(scroll->height() == 250);
  CHECK_FALSE(scroll->overflows());
  at(250);
  CHECK(window.height() == 250);
  CHECK(scroll->overflows());
  CHECK(below->height() >= 100);
  words->show();
  at(600);
  CHECK(scroll->height() > 250 + 2 * words->fontMetrics().height());
  CHECK_FALSE(scroll->overflows());
  words->hide();
  content->hide();
  QCoreApplication::processEvents();
  at(251);
  CHECK(scroll->height() == 0);
  CHECK(below->height() == 251);
}
