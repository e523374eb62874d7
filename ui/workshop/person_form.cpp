#include "person_form.h"

#include <QCoreApplication>
#include <QLineEdit>

#include "days_words.h"
#include "repeat_card.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::workshop {

using widgets::child_of;

QString role_words(store::PersonRole role) {
  return role == store::PersonRole::checker ? PersonForm::tr("checker") : PersonForm::tr("technician");
}

namespace {

QString signing_words(SigningState signing) {
  switch (signing) {
    case SigningState::signs:
      return PersonForm::tr("signs with a PIN");
    case SigningState::key_ended:
      return PersonForm::tr("key ended");
    case SigningState::no_key:
      break;
  }
  return PersonForm::tr("no PIN yet");
}

}  // namespace

QString person_words(const store::Person& person, SigningState signing) {
  QStringList words{role_words(person.role), signing_words(signing)};
  if (person.feel_nm) {
    words << PersonForm::tr("feel %1").arg(deviation_words(*person.feel_nm, quantity::Unit::millimetre));
  }
  if (!person.active) {
    words << (person.left_on ? PersonForm::tr("left %1").arg(day_words(*person.left_on))
                             : PersonForm::tr("no longer here"));
  }
  return words.join(QStringLiteral(" · "));
}

PersonForm::PersonForm(const store::Person& person, SigningState signing, bool is_new, QWidget* parent)
    : FormCard(is_new ? tr("A person more") : widgets::qt(person.name), tr("Keep"), parent),
      before_(person),
      name_(nullptr),
      initials_(nullptr) {
  auto* pair = widgets::lay_in<QHBoxLayout>(body(), 12);
  name_ = add_word(tr("Name"), QStringLiteral("name"), pair);
  initials_ = add_word(tr("Initials"), QStringLiteral("initials"), pair);
  pair->setStretch(0, 3);
  pair->setStretch(1, 1);
  name_->set_text(person.name);
  initials_->set_text(person.initials);
  body()->addWidget(child_of<widgets::Text>(this, tr("Role"), "small"));
  auto* roles = widgets::lay_in<QHBoxLayout>(body(), 10);
  technician_ = child_of<widgets::Button>(this, tr("Technician"));
  checker_ = child_of<widgets::Button>(this, tr("Checker"));
  technician_->setObjectName(QStringLiteral("button-technician"));
  checker_->setObjectName(QStringLiteral("button-checker"));
  for (widgets::Button* each : {technician_, checker_}) {
    each->setCheckable(true);
    roles->addWidget(each);
  }
  roles->addStretch();
  connect(technician_, &QPushButton::clicked, this, [this] { choose_role(store::PersonRole::technician); });
  connect(checker_, &QPushButton::clicked, this, [this] { choose_role(store::PersonRole::checker); });
  choose_role(person.role);
  if (!is_new) {
    left_on_ = add_word(tr("Left on (year-month-day); blank: at work here"), QStringLiteral("left_on"));
    left_on_->set_text(person.left_on.value_or(std::string()));
    if (!person.active && !person.left_on) {
      body()->addWidget(child_of<widgets::Text>(
          this, tr("No longer here; the day is not known. Keeping this with a blank day puts the person back at work."),
          "soft"));
    }
  }
  build_feel(is_new);
  if (!is_new) {
    build_pin(signing);
  }
  finish();
}

void PersonForm::build_pin(SigningState signing) {
  auto* row = widgets::lay_in<widgets::TurningRow>(body(), 10);
  const auto add = [&](const QString& text, const char* name, PinAct act) {
    auto* button = child_of<widgets::Button>(this, text);
    button->setObjectName(QLatin1String(name));
    row->addWidget(button);
    connect(button, &QPushButton::clicked, this, [this, act] { emit pin_act_wanted(act); });
  };
  switch (signing) {
    case SigningState::no_key:
      add(tr("Give a PIN"), "button-first-pin", PinAct::first);
      break;
    case SigningState::signs:
      add(tr("Change the PIN"), "button-change-pin", PinAct::change);
      add(tr("PIN forgotten"), "button-forgotten-pin", PinAct::forgotten);
      add(tr("End the key"), "button-end-key", PinAct::end);
      break;
    case SigningState::key_ended:
      add(tr("Make a new key"), "button-forgotten-pin", PinAct::forgotten);
      break;
  }
  row->addStretch(1);
}

void PersonForm::build_feel(bool is_new) {
  const QString known = before_.feel_nm ? tr("Feel with the gauge: %1, tested %2")
                                              .arg(deviation_words(*before_.feel_nm, quantity::Unit::millimetre),
                                                   day_words(before_.feel_on.value_or(std::string())))
                                        : tr("Feel with the gauge: not tested; the spec sheet's stands for it.");
  body()->addWidget(child_of<widgets::Text>(this, known));
  if (!is_new) {
    auto* test = child_of<widgets::Button>(this, tr("Test the feel"));
    test->setObjectName(QStringLiteral("button-feel-test"));
    body()->addWidget(test, 0, Qt::AlignLeft);
    connect(test, &QPushButton::clicked, this, &PersonForm::feel_test_wanted);
  }
}

void PersonForm::choose_role(store::PersonRole role) {
  technician_->setChecked(role == store::PersonRole::technician);
  checker_->setChecked(role == store::PersonRole::checker);
}

store::Person PersonForm::person() const {
  store::Person person = before_;
  person.name = name_->text();
  person.initials = initials_->text();
  person.role = checker_->isChecked() ? store::PersonRole::checker : store::PersonRole::technician;
  if (left_on_ != nullptr) {
    const std::string day = left_on_->text();
    person.left_on = day.empty() ? std::nullopt : std::optional(day);
    person.active = day.empty();
  }
  return person;
}

}  // namespace shimwright::workshop
