#include "float_entry.h"

#include <algorithm>

#include "float_words.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::bench {

using widgets::Button;
using widgets::child_of;
using widgets::NumberField;
using widgets::Text;

FloatEntry::FloatEntry(int spots, QWidget* parent) : QFrame(parent) {
  widgets::set_part(this, "card");
  auto* column = widgets::lay<QVBoxLayout>(this, 8);
  column->setContentsMargins(18, 12, 18, 12);
  build_head(column, spots);
  build_fields(column);
  hint_ = child_of<Text>(this, QString(), "small");
  column->addWidget(hint_);
}

void FloatEntry::build_head(QVBoxLayout* column, int spots) {
  auto* both = widgets::lay_in<widgets::TurningRow>(column, 20);
  auto* row = widgets::lay_in<QHBoxLayout>(both, 8);
  both->setStretch(0, 1);
  heading_ = child_of<Text>(this, QString(), "large");
  heading_->setObjectName(QStringLiteral("float-run"));
  heading_->setWordWrap(false);
  row->addWidget(heading_, 1);
  for (int spot = 1; spot <= spots; ++spot) {
    auto* button = child_of<Button>(this, QString::number(spot));
    button->setObjectName(QStringLiteral("button-spot-%1").arg(spot));
    button->setAccessibleName(tr("Spot %1").arg(spot));
    button->setCheckable(true);
    connect(button, &Button::clicked, this, [this, spot] { emit spot_wanted(spot); });
    row->addWidget(button);
    spots_.push_back(button);
  }
  dial_ = child_of<InstrumentBox>(this, tr("Dial gauge"), sheet::InstrumentKind::dial_gauge);
  dial_->setObjectName(QStringLiteral("box-instrument"));
  connect(dial_, &QComboBox::currentIndexChanged, this, [this] { show_hint(); });
  both->addWidget(dial_);
}

void FloatEntry::build_fields(QVBoxLayout* column) {
  auto* row = widgets::lay_in<QHBoxLayout>(column, 12);
  const auto field = [&](const QString& title, const QString& name) {
    auto* number = child_of<NumberField>(this, title, quantity::Unit::millimetre);
    number->edit()->setObjectName(QStringLiteral("field-") + name);
    number->edit()->setFixedWidth(140);
    row->addWidget(number, 1, Qt::AlignTop);
    connect(number, &NumberField::edited, this, &FloatEntry::edited);
    return number;
  };
  rest_ = field(tr("At rest"), QStringLiteral("rest"));
  lifted_ = field(tr("Lifted"), QStringLiteral("lifted"));
  zero_ = field(tr("Zero after"), QStringLiteral("zero-after"));
  zero_->set_may_be_blank(true);
  widgets::chain_fields({rest_, lifted_, zero_}, [this] { emit completed(); });
}

void FloatEntry::show_spot(int spot, int run, int least_runs) {
  heading_->setText(run <= least_runs ? tr("Spot %1, run %2 of %3").arg(spot).arg(run).arg(least_runs)
                                      : tr("Spot %1, run %2").arg(spot).arg(run));
  for (std::size_t at = 0; at < spots_.size(); ++at) {
    spots_[at]->setChecked(static_cast<int>(at) + 1 == spot);
  }
}

void FloatEntry::set_hint_shown(bool shown) {
  hint_->setVisible(shown);
}

void FloatEntry::offer(const std::vector<job::Instrument>& instruments, const job::Moment& now,
                       const std::string& used_last) {
  instruments_ = instruments;
  const bool first_time = dial_->count() == 0;
  dial_->offer(instruments, now);
  if (first_time && !used_last.empty()) {
    dial_->choose(used_last);
  }
  show_hint();
}

void FloatEntry::show_hint() {
  const auto found = std::find_if(instruments_.begin(), instruments_.end(),
                                  [&](const job::Instrument& each) { return each.id == dial_->id(); });
  hint_->setText(dial_hint(found == instruments_.end() ? std::nullopt : std::optional(*found)));
}

bool FloatEntry::readable() {
  for (NumberField* each : {rest_, lifted_, zero_}) {
    if (!each->blank() && !each->readable()) {
      each->take_focus();
      return false;
    }
  }
  return true;
}

void FloatEntry::clear() {
  for (NumberField* each : {rest_, lifted_, zero_}) {
    each->set_text({});
  }
}

void FloatEntry::take_focus() {
  for (NumberField* each : {rest_, lifted_, zero_}) {
    if (each->blank()) {
      each->take_focus();
      return;
    }
  }
  rest_->take_focus();
}

void FloatEntry::show_refusal(const Error& error) {
  const QString place = widgets::qt(error.place);
  NumberField* field = nullptr;
  if (place.endsWith(QLatin1String("/rest"))) {
    field = rest_;
  } else if (place.endsWith(QLatin1String("/lifted"))) {
    field = lifted_;
  } else if (place.endsWith(QLatin1String("/zero after")) || error.code == "zero_lost") {
    field = zero_;
  }
  if (field != nullptr) {
    field->set_fault(widgets::say(error));
    field->take_focus();
  }
}

}  // namespace shimwright::bench
