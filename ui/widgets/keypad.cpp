#include "shimwright/widgets/keypad.h"

#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <vector>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/style.h"

namespace shimwright::widgets {

namespace {

constexpr int keypad_key = 64;
constexpr int least_key_height = pixels::target;  // on a low screen

/// Takes the last digit away: an arrow, for the type has none.
class DeleteKey final : public Button {
 public:
  explicit DeleteKey(QWidget* parent) : Button(QString(), Kind::answer, parent) {}

 protected:
  void paintEvent(QPaintEvent* event) override {
    Button::paintEvent(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QPointF middle = QRectF(rect()).center();
    painter.setPen(QPen(colours_of(*this).text, 2.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawLine(middle - QPointF(13, 0), middle + QPointF(13, 0));
    painter.drawPolyline(QPolygonF({middle + QPointF(-6, -7), middle - QPointF(13, 0), middle + QPointF(-6, 7)}));
  }
};

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
  keys.push_back({0, 3, 1, Qt::Key_Backspace, QString(), QString(), "delete"});
  keys.push_back({1, 3, 1, Qt::Key_Minus, QStringLiteral("-"), QString(QChar(0x2212)), "minus"});
  keys.push_back({2, 3, 1, Qt::Key_Comma, QStringLiteral(","), QStringLiteral(","), "comma"});
  keys.push_back({3, 0, 2, Qt::Key_0, QStringLiteral("0"), QStringLiteral("0"), nullptr});
  keys.push_back({3, 2, 2, Qt::Key_Return, QStringLiteral("\r"), Keypad::tr("Enter"), "enter"});
  return keys;
}

}  // namespace

Keypad::Keypad(QWidget* parent) : QWidget(parent) {
  auto* grid = lay<QGridLayout>(this, 6);
  grid->setContentsMargins(10, 10, 10, 10);
  for (const PadKey& each : keys_of_the_pad()) {
    Button* button = each.key == Qt::Key_Backspace ? child_of<DeleteKey>(this)
                                                   : child_of<Button>(this, each.shown, Button::Kind::answer);
    button->setFocusPolicy(Qt::NoFocus);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    button->setMinimumSize(keypad_key, least_key_height);
    button->setMaximumHeight(keypad_key);
    button->setAutoRepeat(each.key == Qt::Key_Backspace);
    const QString name = each.name == nullptr ? each.shown : QString::fromLatin1(each.name);
    button->setObjectName(QStringLiteral("button-keypad-") + name);
    if (each.key == Qt::Key_Minus) {
      button->setAccessibleName(tr("minus"));
    } else if (each.key == Qt::Key_Comma) {
      button->setAccessibleName(tr("decimal comma"));
    } else if (each.key == Qt::Key_Backspace) {
      button->setAccessibleName(tr("delete"));
    }
    grid->addWidget(button, each.row, each.column, 1, each.span);
    connect(button, &Button::clicked, this, [this, key = each.key, sends = each.sends] { send(key, sends); });
  }
  setAccessibleName(tr("Keypad"));
}

void Keypad::send(int key, const QString& text) {
  // Enter may move the focus or take the field away; the release goes where the focus is then, as a real key's does.
  for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
    auto* edit = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    if (edit != nullptr) {
      QKeyEvent event(type, key, Qt::NoModifier, text);
      QCoreApplication::sendEvent(edit, &event);
    }
  }
}

}  // namespace shimwright::widgets
