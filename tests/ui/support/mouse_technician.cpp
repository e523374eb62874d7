#include "mouse_technician.h"

#include <QApplication>
#include <QLineEdit>
#include <QScrollArea>
#include <QTest>
#include <QWheelEvent>
#include <algorithm>
#include <catch2/catch.hpp>

#include "shimwright/widgets/number_field.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"

namespace shimwright::test {

using widgets::qt;

namespace {

template <class Kind>
Kind* above(QWidget* widget) {
  for (QWidget* each = widget->parentWidget(); each != nullptr; each = each->parentWidget()) {
    if (auto* found = qobject_cast<Kind*>(each)) {
      return found;
    }
  }
  return nullptr;
}

/// Whether a click on its middle would meet it.
bool in_sight(QWidget& target) {
  QWidget* window = target.window();
  return window->childAt(target.mapTo(window, target.rect().center())) == &target ||
         target.isAncestorOf(window->childAt(target.mapTo(window, target.rect().center())));
}

void wheel(QScrollArea& area, int notches) {
  const QPointF middle = area.viewport()->rect().center();
  constexpr int one_notch = 120;
  QWheelEvent event(middle, area.viewport()->mapToGlobal(middle), {}, {0, notches * one_notch}, Qt::NoButton,
                    Qt::NoModifier, Qt::NoScrollPhase, false);
  QApplication::sendEvent(area.viewport(), &event);
}

void wheel_into_sight(QWidget& target) {
  constexpr int longest_way = 200;
  for (int turn = 0; turn < longest_way && !in_sight(target); ++turn) {
    auto* area = above<QScrollArea>(&target);
    if (area == nullptr) {
      return;
    }
    const int y = target.mapTo(area->viewport(), target.rect().center()).y();
    wheel(*area, y > area->viewport()->height() / 2 ? -1 : 1);
    settle_toolkit();
  }
}

/// Of the page's foot.
widgets::Button* main_button(const QWidget& page) {
  for (auto* each : page.findChildren<widgets::Button*>()) {
    if (each->isVisible() && each->isEnabled() && each->kind() == widgets::Button::Kind::main &&
        each->parentWidget()->property("part") == QLatin1String("bar-below")) {
      return each;
    }
  }
  return nullptr;
}

}  // namespace

void MouseTechnician::click_at(QWidget& target) {
  wheel_into_sight(target);
  INFO("at step " << step_id() << ", click on " << target.objectName().toStdString());
  REQUIRE(in_sight(target));
  QTest::mouseClick(window().windowHandle(), Qt::LeftButton, {}, target.mapTo(&window(), target.rect().center()));
  settle_toolkit();
}

void MouseTechnician::click(const QString& name) {
  const auto all = window().findChildren<QWidget*>(name);
  const auto found =
      std::find_if(all.begin(), all.end(), [](const QWidget* each) { return each->isVisible() && each->isEnabled(); });
  INFO("at step " << step_id() << ", looked for " << name.toStdString());
  REQUIRE(found != all.end());
  click_at(**found);
}

void MouseTechnician::main_key() {
  auto* button = main_button(*page());
  INFO("at step " << step_id());
  REQUIRE(button != nullptr);
  click_at(*button);
}

void MouseTechnician::digit(int /*number*/, const QString& button) {
  click(button);
}

void MouseTechnician::pick_shim(const std::string& text) {
  click(qt("shim-" + text));
}

void MouseTechnician::open_keypad() {
  if (!shows(QStringLiteral("button-keypad-enter"))) {
    click(QStringLiteral("button-more"));
    click(QStringLiteral("button-pick-keypad"));
  }
}

bool MouseTechnician::keypad_takes(const QWidget* field, const std::string& text) const {
  return page() != nullptr && page()->isVisible() &&
         qobject_cast<const widgets::NumberField*>(field->parentWidget()) != nullptr &&
         text.find_first_not_of("0123456789.,") == std::string::npos;
}

void MouseTechnician::enter() {
  if (shows(QStringLiteral("button-keypad-enter"))) {
    click(QStringLiteral("button-keypad-enter"));
  } else {
    key(Qt::Key_Return);
  }
}

void MouseTechnician::empty_field() {
  for (auto* edit = qobject_cast<QLineEdit*>(QApplication::focusWidget());
       edit != nullptr && !edit->text().isEmpty() && edit == QApplication::focusWidget();) {
    const auto length = edit->text().size();
    click(QStringLiteral("button-keypad-delete"));
    REQUIRE(edit->text().size() < length);
  }
}

void MouseTechnician::type_number(const std::string& text) {
  empty_field();
  for (const char each : text) {
    const bool mark = each == '.' || each == ',';
    click(mark ? QStringLiteral("button-keypad-comma") : QStringLiteral("button-keypad-") + QLatin1Char(each));
  }
}

void MouseTechnician::fill(const QString& name, const std::string& text) {
  const auto* field = window().findChild<QLineEdit*>(name);
  const QString sign = QString(name).replace(QStringLiteral("field-"), QStringLiteral("button-"));
  if (field != nullptr && shows(sign + QStringLiteral("-minus"))) {
    const bool minus = text.front() == '-' || text.rfind("\u2212", 0) == 0;
    open_keypad();
    click(name);
    type_number(text.substr(text.find_first_of("0123456789")));
    click(sign + (minus ? QStringLiteral("-minus") : QStringLiteral("-plus")));
  } else if (field != nullptr && keypad_takes(field, text)) {
    open_keypad();
    click(name);
    type_number(text);
  } else {
    click(name);
    key(Qt::Key_A, Qt::ControlModifier);
    text.empty() ? key(Qt::Key_Delete) : type(text);
  }
}

}  // namespace shimwright::test
