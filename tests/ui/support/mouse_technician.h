#pragma once

#include <string>

#include <QString>

#include "key_technician.h"

namespace shimwright::test {

/// The same with the mouse: buttons and rows are clicked where they lie, numbers are entered on the keypad for gloves,
/// what lies outside is wheeled into sight first. Only words are typed.
class MouseTechnician : public KeyTechnician {
 public:
  using KeyTechnician::KeyTechnician;

  void tab_to(const QString& name) override { click(name); }
  void tab_and_press(const QString& name) override { click(name); }
  void fill(const QString& name, const std::string& text) override;
  void call_persons() override { click(QStringLiteral("button-person")); }

 private:
  void main_key() override;
  void enter() override;
  void digit(int number, const QString& button) override;
  void type_number(const std::string& text) override;
  void pick_shim(const std::string& text) override;

  void click(const QString& name);
  void click_at(QWidget& target);
  [[nodiscard]] bool keypad_takes(const QWidget* field, const std::string& text) const;
  void open_keypad();
  void empty_field();
};

}  // namespace shimwright::test
