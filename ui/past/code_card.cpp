#include "code_card.h"

#include <QGridLayout>
#include <QVBoxLayout>
#include <memory>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::past {

namespace {

QString standing_sentence(const store::ScannedCode& scanned) {
  if (const std::optional<Error>& fault = scanned.fault; fault) {
    return CodeCard::tr("Signed by %1: %2").arg(widgets::qt(fault->place), widgets::say(fault->message));
  }
  switch (scanned.key) {
    case store::KeyStanding::ours:
      return CodeCard::tr("Whole and ours: sealed by %1.").arg(widgets::qt(scanned.signer));
    case store::KeyStanding::ended:
      return CodeCard::tr("Whole, but the key of %1 is marked as no longer valid.").arg(widgets::qt(scanned.signer));
    case store::KeyStanding::unknown:
      break;
  }
  return CodeCard::tr("Whole, but sealed with a key that this workshop does not know.");
}

QString side_value(const record::VitalSide& side) {
  const std::string worst = record::worst_float_text(side);
  if (side.shim.empty()) {
    return worst.empty() ? CodeCard::tr("no shim") : CodeCard::tr("no shim, float %1").arg(widgets::qt(worst));
  }
  return worst.empty() ? CodeCard::tr("shim %1, float not measured").arg(widgets::qt(side.shim))
                       : CodeCard::tr("shim %1, float %2").arg(widgets::qt(side.shim), widgets::qt(worst));
}

}  // namespace

CodeCard::CodeCard(QWidget* parent)
    : QFrame(parent),
      standing_(widgets::child_of<widgets::Text>(this, QString())),
      compare_(widgets::child_of<widgets::Text>(
          this, tr("Hold the paper beside it: a number that differs there was altered."), "soft")),
      values_(nullptr) {
  widgets::set_part(this, "card");
  auto* column = widgets::lay<QVBoxLayout>(this, 10);
  column->setContentsMargins(20, 14, 20, 14);
  standing_->setObjectName(QStringLiteral("code-standing"));
  column->addWidget(standing_);
  values_ = widgets::lay_in<QGridLayout>(column, 8);
  values_->setHorizontalSpacing(24);
  values_->setColumnStretch(1, 1);
  column->addWidget(compare_);
  hide();
}

void CodeCard::show_code(const store::ScannedCode& scanned) {
  clear_values();
  widgets::set_part(standing_, scanned.key == store::KeyStanding::ours ? "strong" : "error");
  standing_->setText(standing_sentence(scanned));
  const record::VitalValues& values = scanned.values;
  add_value(tr("Vehicle"), widgets::qt(values.vehicle), "code-vehicle");
  add_value(tr("Job"), widgets::qt(values.number), "code-job");
  add_value(tr("Lower disc, large bearing"), side_value(values.lower), "code-lower");
  add_value(tr("Upper disc, small bearing"), side_value(values.upper), "code-upper");
  add_value(tr("Seal"), widgets::qt(record::seal_groups(values.digest)), "code-seal");
  compare_->setVisible(true);
  show();
}

void CodeCard::show_fault(const Error& error) {
  clear_values();
  widgets::set_part(standing_, "error");
  standing_->setText(widgets::say(error));
  compare_->hide();
  show();
}

void CodeCard::add_value(const QString& what, const QString& value, const char* name) {
  const int row = values_->rowCount();
  values_->addWidget(widgets::child_of<widgets::Text>(this, what, "soft"), row, 0);
  auto* text = widgets::child_of<widgets::Text>(this, value, "large");
  text->setObjectName(QLatin1String(name));
  values_->addWidget(text, row, 1);
  values_->itemAtPosition(row, 0)->widget()->show();
  text->show();
}

void CodeCard::clear_values() {
  while (QLayoutItem* const item = values_->takeAt(0)) {
    const std::unique_ptr<QLayoutItem> taken(item);
    taken->widget()->hide();
    taken->widget()->deleteLater();
  }
}

}  // namespace shimwright::past
