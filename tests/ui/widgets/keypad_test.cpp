#include "shimwright/widgets/keypad.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <catch2/catch.hpp>

#include "painted.h"
#include "shimwright/widgets/child.h"

using namespace shimwright;

namespace {

struct Pad {
  QWidget window;
  QLineEdit* edit = widgets::child_of<QLineEdit>(&window);
  widgets::Keypad* pad = widgets::child_of<widgets::Keypad>(&window);

  Pad() {
    auto* column = widgets::lay<QVBoxLayout>(&window);
    column->addWidget(edit);
    column->addWidget(pad);
    window.show();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    edit->setFocus();
  }

  void press(const char* name) {
    auto* button = pad->findChild<QPushButton*>(QStringLiteral("button-keypad-") + QLatin1String(name));
    REQUIRE(button != nullptr);
    QTest::mouseClick(button, Qt::LeftButton);
  }
};

}  // namespace

TEST_CASE("the keypad types into the line edit that has the focus, and leaves it the focus") {
  Pad pad;
  int entered = 0;
  QObject::connect(pad.edit, &QLineEdit::returnPressed, [&entered] { ++entered; });
  for (const char* name : {"minus", "1", "2", "comma", "3", "4", "5", "6", "7", "8", "9", "0", "delete"}) {
    pad.press(name);
  }
  CHECK(pad.edit->text() == "-12,3456789");
  CHECK(pad.edit->hasFocus());
  CHECK(entered == 0);
  pad.press("enter");
  CHECK(entered == 1);
}

TEST_CASE("keys go nowhere but into a line edit, and Enter may take the field away") {
  Pad pad;
  pad.edit->clearFocus();
  pad.press("7");
  CHECK(pad.edit->text().isEmpty());
  auto passing = std::make_unique<QLineEdit>(&pad.window);
  passing->show();
  passing->setFocus();
  QObject::connect(passing.get(), &QLineEdit::returnPressed, &pad.window,
                   [&passing] { passing.release()->deleteLater(); });
  pad.press("enter");
  CHECK(passing == nullptr);
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

TEST_CASE("each key is large, takes no focus and has a name") {
  test::in_both_schemes([](const widgets::Colours&) {
    widgets::Keypad pad;
    test::painted(pad, pad.sizeHint());
    const auto buttons = pad.findChildren<QPushButton*>();
    CHECK(buttons.size() == 14);
    for (const QPushButton* button : buttons) {
      CHECK(button->width() >= 64);
      CHECK(button->height() == 64);
      CHECK(button->focusPolicy() == Qt::NoFocus);
      CHECK_FALSE(button->accessibleName().isEmpty());
    }
  });
}

TEST_CASE("all columns of the keypad are of one width, and on a low screen its keys are lower, not cut") {
  test::in_both_schemes([](const widgets::Colours&) {
    widgets::Keypad pad;
    test::painted(pad, pad.sizeHint());
    const auto key = [&pad](const char* name) {
      return pad.findChild<QPushButton*>(QStringLiteral("button-keypad-") + QLatin1String(name));
    };
    for (const char* name : {"8", "9", "delete", "minus", "comma"}) {
      CHECK(std::abs(key(name)->width() - key("7")->width()) <= 1);
    }
    constexpr int room_at_twice_the_size = 264;  // 384 less top bar and foot
    CHECK(pad.minimumSizeHint().height() <= room_at_twice_the_size);
    test::painted(pad, {pad.sizeHint().width(), room_at_twice_the_size});
    CHECK(key("7")->height() >= 48);
    CHECK(key("enter")->geometry().bottom() < room_at_twice_the_size);
  });
}

TEST_CASE("the key that deletes is painted, since the type has no sign for it") {
  test::in_both_schemes([](const widgets::Colours& colours) {
    widgets::Keypad pad;
    const QImage image = test::painted(pad, pad.sizeHint());
    const auto* key = pad.findChild<QPushButton*>("button-keypad-delete");
    CHECK(key->accessibleName() == "delete");
    CHECK(test::count_of(image.copy(key->geometry()), colours.text) > 20);
  });
}
