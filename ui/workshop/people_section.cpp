#include "people_section.h"

#include <QLineEdit>
#include <memory>
#include <optional>
#include <utility>

#include "register_row.h"
#include "shimwright/job/context.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/signing.h"
#include "shimwright/widgets/background_work.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "widgets_away.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::qt;

namespace {

/// On its way from the fields to the store.
struct TypedPinChange {
  PinAct act;
  std::optional<record::Pin> old_pin;
  record::Pin new_pin;
};

Result<void> changed_pin(store::Store& store, const std::string& person, const TypedPinChange& typed,
                         const store::By& by, const store::SigningRules& rules) {
  if (const auto& old_pin = typed.old_pin; old_pin) {
    return store::change_pin(store, person, *old_pin, typed.new_pin, by, rules);
  }
  return typed.act == PinAct::first ? store::set_pin(store, person, typed.new_pin, by, rules)
                                    : store::forget_pin(store, person, typed.new_pin, by, rules);
}

}  // namespace

PeopleSection::PeopleSection(store::Store& store, WorkshopWays ways, QWidget* parent)
    : QWidget(parent),
      store_(&store),
      ways_(std::move(ways)),
      list_(nullptr),
      place_(nullptr),
      told_(nullptr),
      add_(nullptr),
      work_(child_of<widgets::BackgroundWork>(this)) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(child_of<widgets::Text>(this, tr("People"), "heading"));
  told_ = child_of<widgets::Text>(this, QString(), "strong");
  told_->setObjectName(QStringLiteral("people-told"));
  told_->hide();
  column->addWidget(told_);
  place_ = widgets::lay_in<QVBoxLayout>(column, 12);
  list_ = child_of<QWidget>(this);
  static_cast<void>(widgets::lay<QVBoxLayout>(list_, 8));
  column->addWidget(list_);
  add_ = child_of<widgets::Button>(this, tr("Enter a person"));
  add_->setObjectName(QStringLiteral("button-add-person"));
  add_->setEnabled(!store_->looks_only());
  column->addWidget(add_, 0, Qt::AlignLeft);
  connect(add_, &QPushButton::clicked, this, [this] {
    store::Person person;
    person.id = ids_.id(ways_.clock().at_ms);
    open(person, true);
  });
}

bool PeopleSection::has_unsent() const {
  return card_ != nullptr && card_->has_unsent();
}

void PeopleSection::refresh() {
  if (!has_unsent() && !work_->runs()) {
    close();
  }
  show_list();
}

void PeopleSection::show_list() {
  empty_column(*list_);
  const auto persons = store_->registers().persons();
  if (!persons) {
    list_->layout()->addWidget(child_of<widgets::Text>(list_, widgets::say(persons.error()), "error"));
    return;
  }
  auto keys = store::signing_keys(*store_);
  if (!keys) {
    list_->layout()->addWidget(child_of<widgets::Text>(list_, widgets::say(keys.error()), "error"));
    return;
  }
  keys_ = std::move(*keys);
  for (const bool active : {true, false}) {
    for (const store::Person& each : *persons) {
      if (each.active == active) {
        auto* row = child_of<RegisterRow>(list_, QStringLiteral("%1  %2").arg(qt(each.initials), qt(each.name)),
                                          person_words(each, signing_of(each.id)));
        row->setObjectName(QStringLiteral("row-") + qt(each.initials));
        row->setEnabled(!store_->looks_only());
        list_->layout()->addWidget(row);
        connect(row, &RegisterRow::clicked, this, [this, each] { open(each, false); });
      }
    }
  }
}

SigningState PeopleSection::signing_of(const std::string& person) const {
  return store::signing_state(keys_, person, job::iso_day_of(ways_.clock()));
}

void PeopleSection::open(const store::Person& person, bool is_new) {
  if (has_unsent()) {
    card_->tell(tr("Keep this first, or leave it as it was."));
    return;
  }
  close();
  auto* form = child_of<PersonForm>(this, person, signing_of(person.id), is_new);
  put_up(*form, QStringLiteral("form-person"));
  connect(form, &FormCard::keep_wanted, this, [this, form] {
    if (put(form->person(), *form)) {
      close(tr("Kept."));
      show_list();
    }
  });
  connect(form, &PersonForm::pin_act_wanted, this, [this, person](PinAct act) { ask_pin(person, act); });
  connect(form, &PersonForm::feel_test_wanted, this, [this, person] { test_feel(person); });
  form->findChild<QLineEdit*>()->setFocus(Qt::OtherFocusReason);
  show_form(*form);
}

void PeopleSection::put_up(FormCard& card, const QString& name) {
  card_ = &card;
  card.setObjectName(name);
  place_->addWidget(&card);
  connect(&card, &FormCard::leave_wanted, this, [this] { close(); });
  card.show();
}

void PeopleSection::ask_pin(const store::Person& person, PinAct act) {
  if (has_unsent()) {
    card_->tell(tr("Keep this first, or leave it as it was."));
    return;
  }
  close();
  auto* pin = child_of<PinCard>(this, act, qt(person.name), qt(job::iso_day_of(ways_.clock())));
  put_up(*pin, QStringLiteral("form-pin"));
  connect(pin, &FormCard::keep_wanted, this, [this, person, pin] { keep_pin(person, *pin); });
  pin->findChild<QLineEdit*>()->setFocus(Qt::OtherFocusReason);
  show_form(*pin);
}

void PeopleSection::keep_pin(const store::Person& person, PinCard& pin) {
  if (pin.act() == PinAct::end) {
    end_key(person, pin);
  } else if (!work_->runs() && pin.new_pin_agrees()) {
    begin_pin_work(person, pin);
  }
}

void PeopleSection::end_key(const store::Person& person, PinCard& pin) {
  if (const auto done = store::end_keys(*store_, person.id, pin.day(), by_now(ways_)); !done) {
    pin.tell(done.error());
    return;
  }
  close(tr("The key of %1 is ended.").arg(qt(person.name)));
  show_list();
}

void PeopleSection::begin_pin_work(const store::Person& person, PinCard& pin) {
  const auto typed = std::make_shared<TypedPinChange>(TypedPinChange{
      pin.act(), pin.act() == PinAct::change ? std::optional(pin.take_old()) : std::nullopt, pin.take_new()});
  show_work(pin, true);
  work_->begin([this, &pin, person, typed, by = by_now(ways_), rules = ways_.signing,
                path = store_->path()](const store::BackupWatch& /*watch*/) {
    const auto store = store::Store::open_beside(path);
    const auto done =
        store ? changed_pin(**store, person.id, *typed, by, rules) : Result<void>(tl::make_unexpected(store.error()));
    return [this, &pin, person, done] {
      show_work(pin, false);
      if (!done) {
        pin.tell(done.error());
        return;
      }
      close(tr("Kept: %1 signs with the new PIN from now on.").arg(qt(person.name)));
      show_list();
    };
  });
}

void PeopleSection::show_work(PinCard& pin, bool runs) {
  if (runs) {
    setFocus(Qt::OtherFocusReason);  // an Enter that comes late presses nothing
  }
  pin.setEnabled(!runs);
  list_->setEnabled(!runs);
  add_->setEnabled(!runs);
  told_->setText(runs ? tr("The PIN is being kept: this takes a moment.") : QString());
  told_->setVisible(runs);
}

void PeopleSection::test_feel(const store::Person& person) {
  if (has_unsent()) {
    card_->tell(tr("Keep this first, or leave it as it was."));
    return;
  }
  close();
  auto* test =
      child_of<RepeatCard>(this, RepeatCard::Of::feel, tr("Feel of %1 with the gauge").arg(qt(person.name)),
                           tr("Seat and load one bearing and leave it so. Offer shims in any order, eyes away from "
                              "their marks, and find the "
                              "thickest that still lets the gauge in. Enter its thickness; begin anew, ten times. "),
                           quantity::Unit::millimetre);
  put_up(*test, QStringLiteral("feel-test"));
  connect(test, &RepeatCard::found, this, [this, person, test](qint64 feel_nm) {
    store::Person tested = person;
    tested.feel_nm = feel_nm;
    tested.feel_on = job::iso_day_of(ways_.clock());
    if (put(tested, *test)) {
      close(tr("Kept: trials by %1 are reckoned with this feel from now on.").arg(qt(person.name)));
      show_list();
    }
  });
  test->take_focus();
  show_form(*test);
}

bool PeopleSection::put(const store::Person& person, FormCard& form) {
  if (const auto put = store_->registers().put(person, by_now(ways_)); !put) {
    form.tell(put.error());
    return false;
  }
  emit changed();
  return true;
}

void PeopleSection::close(const QString& told) {
  FormCard* const before = std::exchange(card_, nullptr);
  if (before != nullptr) {
    before->hide();
    before->deleteLater();
  }
  told_->setText(told);
  told_->setVisible(!told.isEmpty());
  if (before != nullptr && isVisible()) {
    add_->setFocus(Qt::OtherFocusReason);
  }
}

}  // namespace shimwright::workshop
