#include "instrument_form.h"

#include <QCheckBox>
#include <QLineEdit>

#include "days_words.h"
#include "repeat_card.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::qt;

QString kind_words(sheet::InstrumentKind kind) {
  return widgets::say(Message{job::instrument_word(kind), {}});
}

QString instrument_words(const store::KeptInstrument& kept, const job::Moment& now) {
  const job::Instrument& each = kept.instrument;
  const quantity::Unit unit = quantity::default_unit(sheet::dimension_read_by(each.kind));
  const auto amount = [unit](std::int64_t base) { return unbroken(widgets::amount_shown(base, unit)); };
  QStringList words{kind_words(each.kind), InstrumentForm::tr("resolution %1").arg(amount(each.resolution)),
                    InstrumentForm::tr("permissible error ±\u00a0%1").arg(amount(each.permissible_error))};
  if (each.repeatability) {
    words << InstrumentForm::tr("repeatability %1").arg(unbroken(deviation_words(*each.repeatability, unit)));
  }
  if (!kept.in_use) {
    words << InstrumentForm::tr("out of use");
    return words.join(QStringLiteral(" · "));
  }
  const QString day = each.calibrated_to ? day_words(*each.calibrated_to) : QString();
  switch (job::calibration_of(each, now)) {
    case job::Calibration::no_date:
      words << InstrumentForm::tr("no date of calibration kept");
      break;
    case job::Calibration::in_date:
      words << InstrumentForm::tr("calibrated to %1").arg(day);
      break;
    case job::Calibration::due_soon:
      words << InstrumentForm::tr("calibration due: calibrated to %1").arg(day);
      break;
    case job::Calibration::overdue:
      words << InstrumentForm::tr("calibration overdue since %1").arg(day);
      break;
  }
  return words.join(QStringLiteral(" · "));
}

widgets::Mark mark_of(const store::KeptInstrument& kept, const job::Moment& now) {
  if (!kept.in_use) {
    return widgets::Mark::not_required;
  }
  switch (job::calibration_of(kept.instrument, now)) {
    case job::Calibration::no_date:
      return widgets::Mark::open;
    case job::Calibration::in_date:
      return widgets::Mark::within;
    case job::Calibration::due_soon:
      return widgets::Mark::on_limit;
    case job::Calibration::overdue:
      return widgets::Mark::held;
  }
  return widgets::Mark::none;
}

InstrumentForm::InstrumentForm(const store::KeptInstrument& kept, bool is_new, QWidget* parent)
    : FormCard(is_new ? tr("One more: %1").arg(kind_words(kept.instrument.kind)) : qt(kept.instrument.name), tr("Keep"),
               parent),
      before_(kept),
      unit_(quantity::default_unit(sheet::dimension_read_by(kept.instrument.kind))) {
  name_ = add_word(tr("Name, as it is called at the bench"), QStringLiteral("name"));
  name_->set_text(kept.instrument.name);
  auto* pair = add_pair();
  const auto known = [is_new](std::int64_t base) { return is_new ? std::nullopt : std::optional(base); };
  resolution_ = add_number(tr("Resolution"), QStringLiteral("resolution"), known(kept.instrument.resolution), pair);
  permissible_error_ = add_number(tr("Permissible error, ±"), QStringLiteral("permissible_error"),
                                  known(kept.instrument.permissible_error), pair);
  connect(resolution_, &widgets::NumberField::entered, this, [this] { permissible_error_->take_focus(); });
  connect(permissible_error_, &widgets::NumberField::entered, this, [this] { focusNextChild(); });
  if (kept.instrument.kind == sheet::InstrumentKind::dial_gauge) {
    const auto& turn = kept.instrument.turn;
    turn_ = add_number(tr("One turn of the hand"), QStringLiteral("turn"),
                       turn ? std::optional(turn->count()) : std::nullopt, body());
    turn_->set_may_be_blank(true);
    turn_->set_hint(tr("Blank: not known."));
    connect(turn_, &widgets::NumberField::entered, this, [this] { focusNextChild(); });
  }
  build_dates();
  build_repeatability(is_new);
  if (!is_new) {
    build_use();
  }
  finish();
  typed_before_ = typed();
}

widgets::NumberField* InstrumentForm::add_number(const QString& title, const QString& name,
                                                 std::optional<std::int64_t> base, QBoxLayout* into) {
  auto* field = child_of<widgets::NumberField>(this, title, unit_);
  field->edit()->setObjectName(QStringLiteral("field-") + name);
  if (base) {
    // The digits it is usually written with, as `0.01`; every number of its dimension is exact in the default unit.
    const auto digits = quantity::read_number(quantity::shortest_text(*base, unit_), unit_);
    if (digits) {
      field->set_number(*digits);
    }
  }
  into->addWidget(field, 1);
  connect(field, &widgets::NumberField::edited, this, &FormCard::clear_told);
  add_place(field, name);
  return field;
}

void InstrumentForm::build_dates() {
  auto* pair = add_pair();
  calibrated_on_ = add_word(tr("Calibrated on (year-month-day)"), QStringLiteral("calibrated_on"), pair);
  calibrated_to_ = add_word(tr("Calibrated to, this day included"), QStringLiteral("calibrated_to"), pair);
  calibrated_on_->set_text(before_.instrument.calibrated_on.value_or(std::string()));
  calibrated_to_->set_text(before_.instrument.calibrated_to.value_or(std::string()));
}

void InstrumentForm::build_repeatability(bool is_new) {
  const auto& known = before_.instrument.repeatability;
  body()->addWidget(child_of<widgets::Text>(
      this, known
                ? tr("Repeatability %1, tested %2")
                      .arg(deviation_words(*known, unit_), day_words(before_.repeatability_on.value_or(std::string())))
                : tr("Repeatability: not tested; the spec sheet's stands for it.")));
  if (!is_new) {
    auto* test = child_of<widgets::Button>(this, tr("Repeat test"));
    test->setObjectName(QStringLiteral("button-repeat-test"));
    body()->addWidget(test, 0, Qt::AlignLeft);
    connect(test, &QPushButton::clicked, this, &InstrumentForm::repeat_test_wanted);
  }
}

void InstrumentForm::build_use() {
  in_use_ = child_of<QCheckBox>(this);
  in_use_->setText(tr("In use"));
  in_use_->setObjectName(QStringLiteral("button-in-use"));
  in_use_->setChecked(before_.in_use);
  body()->addWidget(in_use_, 0, Qt::AlignLeft);
}

QStringList InstrumentForm::typed() const {
  QStringList words{qt(name_->text()), qt(resolution_->text()), qt(permissible_error_->text()),
                    qt(calibrated_on_->text()), qt(calibrated_to_->text())};
  words << (turn_ == nullptr ? QString() : qt(turn_->text()));
  words << (in_use_ == nullptr || in_use_->isChecked() ? QStringLiteral("in use") : QString());
  return words;
}

std::optional<store::KeptInstrument> InstrumentForm::instrument() {
  store::KeptInstrument kept = before_;
  kept.instrument.name = name_->text();
  for (const auto& [field, amount] : {std::pair(resolution_, &kept.instrument.resolution),
                                      std::pair(permissible_error_, &kept.instrument.permissible_error)}) {
    const auto number = field->number();
    if (!number) {
      field->set_fault(widgets::say(number.error()));
      field->take_focus();
      return std::nullopt;
    }
    *amount = number->base;
  }
  if (turn_ != nullptr) {
    const auto turn = turn_->number();
    if (!turn_->blank() && !turn) {
      turn_->set_fault(widgets::say(turn.error()));
      turn_->take_focus();
      return std::nullopt;
    }
    kept.instrument.turn = turn_->blank() ? std::nullopt : std::optional(quantity::Length(turn->base));
  }
  const auto day = [](const widgets::WordField& field) {
    const std::string text = field.text();
    return text.empty() ? std::nullopt : std::optional(text);
  };
  kept.instrument.calibrated_on = day(*calibrated_on_);
  kept.instrument.calibrated_to = day(*calibrated_to_);
  kept.in_use = in_use_ == nullptr || in_use_->isChecked();
  return kept;
}

}  // namespace shimwright::workshop
