#pragma once

#include <string>

#include "form_card.h"
#include "shimwright/record/signing_key.h"

namespace shimwright::workshop {

/// What happens to the key that a person signs with.
enum class PinAct {
  first,      ///< no key yet
  change,     ///< the same key under another PIN
  forgotten,  ///< a new key; the old one signs nothing any more
  end         ///< what the key signs from a day on does not hold
};

/// The fields of one such act. What was typed as a PIN is wiped once it was taken.
class PinCard : public FormCard {
  Q_OBJECT

 public:
  PinCard(PinAct act, const QString& person, const QString& today, QWidget* parent = nullptr);

  [[nodiscard]] PinAct act() const { return act_; }
  /// Whether both fields of the new PIN hold the same; says so where they do not, and wipes them.
  [[nodiscard]] bool new_pin_agrees();
  [[nodiscard]] record::Pin take_old();
  [[nodiscard]] record::Pin take_new();
  [[nodiscard]] std::string day() const;
  /// A half-typed PIN is no loss, and is not to stand where somebody passes by.
  [[nodiscard]] bool has_unsent() const override { return false; }

 private:
  widgets::WordField* add_pin(const QString& title, const QString& name);
  [[nodiscard]] static record::Pin take(widgets::WordField& field);

  PinAct act_;
  widgets::WordField* old_ = nullptr;
  widgets::WordField* new_ = nullptr;
  widgets::WordField* again_ = nullptr;
  widgets::WordField* day_ = nullptr;
};

}  // namespace shimwright::workshop
