#include "shim_form.h"

#include <QLineEdit>
#include <algorithm>
#include <cmath>
#include <utility>

#include "days_words.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::NumberField;
using widgets::qt;

ShimForm::ShimForm(const ShimEntered& before, bool is_new, std::vector<store::KeptInstrument> micrometers,
                   std::int64_t now_ms, QWidget* parent)
    : FormCard(is_new ? tr("One more size") : tr("Shim %1").arg(qt(before.shim.id)), tr("Keep"), parent),
      before_(before),
      micrometers_(std::move(micrometers)),
      now_ms_(now_ms),
      readings_(before.stock.readings) {
  mark_ = add_word(tr("Mark on the shim"), QStringLiteral("shim"));
  mark_->set_text(before.shim.id);
  const auto in_use = [](const store::KeptInstrument& each) { return each.in_use; };
  if (std::any_of(micrometers_.begin(), micrometers_.end(), in_use)) {
    build_readings();
  }
  auto* pair = add_pair();
  build_typed(pair);
  build_counts(is_new);
  if (!is_new) {
    auto* out = child_of<widgets::Button>(this, tr("Take this size out of the tray"));
    out->setObjectName(QStringLiteral("button-take-out"));
    body()->addWidget(out, 0, Qt::AlignLeft);
    connect(out, &QPushButton::clicked, this, &ShimForm::taking_out_wanted);
  }
  finish();
  show_result();
  typed_before_ = typed();
}

void ShimForm::build_readings() {
  micrometer_ = child_of<widgets::PickBox>(this, tr("Micrometer"));
  micrometer_->setObjectName(QStringLiteral("pick-micrometer"));
  for (const store::KeptInstrument& each : micrometers_) {
    if (each.in_use) {
      micrometer_->addItem(qt(each.instrument.name), qt(each.instrument.id));
    }
  }
  body()->addWidget(child_of<widgets::Text>(this, tr("Micrometer"), "small"));
  body()->addWidget(micrometer_, 0, Qt::AlignLeft);
  list_ = child_of<ReadingList>(this, tr("Reading"), quantity::Unit::millimetre);
  std::vector<quantity::TypedNumber> numbers;
  for (const store::ShimReading& each : readings_) {
    numbers.push_back(each.number);
  }
  list_->set_readings(numbers);
  body()->addWidget(list_);
  result_ = child_of<widgets::Text>(this, QString(), "strong");
  result_->setObjectName(QStringLiteral("shim-result"));
  body()->addWidget(result_);
  connect(list_, &ReadingList::changed, this, [this] {
    clear_told();
    const auto& numbers_now = list_->readings();
    // One was added with the micrometer that is picked, or the last one was taken away.
    while (readings_.size() < numbers_now.size()) {
      readings_.push_back({numbers_now[readings_.size()], micrometer_->id()});
    }
    readings_.resize(numbers_now.size());
    show_result();
  });
}

void ShimForm::build_typed(QBoxLayout* into) {
  thickness_ = child_of<NumberField>(this, tr("Thickness"), quantity::Unit::millimetre);
  thickness_->edit()->setObjectName(QStringLiteral("field-thickness"));
  uncertainty_ = child_of<NumberField>(this, tr("Standard uncertainty"), quantity::Unit::millimetre);
  uncertainty_->edit()->setObjectName(QStringLiteral("field-uncertainty"));
  if (before_.shim.thickness > quantity::Length()) {
    thickness_->set_number({before_.shim.thickness.count(), 3, quantity::Unit::millimetre});
    uncertainty_->set_number({std::llround(before_.shim.u_mm * 1000.0), 3, quantity::Unit::millimetre});
  }
  for (NumberField* each : {thickness_, uncertainty_}) {
    each->set_may_be_blank(true);
    into->addWidget(each, 1);
    connect(each, &NumberField::edited, this, &FormCard::clear_told);
  }
  connect(thickness_, &NumberField::entered, this, [this] { uncertainty_->take_focus(); });
  connect(uncertainty_, &NumberField::entered, this, [this] { count_->take_focus(); });
  add_place(thickness_, QStringLiteral("thickness"));
  add_place(uncertainty_, QStringLiteral("uncertainty"));
}

void ShimForm::build_counts(bool is_new) {
  auto* pair = add_pair();
  count_ = child_of<NumberField>(this, tr("Counted now"), quantity::Unit::piece);
  count_->edit()->setObjectName(QStringLiteral("field-count"));
  reorder_ = child_of<NumberField>(this, tr("Order when so few are left"), quantity::Unit::piece);
  reorder_->edit()->setObjectName(QStringLiteral("field-reorder"));
  if (before_.stock.reorder_at) {
    reorder_->set_text(std::to_string(*before_.stock.reorder_at));
  }
  if (!is_new) {
    count_->set_hint(before_.shim.count ? tr("Blank: the count stays as it is, %1.").arg(*before_.shim.count)
                                        : tr("Blank: not counted."));
  }
  for (NumberField* each : {count_, reorder_}) {
    each->set_may_be_blank(true);
    pair->addWidget(each, 1, Qt::AlignTop);
    connect(each, &NumberField::edited, this, &FormCard::clear_told);
  }
  connect(count_, &NumberField::entered, this, [this] { reorder_->take_focus(); });
  connect(reorder_, &NumberField::entered, this, [this] { focusNextChild(); });
  add_place(count_, QStringLiteral("count"));
  add_place(reorder_, QStringLiteral("reorder_at"));
}

std::optional<job::MeasuredShim> ShimForm::measured() const {
  std::vector<job::MicrometerReading> readings;
  for (const store::ShimReading& each : readings_) {
    const auto found =
        std::find_if(micrometers_.begin(), micrometers_.end(),
                     [&each](const store::KeptInstrument& known) { return known.instrument.id == each.instrument; });
    if (found == micrometers_.end()) {
      return std::nullopt;  // nothing is known of what it was read with
    }
    readings.push_back({each.number, found->instrument});
  }
  return job::measured_shim(readings);
}

bool ShimForm::read_anew() const {
  return readings_ != before_.stock.readings;
}

void ShimForm::show_result() {
  const auto shim = measured();
  if (result_ != nullptr) {
    const double u_mm = shim && !read_anew() ? before_.shim.u_mm : shim ? shim->u_mm : 0.0;
    result_->setText(shim ? tr("Mean of %1: %2 ± %3 %4 (95 %)")
                                .arg(shim->readings)
                                .arg(widgets::length_shown(shim->mean_mm, 4),
                                     widgets::uncertainty_shown(1.96 * u_mm, 4), widgets::length_symbol())
                          : tr("Without readings the thickness typed below stands."));
  }
  thickness_->setVisible(!shim);
  uncertainty_->setVisible(!shim);
}

QStringList ShimForm::typed() const {
  QStringList words{qt(mark_->text()), qt(thickness_->text()), qt(uncertainty_->text()), qt(count_->text()),
                    qt(reorder_->text())};
  for (const store::ShimReading& each : readings_) {
    words << qt(quantity::text_of(each.number)) + qt(each.instrument);
  }
  words << (list_ == nullptr ? QString() : qt(list_->field()->text()));
  return words;
}

bool ShimForm::read(NumberField& field, std::optional<std::int64_t>& number) {
  if (field.blank()) {
    number.reset();
    return true;
  }
  const auto typed_number = field.number();
  if (!typed_number) {
    field.set_fault(widgets::say(typed_number.error()));
    field.take_focus();
    return false;
  }
  number = typed_number->base;
  return true;
}

bool ShimForm::take_thickness(ShimEntered& entered) {
  if (!readings_.empty() && !read_anew()) {
    return true;  // as it was reckoned then: what the micrometer came to since changes nothing in it
  }
  if (const auto shim = measured()) {
    entered.shim.thickness = shim->thickness;
    entered.shim.u_mm = shim->u_mm;
    return true;
  }
  std::optional<std::int64_t> thickness;
  std::optional<std::int64_t> uncertainty;
  if (!read(*thickness_, thickness) || !read(*uncertainty_, uncertainty)) {
    return false;
  }
  if (!thickness || !uncertainty) {
    tell(tr("A thickness with its uncertainty is needed, or readings with a micrometer."), thickness_);
    return false;
  }
  entered.shim.thickness = quantity::Length(*thickness);
  // What was kept finer than can be typed stays as it is.
  const bool as_before = *uncertainty == std::llround(before_.shim.u_mm * 1000.0);
  entered.shim.u_mm = as_before ? before_.shim.u_mm : static_cast<double>(*uncertainty) / 1000.0;
  return true;
}

std::optional<ShimEntered> ShimForm::shim() {
  if (list_ != nullptr && !list_->take_typed()) {
    return std::nullopt;
  }
  ShimEntered entered = before_;
  entered.shim.id = mark_->text();
  entered.stock.readings = readings_;
  std::optional<std::int64_t> count;
  std::optional<std::int64_t> reorder;
  if (!take_thickness(entered) || !read(*count_, count) || !read(*reorder_, reorder)) {
    return std::nullopt;
  }
  if (count) {
    entered.shim.count = static_cast<int>(*count);
    entered.stock.counted_at_ms = now_ms_;
  }
  entered.stock.reorder_at = reorder ? std::optional(static_cast<int>(*reorder)) : std::nullopt;
  return entered;
}

}  // namespace shimwright::workshop
