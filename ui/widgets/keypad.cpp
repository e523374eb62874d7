#include "shimwright/widgets/keypad.h"

#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPointer>
#include <vector>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::widgets {

namespace {

constexpr int keypad_key = 64;

struct PadKey {
  int row = 0;
  int column = 0;
  int span = 1;
  int key = 0;
  QString sends;
  QString shown;
  const char* name = nullptr;
};

std::vector<PadKey> keys_of_the_pad() {
  std::vector<PadKey> keys;
  const std::vector<const char*> rows{"789", "456", "123"};
  int row = 0;
  for (const char* digits : rows) {
    for (int column = 0; column < 3; ++column) {
      const QString digit = QChar::fromLatin1(digits[column]);
      keys.push_back({row, column, 1, Qt::Key_0 + digit.toInt(), digit, digit, nullptr});
    }
    ++row;
  }
  keys.push_back({3, 0, 1, Qt::Key_0, QStringLiteral("0"), QStringLiteral("0"), nullptr});
  keys.push_back({3, 1, 1, Qt::Key_Comma, QStringLiteral(","), QStringLiteral(","), "comma"});
  keys.push_back({3, 2, 1, Qt::Key_Minus, QStringLiteral("-"), QString(QChar(0x2212)), "minus"});
  keys.push_back({4, 0, 1, Qt::Key_Backspace, QString(), Keypad::tr("back"), "back"});
  keys.push_back({4, 1, 2, Qt::Key_Return, QStringLiteral("\r"), Keypad::tr("Enter"), "enter"});
  return keys;
}

}  // namespace

Keypad::Keypad(QWidget* parent) : QWidget(parent) {
  auto* grid = lay<QGridLayout>(this, 8);
  for (const PadKey& each : keys_of_the_pad()) {
    auto* button = child_of<Button>(this, each.shown, Button::Kind::answer);
    button->setFocusPolicy(Qt::NoFocus);
    button->setMinimumSize(each.key == Qt::Key_Backspace ? 96 : keypad_key, keypad_key);
    button->setMaximumHeight(keypad_key);
    button->setAutoRepeat(each.key == Qt::Key_Backspace);
    const QString name = each.name == nullptr ? each.shown : QString::fromLatin1(each.name);
    button->setObjectName(QStringLiteral("button-keypad-") + name);
    if (each.key == Qt::Key_Minus) {
      button->setAccessibleName(tr("minus"));
    } else if (each.key == Qt::Key_Comma) {
      button->setAccessibleName(tr("decimal comma"));
    }
    grid->addWidget(button, each.row, each.column, 1, each.span);
    connect(button, &Button::clicked, this, [this, key = each.key, sends = each.sends] { send(key, sends); });
  }
  setAccessibleName(tr("Keypad"));
}

void Keypad::send(int key, const QString& text) {
  // Enter may take the field away, so it is looked for again before the release.
  const QPointer<QLineEdit> edit = qobject_cast<QLineEdit*>(QApplication::focusWidget());
  for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
    if (!edit.isNull()) {
      QKeyEvent event(type, key, Qt::NoModifier, text);
      QCoreApplication::sendEvent(edit, &event);
    }
  }
}

}  // namespace shimwright::widgets
