#include "cut_texts.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <algorithm>

namespace shimwright::test {

namespace {

/// A rounding of the layout is none.
constexpr int slack = 1;

bool holds(const QLabel& label) {
  if (label.text().isEmpty()) {
    return true;
  }
  if (!label.wordWrap()) {
    return label.sizeHint().width() <= label.width() + slack;
  }
  const QFontMetrics type(label.font());
  const QStringList words =
      label.textFormat() == Qt::PlainText ? label.text().split(QRegularExpression("\\s")) : QStringList();
  return label.heightForWidth(label.width()) <= label.height() + slack &&
         std::all_of(words.begin(), words.end(), [&](const QString& word) {
           return type.horizontalAdvance(word) <= label.contentsRect().width() + slack;
         });
}

bool holds(const QLineEdit& line) {
  constexpr int margins = 24;
  return QFontMetrics(line.font()).horizontalAdvance(line.placeholderText()) <= line.width() - margins;
}

bool holds_its_text(const QWidget& widget) {
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
    return holds(*label);
  }
  if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
    return holds(*line);
  }
  const bool button = qobject_cast<const QAbstractButton*>(&widget) != nullptr;
  return !button || widget.sizeHint().width() <= widget.width() + slack;
}

/// What scrolls up and down only shows nothing of what is wider than it.
bool sticks_out(const QWidget& widget) {
  const QWidget* above = widget.parentWidget();
  if (above == nullptr || widget.isWindow()) {
    return false;
  }
  const auto* area = qobject_cast<const QAbstractScrollArea*>(above->parentWidget());
  const bool scrolls =
      area != nullptr && area->viewport() == above && area->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff;
  return !scrolls && (widget.x() < -slack || widget.x() + widget.width() > above->width() + slack);
}

QString named(const QWidget& widget, const QString& fault) {
  const auto* label = qobject_cast<const QLabel*>(&widget);
  const auto* button = qobject_cast<const QAbstractButton*>(&widget);
  const auto* line = qobject_cast<const QLineEdit*>(&widget);
  const QString text = label != nullptr    ? label->text()
                       : button != nullptr ? button->text()
                       : line != nullptr   ? line->placeholderText()
                                           : QString();
  return QStringLiteral("%1 %2 “%3” %4, %5 wide")
      .arg(QLatin1String(widget.metaObject()->className()), widget.objectName(), text, fault)
      .arg(widget.width());
}

}  // namespace

QStringList cut_texts(const QWidget& window) {
  QStringList faults;
  for (const QWidget* each : window.findChildren<QWidget*>()) {
    if (!each->isVisible()) {
      continue;
    }
    if (!holds_its_text(*each)) {
      faults << named(*each, QStringLiteral("is cut"));
    }
    if (sticks_out(*each)) {
      faults << named(*each, QStringLiteral("sticks out"));
    }
  }
  return faults;
}

}  // namespace shimwright::test
