#pragma once

#include "form_card.h"
#include "pin_card.h"
#include "shimwright/store/signing.h"
#include "shimwright/store/types.h"

namespace shimwright::workshop {

using store::SigningState;

/// One person: name, initials, role, and the day they left. Who leaves keeps records and key.
class PersonForm : public FormCard {
  Q_OBJECT

 public:
  /// A person of the list, or one still to be entered: then it has an id and nothing else.
  PersonForm(const store::Person& person, SigningState signing, bool is_new, QWidget* parent = nullptr);
  /// As the fields have it.
  [[nodiscard]] store::Person person() const;
  [[nodiscard]] bool has_unsent() const override { return person() != before_; }

 signals:
  void feel_test_wanted();
  void pin_act_wanted(shimwright::workshop::PinAct act);

 private:
  void choose_role(store::PersonRole role);
  void build_feel(bool is_new);
  void build_pin(SigningState signing);

  store::Person before_;
  widgets::WordField* name_;
  widgets::WordField* initials_;
  widgets::Button* technician_ = nullptr;
  widgets::Button* checker_ = nullptr;
  widgets::WordField* left_on_ = nullptr;
};

/// `technician · signs with a PIN · left 30 Nov 2026`.
[[nodiscard]] QString person_words(const store::Person& person, SigningState signing);
[[nodiscard]] QString role_words(store::PersonRole role);

}  // namespace shimwright::workshop
