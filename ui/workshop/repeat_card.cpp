#include "repeat_card.h"

#include <QLineEdit>
#include <algorithm>
#include <cmath>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::workshop {

using widgets::child_of;

namespace {

std::vector<double> in_base_units(const std::vector<quantity::TypedNumber>& readings) {
  std::vector<double> numbers;
  for (const quantity::TypedNumber& each : readings) {
    numbers.push_back(static_cast<double>(each.base));
  }
  return numbers;
}

/// How many base units of its dimension one of this unit is.
double base_units_of(quantity::Unit unit) {
  const auto one = quantity::read_number("1", unit);
  return one ? static_cast<double>(one->base) : 1.0;
}

}  // namespace

QString deviation_words(qint64 thousandths, quantity::Unit unit) {
  const quantity::Unit shown = widgets::unit_shown(unit);
  const double value = static_cast<double>(thousandths) / 1000.0 / base_units_of(shown);
  const int figures = value > 0 ? static_cast<int>(std::ceil(-std::log10(value))) + 1 : 0;
  const QString digits = QString::number(value, 'f', std::clamp(figures, 0, 6));
  const QString symbol = widgets::qt(quantity::symbol_of(shown));
  return symbol.isEmpty() ? digits : digits + QLatin1Char(' ') + symbol;
}

RepeatCard::RepeatCard(Of of, const QString& heading, const QString& told, quantity::Unit unit, QWidget* parent)
    : FormCard(heading, tr("Keep this"), parent), of_(of), unit_(unit) {
  body()->addWidget(child_of<widgets::Text>(this, told));
  if (of == Of::feel) {
    step_ = child_of<widgets::NumberField>(this, tr("Step from shim to shim"), unit);
    step_->edit()->setObjectName(QStringLiteral("field-step"));
    body()->addWidget(step_);
    connect(step_, &widgets::NumberField::edited, this, &RepeatCard::show_result);
    connect(step_, &widgets::NumberField::entered, this, [this] { list_->field()->take_focus(); });
  }
  list_ = child_of<ReadingList>(this, tr("Reading"), unit);
  body()->addWidget(list_);
  result_ = child_of<widgets::Text>(this, QString(), "strong");
  result_->setObjectName(QStringLiteral("repeat-result"));
  body()->addWidget(result_);
  connect(list_, &ReadingList::changed, this, &RepeatCard::show_result);
  connect(this, &FormCard::keep_wanted, this, &RepeatCard::keep);
  finish();
  show_result();
}

void RepeatCard::take_focus() {
  (step_ == nullptr ? list_->field() : step_)->take_focus();
}

std::optional<qint64> RepeatCard::deviation() const {
  const std::vector<double> readings = in_base_units(list_->readings());
  if (of_ == Of::instrument) {
    const auto test = metrology::repeat_test(readings);
    return test ? std::optional<qint64>(std::llround(test->deviation * 1000.0)) : std::nullopt;
  }
  const auto step = step_->number();
  const auto feel = step ? metrology::feel_from(readings, static_cast<double>(step->base)) : std::nullopt;
  return feel ? std::optional<qint64>(std::llround(*feel * 1000.0)) : std::nullopt;
}

void RepeatCard::show_result() {
  clear_told();
  const auto test = metrology::repeat_test(in_base_units(list_->readings()));
  const auto found = deviation();
  if (!test || !found) {
    const auto missing = static_cast<qint64>(metrology::fewest_repeats) - static_cast<qint64>(list_->readings().size());
    result_->setText(missing > 0 ? tr("%1 more at least; ten are usual.").arg(missing)
                                 : tr("The step from shim to shim is missing."));
    return;
  }
  const QString percent = QString::number(std::lround(test->relative_u * 100.0));
  const QString size = deviation_words(*found, unit_);
  result_->setText((of_ == Of::feel
                        ? tr("Feel %1 (standard uncertainty) from %2 readings; it may be wrong by about %3 %.")
                        : tr("Repeatability %1 (standard deviation) from %2 readings; it may be wrong by about %3 %."))
                       .arg(size)
                       .arg(test->readings)
                       .arg(percent));
}

void RepeatCard::keep() {
  if (!list_->take_typed()) {
    return;
  }
  if (const auto size = deviation()) {
    emit found(*size);
  } else {
    tell(result_->text());
  }
}

}  // namespace shimwright::workshop
