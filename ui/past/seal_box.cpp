#include "seal_box.h"

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <utility>

#include "shimwright/job/to_decide.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/background_work.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/sheet_text.h"
#include "shimwright/widgets/style.h"

namespace shimwright::past {

using widgets::Button;
using widgets::child_of;
using widgets::Text;
using widgets::WordField;

namespace {

constexpr int least_pin_width = 260;  // its title in one line
constexpr int pin_width = 340;

record::Pin pin_in(const WordField& field) {
  std::string typed = field.text();
  return record::Pin::taken_from(typed);
}

WordField* hidden_field(QWidget* parent, const QString& title, const QString& name) {
  auto* field = child_of<WordField>(parent, title);
  field->edit()->setEchoMode(QLineEdit::Password);
  field->edit()->setInputMethodHints(Qt::ImhDigitsOnly | Qt::ImhSensitiveData | Qt::ImhNoPredictiveText);
  field->edit()->setObjectName(name);
  field->setMinimumWidth(least_pin_width);
  field->setMaximumWidth(pin_width);
  return field;
}

}  // namespace

SealBox::SealBox(store::Store& store, SealWays ways, QWidget* parent)
    : QFrame(parent),
      store_(&store),
      ways_(std::move(ways)),
      outer_(widgets::lay<QVBoxLayout>(this, 8)),
      said_(child_of<Text>(this, QString())),
      signing_(child_of<widgets::BackgroundWork>(this)),
      checking_(child_of<widgets::BackgroundWork>(this)) {
  widgets::set_part(this, "question");
  outer_->setContentsMargins(18, 12, 18, 12);
  outer_->addWidget(said_);
  said_->setObjectName(QStringLiteral("seal-said"));
  said_->hide();
  hide();
}

void SealBox::show_job(const std::string& job) {
  if (job != job_) {
    said_->hide();
  }
  job_ = job;
  begin();
  const auto loaded = store::JobInHand::load(*store_, job);
  if (!loaded || !loaded->state().closed) {
    hide();  // what cannot be read the record says; a job under way is a draft
    return;
  }
  build(loaded->state());
  outer_->insertWidget(0, content_);
  content_->show();
  show();
  if (signing_->runs()) {
    show_signing(true);
  }
}

void SealBox::begin() {
  checking_->drop();
  state_ = nullptr;
  if (content_ != nullptr) {
    content_->hide();
    content_->deleteLater();
  }
  pins_.clear();
  reason_ = nullptr;
  text_ = nullptr;
  content_ = child_of<QWidget>(this);
  content_->hide();
  column_ = widgets::lay<QVBoxLayout>(content_, 8);
}

void SealBox::build(const job::JobState& state) {
  if (state.sealed) {
    build_sealed();
    return;
  }
  std::vector<QString> in_the_way;
  for (const job::OpenPoint& point : job::to_decide(state)) {
    if (job::keeps_from_sealing(point)) {
      in_the_way.push_back(widgets::say(point.message, state.sheets));
    }
  }
  if (!in_the_way.empty()) {
    build_points(in_the_way);
  } else if (!store_->looks_only()) {
    build_pins(job::signers_of(state));
  }
}

void SealBox::build_points(const std::vector<QString>& sentences) {
  column_->addWidget(child_of<Text>(content_, tr("Not sealed yet: this has to be decided first."), "strong"));
  for (const QString& each : sentences) {
    column_->addWidget(child_of<Text>(content_, each));
  }
}

store::SigningState SealBox::signing_state(const std::string& person) const {
  const auto keys = store::signing_keys(*store_);
  return keys ? store::signing_state(*keys, person, record::date_of(ways_.by().moment)) : store::SigningState::no_key;
}

/// A new key is made where people are kept, and is nothing to be asked for in passing.
bool SealBox::build_ended_keys(const std::vector<std::string>& persons) {
  bool ended = false;
  for (const std::string& person : persons) {
    if (signing_state(person) == store::SigningState::key_ended) {
      const QString who = widgets::qt(name_of(person));
      auto* text = child_of<Text>(
          content_, tr("The key of %1 has ended: give a new PIN under People in the workshop.").arg(who), "error");
      text->setObjectName(QStringLiteral("seal-key-ended"));
      column_->addWidget(text);
      ended = true;
    }
  }
  return ended;
}

std::string SealBox::name_of(const std::string& person) const {
  if (const auto persons = store_->registers().persons()) {
    for (const store::Person& each : *persons) {
      if (each.id == person) {
        return each.name;
      }
    }
  }
  return person;
}

SealBox::PinFields SealBox::pin_fields(const std::string& person, const std::string& name, bool has_pin) {
  PinFields fields{person, nullptr, nullptr};
  auto* row = widgets::lay_in<QHBoxLayout>(column_, 12);
  const QString object = QStringLiteral("field-pin-%1").arg(pins_.size() + 1);
  const QString who = widgets::qt(name);
  fields.pin = hidden_field(content_, has_pin ? tr("PIN of %1").arg(who) : tr("First PIN of %1").arg(who), object);
  row->addWidget(fields.pin);
  if (!has_pin) {
    fields.pin->edit()->setPlaceholderText(tr("4 to 12 digits"));
    fields.again = hidden_field(content_, tr("The same once more"), object + QStringLiteral("-again"));
    row->addWidget(fields.again);
  }
  row->addStretch(1);
  return fields;
}

void SealBox::build_pins(const std::vector<std::string>& signers) {
  column_->addWidget(child_of<Text>(
      content_, tr("Seal the record: nothing in it can be changed after that, only added to, with a signature."),
      "strong"));
  if (build_ended_keys(signers)) {
    return;
  }
  for (const std::string& person : signers) {
    pins_.push_back(pin_fields(person, name_of(person), signing_state(person) == store::SigningState::signs));
  }
  auto* button = child_of<Button>(content_, tr("Sign and seal"), Button::Kind::main);
  button->setObjectName(QStringLiteral("button-seal"));
  column_->addWidget(button, 0, Qt::AlignLeft);
  connect(button, &Button::clicked, this, &SealBox::seal);
}

void SealBox::build_sealed() {
  state_ = child_of<Text>(content_, tr("Sealed. Whether the seal holds is being looked at."));
  state_->setObjectName(QStringLiteral("seal-state"));
  column_->addWidget(state_);
  checking_->begin_instead([this, path = store_->path(), job = job_](const store::BackupWatch& /*watch*/) {
    const auto store = store::Store::open(path, {store::Mode::look_only, "", 0});
    const auto whole = store ? store::verify_job(**store, job) : tl::make_unexpected(store.error());
    return [this, whole] { show_whether_whole(whole); };
  });
  if (store_->looks_only()) {
    return;
  }
  auto* button = child_of<Button>(content_, tr("Add to it"));
  button->setObjectName(QStringLiteral("button-addendum"));
  column_->addWidget(button, 0, Qt::AlignLeft);
  connect(button, &Button::clicked, this, [this, button] {
    button->hide();
    build_addendum();
  });
}

void SealBox::show_whether_whole(const Result<void>& whole) {
  widgets::set_part(state_, whole ? "strong" : "error");
  state_->setText(whole ? tr("Sealed. Whole, and signed with keys of this workshop.") : widgets::say(whole.error()));
}

void SealBox::build_addendum() {
  const std::string person = ways_.by().person;
  if (build_ended_keys({person})) {
    return;
  }
  reason_ = child_of<WordField>(content_, tr("Why is something added?"));
  reason_->edit()->setObjectName(QStringLiteral("field-addendum-reason"));
  text_ = child_of<WordField>(content_, tr("What is added"));
  text_->edit()->setObjectName(QStringLiteral("field-addendum-text"));
  column_->addWidget(reason_);
  column_->addWidget(text_);
  pins_.push_back(pin_fields(person, name_of(person), signing_state(person) == store::SigningState::signs));
  auto* button = child_of<Button>(content_, tr("Sign the addition"), Button::Kind::main);
  button->setObjectName(QStringLiteral("button-sign-addendum"));
  column_->addWidget(button, 0, Qt::AlignLeft);
  connect(button, &Button::clicked, this, &SealBox::add);
  reason_->edit()->setFocus(Qt::OtherFocusReason);
}

bool SealBox::first_pins_agree() {
  // All are looked at before one is kept: a slip of the second person leaves the first without a PIN too.
  for (const PinFields& each : pins_) {
    if (each.again != nullptr && each.pin->text() != each.again->text()) {
      say(tr("The two PINs of %1 differ: type both again.").arg(widgets::qt(name_of(each.person))), false);
      wipe();
      return false;
    }
  }
  return true;
}

SealBox::TypedPins SealBox::taken_pins() {
  auto typed = std::make_shared<std::vector<TypedPin>>();
  for (const PinFields& each : pins_) {
    typed->push_back({{each.person, pin_in(*each.pin)}, each.again != nullptr});
  }
  wipe();
  return typed;
}

Result<void> SealBox::keep_first_pins(store::Store& store, const std::vector<TypedPin>& pins, const store::By& by,
                                      const store::SigningRules& rules) {
  for (const TypedPin& each : pins) {
    if (!each.first) {
      continue;
    }
    auto kept = store::set_pin(store, each.of.person, each.of.pin, by, rules);
    if (!kept && kept.error().code != "has_pin") {
      return kept;
    }
  }
  return {};
}

void SealBox::sign(Signing signing, Signed then) {
  show_signing(true);
  signing_->begin([this, path = store_->path(), job = job_, signing = std::move(signing),
                   then = std::move(then)](const store::BackupWatch& /*watch*/) {
    const auto store = store::Store::open_beside(path);
    const auto file = store ? signing(**store) : Result<store::JobFile>(tl::make_unexpected(store.error()));
    return [this, job, then, file] {
      show_signing(false);
      if (job == job_) {
        then(file);
      }
    };
  });
}

void SealBox::show_signing(bool runs) {
  // Nothing else is pressed by an Enter that comes late.
  if (runs && focusWidget() != nullptr && content_->isAncestorOf(focusWidget())) {
    setFocus(Qt::OtherFocusReason);
  }
  content_->setEnabled(!runs);
  if (runs) {
    say(tr("Signing: this takes a moment."), true);
  } else {
    said_->hide();
  }
}

void SealBox::seal() {
  if (signing_->runs() || !first_pins_agree()) {
    return;
  }
  sign(
      [job = job_, pins = taken_pins(), by = ways_.by(), rules = ways_.rules,
       folder = ways_.folder()](store::Store& store) -> Result<store::JobFile> {
        if (auto kept = keep_first_pins(store, *pins, by, rules); !kept) {
          return tl::make_unexpected(kept.error());
        }
        std::vector<store::SealPin> typed;
        for (TypedPin& each : *pins) {
          typed.push_back(std::move(each.of));
        }
        auto sealed = store::seal_job(store, job, typed, by, rules, folder);
        return sealed ? Result<store::JobFile>(std::move(sealed->file)) : tl::make_unexpected(sealed.error());
      },
      [this](const Result<store::JobFile>& file) {
        file ? say_file(*file, tr("Signed and sealed.")) : say(widgets::say(file.error()), false);
        show_job(std::string(job_));  // where it was refused, first PINs are kept by now, and are asked for once
        if (file) {
          emit just_sealed();
        }
      });
}

void SealBox::add() {
  const store::By by = ways_.by();
  if (pins_.front().person != by.person) {
    say(tr("Somebody else is at the bench now: begin the addition anew."), false);
    return;
  }
  if (signing_->runs() || !first_pins_agree()) {
    return;
  }
  sign(
      [job = job_, reason = reason_->text(), text = text_->text(), pins = taken_pins(), by, rules = ways_.rules,
       folder = ways_.folder()](store::Store& store) -> Result<store::JobFile> {
        if (auto kept = keep_first_pins(store, *pins, by, rules); !kept) {
          return tl::make_unexpected(kept.error());
        }
        return store::add_addendum(store, job, reason, text, pins->front().of.pin, by, rules, folder);
      },
      [this](const Result<store::JobFile>& file) {
        if (!file) {
          say(widgets::say(file.error()), false);
          pins_.front().pin->edit()->setFocus(Qt::OtherFocusReason);
          return;
        }
        say_file(*file, tr("Added and signed."));
        show_job(std::string(job_));
        emit added_to();
      });
}

void SealBox::say(const QString& text, bool good) {
  widgets::set_part(said_, good ? "strong" : "error");
  said_->setText(text);
  said_->show();
}

void SealBox::say_file(const store::JobFile& file, const QString& done) {
  if (file.fault) {
    say(done + QLatin1Char(' ') + tr("Its file could not be written: %1").arg(widgets::say(*file.fault)), false);
  } else if (file.path.empty()) {
    say(done + QLatin1Char(' ') + tr("No folder for backups is set, so no file of it was written."), true);
  } else {
    say(done + QLatin1Char(' ') + tr("Its file: %1").arg(widgets::qt(file.path)), true);
  }
}

void SealBox::wipe() {
  for (const PinFields& each : pins_) {
    for (WordField* field : {each.pin, each.again}) {
      if (field != nullptr) {
        field->edit()->clear();
      }
    }
  }
}

}  // namespace shimwright::past
