#pragma once

#include <QWidget>

namespace shimwright::widgets {

/// Large keys for a hand in a glove. They take no focus: what they send goes to the line edit that has it, as if typed.
class Keypad : public QWidget {
  Q_OBJECT

 public:
  explicit Keypad(QWidget* parent = nullptr);

 private:
  void send(int key, const QString& text);
};

}  // namespace shimwright::widgets
