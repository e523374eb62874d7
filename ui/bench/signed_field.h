#pragma once

#include <optional>
#include <string>

#include <QWidget>

#include "shimwright/widgets/number_field.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// A number whose sign is chosen by a button or typed; neither is chosen to begin with. Zero needs no sign.
class SignedField : public QWidget {
  Q_OBJECT

 public:
  explicit SignedField(const QString& title, QWidget* parent = nullptr);

  /// `-0.12`, `0.00`; blank while the sign of a value other than zero is not chosen.
  [[nodiscard]] std::string text() const;
  [[nodiscard]] bool blank() const { return number_->blank(); }
  /// Sign and digits as text() gives them.
  void set_text(const std::string& text);
  void set_number(const quantity::TypedNumber& number);
  void set_hint(const QString& hint) { number_->set_hint(hint); }
  void set_fault(const QString& sentence) { number_->set_fault(sentence); }
  void take_focus() { number_->take_focus(); }
  [[nodiscard]] widgets::NumberField* number() const { return number_; }
  /// Of the line edit and the buttons, for tests: `field-<name>`, `button-<name>-minus`.
  void name(const QString& name);

 signals:
  void edited();
  void entered();  ///< Enter, with a number that has its sign

 private:
  enum class Sign { none, minus, plus };

  void press(Sign sign);
  void choose(Sign sign);
  void take_typed_sign();
  void check();
  [[nodiscard]] bool sign_missing() const;

  Sign sign_ = Sign::none;
  widgets::Button* minus_ = nullptr;
  widgets::Button* plus_ = nullptr;
  widgets::NumberField* number_ = nullptr;
};

}  // namespace shimwright::bench
