#pragma once

#include <QFrame>

#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// Where a job stands that was just taken in hand, and what it waits for while it is parked: words, and a button beside
/// them.
class StandBox : public QFrame {
  Q_OBJECT

 public:
  explicit StandBox(QWidget* parent);
  void show_words(const QString& heading, const QString& text);
  /// `main`: nothing else can be done before.
  void show_button(const QString& name, const QString& text, bool main);
  void hide_button();

 signals:
  void pressed();

 private:
  widgets::Text* heading_;
  widgets::Text* text_;
  widgets::Button* plain_;
  widgets::Button* main_;
};

}  // namespace shimwright::bench
