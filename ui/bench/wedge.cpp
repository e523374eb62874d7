#include "wedge.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPointer>
#include <QWidget>
#include <utility>

#include "shimwright/widgets/say.h"

namespace shimwright::bench {

namespace {

constexpr int hand_pause_ms = 80;

bool takes_text(const QWidget* widget) {
  return qobject_cast<const QLineEdit*>(widget) != nullptr || qobject_cast<const QPlainTextEdit*>(widget) != nullptr;
}

bool of_a_value(const QString& text) {
  return text.size() == 1 && (text[0].isLetterOrNumber() || QStringLiteral(".,-+").contains(text[0]));
}

}  // namespace

Wedge::Wedge(After after, QWidget* watched) : QObject(watched), watched_(watched), after_(std::move(after)) {
  qApp->installEventFilter(this);
}

bool Wedge::is_ours(QObject* object) const {
  const auto* widget = qobject_cast<QWidget*>(object);
  return widget != nullptr && watched_->isVisible() && (widget == watched_ || watched_->isAncestorOf(widget)) &&
         !takes_text(widget);
}

bool Wedge::eventFilter(QObject* object, QEvent* event) {
  if (event->type() == QEvent::KeyPress && is_ours(object)) {
    if (take(*static_cast<QKeyEvent*>(event))) {
      return true;
    }
  }
  return QObject::eventFilter(object, event);
}

bool Wedge::take(const QKeyEvent& key) {
  const bool plain_key = (key.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) == Qt::NoModifier;
  if (!plain_key || key.isAutoRepeat()) {
    return false;
  }
  if (key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter) {
    const QString keys = std::exchange(keys_, {});
    ++generation_;
    if (keys.isEmpty()) {
      return false;
    }
    emit burst(widgets::plain(keys));
    return true;
  }
  if (!of_a_value(key.text())) {
    keys_.clear();
    return false;
  }
  keys_ += key.text();
  const int generation = ++generation_;
  after_(hand_pause_ms, [self = QPointer<Wedge>(this), generation] {
    if (self != nullptr) {
      self->expire(generation);
    }
  });
  return true;
}

void Wedge::expire(int generation) {
  if (generation != generation_) {
    return;
  }
  const QString keys = std::exchange(keys_, {});
  if (keys.size() == 1 && keys[0] >= QLatin1Char('1') && keys[0] <= QLatin1Char('9')) {
    emit digit(keys[0].digitValue());
  }
}

}  // namespace shimwright::bench
