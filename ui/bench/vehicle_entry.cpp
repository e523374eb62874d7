#include "vehicle_entry.h"

#include <QCoreApplication>
#include <QFrame>
#include <QInputMethodEvent>
#include <QLineEdit>
#include <QTextCharFormat>
#include <algorithm>

#include "shimwright/vehicle/vehicle_number.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

namespace {

constexpr std::size_t characters_of_a_vin = 17;
constexpr int notice_take_width = 150;

bool is_ascii(const QString& text) {
  return std::all_of(text.begin(), text.end(), [](QChar each) { return each.unicode() < 0x80; });
}

}  // namespace

std::vector<WrongPlace> wrong_places(const QString& typed) {
  std::vector<WrongPlace> places;
  for (qsizetype at = 0; at < typed.size();) {
    const int length = typed[at].isHighSurrogate() && at + 1 < typed.size() ? 2 : 1;
    if (!vehicle::may_be_typed_in_a_vin(typed.mid(at, length).toStdString())) {
      places.push_back({static_cast<int>(at), length});
    }
    at += length;
  }
  return places;
}

QString words_for_suggestion(const std::string& typed, const std::string& suggestion) {
  const QString seen = widgets::qt(vehicle::folded_key(typed));
  const QString meant = widgets::qt(suggestion);
  QStringList changes;
  for (qsizetype at = 0; at < std::min(seen.size(), meant.size()); ++at) {
    const QString change = QCoreApplication::translate("bench", "%1 for %2").arg(meant.mid(at, 1), seen.mid(at, 1));
    if (seen[at] != meant[at] && !changes.contains(change)) {
      changes.append(change);
    }
  }
  // A look-alike of another script cannot be told from the letter it stands for.
  if (changes.isEmpty() || !is_ascii(seen) || seen.size() != meant.size()) {
    return QCoreApplication::translate("bench", "Take plain letters");
  }
  return QCoreApplication::translate("bench", "Take %1").arg(changes.join(QStringLiteral(", ")));
}

VehicleEntry::VehicleEntry(QWidget* parent) : QWidget(parent) {
  auto* column = widgets::lay<QVBoxLayout>(this, 6);
  notice_ = widgets::child_of<QFrame>(this);
  widgets::set_part(notice_, "notice");
  auto* row = widgets::lay<QHBoxLayout>(notice_, 14);
  row->setContentsMargins(14, 8, 14, 8);
  sentence_ = widgets::child_of<widgets::Text>(notice_, QString());
  sentence_->setObjectName(QStringLiteral("vehicle-notice"));
  row->addWidget(sentence_, 1);
  column->addWidget(notice_);
  build_field(column);
  // Made after the field: it is the next stop of Tab.
  take_ = widgets::child_of<widgets::Button>(notice_, QString());
  take_->setObjectName(QStringLiteral("button-take-suggestion"));
  take_->setMinimumWidth(notice_take_width);
  connect(take_, &QPushButton::clicked, this, &VehicleEntry::take_suggestion);
  row->addWidget(take_);
  no_vin_ = widgets::child_of<widgets::Button>(this, tr("It is no VIN"));
  no_vin_->setObjectName(QStringLiteral("button-no-vin"));
  no_vin_->setCheckable(true);
  no_vin_->setMinimumHeight(54);
  edit_->parentWidget()->layout()->addWidget(no_vin_);
  reason_ = widgets::child_of<widgets::WordField>(this, tr("Why it is no VIN"));
  reason_->edit()->setObjectName(QStringLiteral("field-chassis-reason"));
  column->addWidget(reason_);
  connect(no_vin_, &QPushButton::toggled, this, [this](bool no_vin) {
    tried_ = false;
    show_state();
    (no_vin && !typed().empty() ? reason_->edit() : edit_)->setFocus(Qt::OtherFocusReason);
    emit edited();
  });
  connect(reason_, &widgets::WordField::edited, this, [this] {
    tried_ = false;
    show_state();
    emit edited();
  });
  connect(reason_, &widgets::WordField::entered, this, &VehicleEntry::enter);
  show_state();
}

void VehicleEntry::build_field(QVBoxLayout* column) {
  title_ = widgets::child_of<widgets::Text>(this, QString(), "small");
  column->addWidget(title_);
  auto* line = widgets::child_of<QWidget>(this);
  auto* row = widgets::lay<QHBoxLayout>(line, 12);
  edit_ = widgets::child_of<QLineEdit>(line);
  edit_->setObjectName(QStringLiteral("field-vehicle"));
  edit_->setFixedHeight(54);
  widgets::set_part(edit_, "vehicle");
  row->addWidget(edit_, 1);
  column->addWidget(line);
  setFocusProxy(edit_);
  connect(edit_, &QLineEdit::textChanged, this, [this] {
    tried_ = false;
    show_state();
    emit edited();
  });
  connect(edit_, &QLineEdit::returnPressed, this, &VehicleEntry::enter);
}

void VehicleEntry::clear(int this_year) {
  this_year_ = this_year;
  set({}, std::nullopt);
}

void VehicleEntry::set(const std::string& typed, const std::optional<std::string>& chassis_reason) {
  const QSignalBlocker quiet(no_vin_);
  no_vin_->setChecked(chassis_reason.has_value());
  reason_->set_text(chassis_reason.value_or(std::string()));
  edit_->setText(widgets::qt(typed));
  tried_ = false;
  show_state();
}

std::string VehicleEntry::typed() const {
  return widgets::plain(edit_->text().trimmed());
}

bool VehicleEntry::is_chassis() const {
  return no_vin_ != nullptr && no_vin_->isChecked();
}

std::optional<std::string> VehicleEntry::chassis_reason() const {
  return is_chassis() ? std::optional(reason_->text()) : std::nullopt;
}

std::optional<std::string> VehicleEntry::key() const {
  if (is_chassis()) {
    const auto chassis = vehicle::read_chassis_number(typed(), reason_->text());
    return chassis ? std::optional(chassis->key) : std::nullopt;
  }
  const auto vin = vehicle::read_vehicle_number(typed(), this_year_);
  return vin ? std::optional(vin->key) : std::nullopt;
}

std::optional<std::string> VehicleEntry::key_to_look_for() const {
  const std::string folded = vehicle::folded_key(typed());
  return is_chassis() && !folded.empty() ? std::optional(folded) : key();
}

void VehicleEntry::enter() {
  if (is_chassis() && reason_->text().empty() && !typed().empty() && edit_->hasFocus()) {
    reason_->edit()->setFocus(Qt::OtherFocusReason);
    return;
  }
  tried_ = true;
  show_state();
  if (key()) {
    emit entered();
  }
}

void VehicleEntry::take_suggestion() {
  edit_->setText(widgets::qt(suggestion_));
  edit_->setFocus(Qt::OtherFocusReason);
  enter();
}

void VehicleEntry::show_refusal(const Error& error) {
  say_notice(widgets::say(error), suggestion_.empty() ? QString() : words_for_suggestion(typed(), suggestion_));
}

void VehicleEntry::take_focus() {
  edit_->setFocus(Qt::OtherFocusReason);
}

void VehicleEntry::show_state() {
  suggestion_.clear();
  reason_->setVisible(is_chassis());
  const QString title = is_chassis() ? tr("Chassis number") : tr("VIN");
  edit_->setAccessibleName(title);
  title_->setText(title);
  mark_wrong_characters();
  if (is_chassis()) {
    const auto chassis = vehicle::read_chassis_number(typed(), reason_->text());
    say_notice(!chassis && tried_ ? widgets::say(chassis.error()) : QString(), {});
    return;
  }
  const auto vin = vehicle::read_vehicle_number(typed(), this_year_);
  if (vin) {
    say_notice(vin->notes.empty() ? QString() : widgets::say(vehicle::sentence_for(vin->notes.front())), {});
    return;
  }
  const auto count = static_cast<std::size_t>(widgets::qt(vehicle::folded_key(typed())).toUcs4().size());
  const bool still_typing = count < characters_of_a_vin && !tried_;
  if (count > 0 && count != characters_of_a_vin) {
    title_->setText(tr("VIN · %1 of 17 characters").arg(count));
  }
  suggestion_ = vin.error().suggestion.value_or(std::string());
  say_notice(still_typing ? QString() : widgets::say(vehicle::error_of(vin.error())),
             suggestion_.empty() ? QString() : words_for_suggestion(typed(), suggestion_));
}

void VehicleEntry::say_notice(const QString& sentence, const QString& take) {
  sentence_->setText(sentence);
  take_->set_action_text(take);
  // Taking the suggestion hides the button: the focus goes to the field and not to whatever comes next.
  if (take.isEmpty() && take_->hasFocus()) {
    edit_->setFocus(Qt::OtherFocusReason);
  }
  take_->setVisible(!take.isEmpty());
  notice_->setVisible(!sentence.isEmpty());
}

void VehicleEntry::mark_wrong_characters() {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QTextCharFormat format;
  format.setBackground(colours.amber);
  format.setForeground(colours.on_amber);
  QList<QInputMethodEvent::Attribute> marks;
  if (!is_chassis()) {
    for (const WrongPlace& place : wrong_places(edit_->text())) {
      // Counted from the cursor: so the event of an input method wants it, the one way to mark characters in a line
      // edit.
      marks.append(QInputMethodEvent::Attribute(QInputMethodEvent::TextFormat, place.from - edit_->cursorPosition(),
                                                place.length, format));
    }
  }
  QInputMethodEvent event(QString(), marks);
  QCoreApplication::sendEvent(edit_, &event);
}

}  // namespace shimwright::bench
