#include "tray_row.h"

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/style.h"

namespace shimwright::workshop {

using widgets::child_of;

TrayRow::TrayRow(QWidget* parent) : QWidget(parent) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(child_of<widgets::Text>(this, tr("Or lay all sizes of the tray at once:"), "strong"));
  auto* card = child_of<QFrame>(this);
  widgets::set_part(card, "card");
  column->addWidget(card);
  auto* rows = widgets::lay<QVBoxLayout>(card, 10);
  rows->setContentsMargins(16, 10, 16, 12);
  const auto add = [&](const char* name, Message label, sheet::FieldKind kind) {
    fields_.push_back(child_of<SheetField>(
        card, sheet::DraftField{std::string("tray-") + name, kind, std::move(label), "mm", "", false, {}, ""}));
    rows->addWidget(fields_.back());
  };
  add("from", {SHIMWRIGHT_TEXT("sheet", "From thickness"), {}}, sheet::FieldKind::length);
  add("to", {SHIMWRIGHT_TEXT("sheet", "To thickness"), {}}, sheet::FieldKind::length);
  add("step", {SHIMWRIGHT_TEXT("sheet", "In steps of"), {}}, sheet::FieldKind::length);
  add("u", {SHIMWRIGHT_TEXT("sheet", "Standard uncertainty"), {}}, sheet::FieldKind::decimal);
  for (std::size_t at = 0; at + 1 < fields_.size(); ++at) {
    connect(fields_[at], &SheetField::entered, fields_[at + 1], &SheetField::take_focus);
  }
  auto* lay = child_of<widgets::Button>(card, tr("Lay these sizes"));
  lay->setObjectName(QStringLiteral("button-lay-sizes"));
  rows->addWidget(lay, 0, Qt::AlignLeft);
  connect(lay, &QAbstractButton::clicked, this,
          [this] { emit laid(fields_[0]->text(), fields_[1]->text(), fields_[2]->text(), fields_[3]->text()); });
}

void TrayRow::set_fault(const QString& sentence) {
  fields_.front()->set_fault(sentence);
}

}  // namespace shimwright::workshop
