#pragma once

#include <QCoreApplication>
#include <QLabel>
#include <QWidget>

namespace shimwright::test {

/// What the labels of a widget show, one to a line, once what was thrown away is gone.
inline QString shown_in(const QWidget& widget) {
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  QString all;
  for (const QLabel* each : widget.findChildren<QLabel*>()) {
    all += each->text() + QLatin1Char('\n');
  }
  return all.replace(QChar(0x00A0), QLatin1Char(' '));
}

}  // namespace shimwright::test
