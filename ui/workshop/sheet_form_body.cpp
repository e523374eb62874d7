// What of a draft is on the screen: one part of it, its fields and buttons.
#include <algorithm>

#include "draft_places.h"
#include "flow_row.h"
#include "named_button.h"
#include "sheet_form.h"
#include "shimwright/sheet/taken_over.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "stage_row.h"
#include "tray_row.h"

namespace shimwright::workshop {

using widgets::Button;
using widgets::child_of;
using widgets::qt;
using widgets::Text;

void SheetForm::fill_parts(const std::vector<sheet::DraftSection>& all) {
  std::vector<sheet::WordChoice> choices;
  for (const sheet::DraftSection& each : all) {
    const auto open =
        std::count_if(faults_.begin(), faults_.end(), [&](const Error& fault) { return lies_in(fault, each); });
    const QString title = widgets::say(each.title);
    const QString named = title.trimmed().isEmpty() ? tr("without a title yet") : title;
    const QString text = open == 0 ? named : tr("%1 · %2 to fill in").arg(named).arg(open);
    choices.push_back({each.id, {"{0}", {widgets::plain(text)}}});
  }
  part_ = std::min(part_, all.size() - 1);
  parts_->set_choices(choices, choices[part_].word);
}

void SheetForm::rebuild(const std::string& focus) {
  const auto all = sections();
  fill_parts(all);
  fields_.clear();
  sought_ = nullptr;
  if (body_ != nullptr) {
    body_->hide();
    body_->deleteLater();
  }
  body_ = child_of<QWidget>(this);
  auto* column = widgets::lay<QVBoxLayout>(body_, 12);
  const sheet::DraftSection& section = all[part_];
  for (const sheet::DraftGroup& group : section.groups) {
    add_group(column, group);
  }
  add_ways(column, section);
  body_column_->addWidget(body_);
  if (isVisible()) {
    body_->show();
  }
  show_faults();
  for (SheetField* const each : fields_) {
    if (!focus.empty() && each->place().compare(0, focus.size(), focus) == 0) {
      each->take_focus();
      sought_ = each;
      emit wants_sight(each);
      break;
    }
  }
}

void SheetForm::add_group(QBoxLayout* column, const sheet::DraftGroup& group) {
  const QString heading = widgets::say(group.heading);
  if (!heading.isEmpty()) {
    column->addWidget(child_of<Text>(body_, heading, "strong"));
  }
  auto* card = child_of<QFrame>(body_);
  widgets::set_part(card, "card");
  auto* rows = widgets::lay<QVBoxLayout>(card, 10);
  rows->setContentsMargins(16, 10, 16, 12);
  auto* side_by_side = group.row ? child_of<FlowRow>(card) : nullptr;
  for (sheet::DraftField each : group.fields) {
    if (const auto refused = refused_.find(each.place); refused != refused_.end()) {
      each.text = refused->second.text;
    }
    auto* field = child_of<SheetField>(side_by_side != nullptr ? static_cast<QWidget*>(side_by_side) : card, each);
    if (side_by_side != nullptr) {
      field->make_short();
      side_by_side->add(field);
    } else {
      rows->addWidget(field);
    }
    fields_.push_back(field);
    connect(field, &SheetField::committed, this, &SheetForm::put);
    connect(field, &SheetField::entered, this, [this, field] { go_on_from(field); });
  }
  if (side_by_side != nullptr) {
    rows->addWidget(side_by_side);
  }
  add_group_buttons(rows, side_by_side, group);
  column->addWidget(card);
}

void SheetForm::add_group_buttons(QBoxLayout* rows, FlowRow* side_by_side, const sheet::DraftGroup& group) {
  if (group.place.empty()) {
    return;
  }
  auto* buttons = side_by_side != nullptr ? side_by_side : child_of<FlowRow>(body_);
  const auto add = [&](const QString& text, const QString& name, auto act) {
    auto* button = named_button(buttons, text, name + qt(group.place), Button::Kind::quiet);
    button->setAccessibleDescription(widgets::say(group.heading));
    buttons->add(button);
    connect(button, &QAbstractButton::clicked, this, act);
  };
  if (group.movable) {
    add(tr("Up"), QStringLiteral("button-up-"), [this, place = group.place] { move_row(place, -1); });
    add(tr("Down"), QStringLiteral("button-down-"), [this, place = group.place] { move_row(place, 1); });
  }
  add(tr("Take out"), QStringLiteral("button-take-out-"),
      [this, place = group.place] { change(sheet::without(kept_.draft, place)); });
  if (side_by_side == nullptr) {
    rows->addWidget(buttons);
  }
  if (group.movable) {
    auto* told = child_of<Text>(body_, QString());
    told->setObjectName(QStringLiteral("moved-") + qt(group.place));
    told->setVisible(false);
    rows->addWidget(told);
  }
}

void SheetForm::add_ways(QBoxLayout* column, const sheet::DraftSection& section) {
  auto* row = child_of<FlowRow>(body_);
  for (const sheet::RowWay& way : section.ways) {
    auto* button = named_button(row, widgets::say(way.label), QStringLiteral("button-add-") + qt(way.place));
    row->add(button);
    connect(button, &QAbstractButton::clicked, this, [this, place = way.place] { add_row(place); });
  }
  column->addWidget(row);
  if (const auto side = sheet::side_named(section.id)) {
    add_tray_row(column, *side);
  }
  if (section.id == "sheet" && kept_.draft.kind == sheet::SheetKind::job_sheet) {
    add_stage_row(column);
  }
}

void SheetForm::add_stage_row(QBoxLayout* column) {
  std::vector<sheet::WordChoice> stages;
  for (const sheet::DraftSection& each : sections()) {
    if (stage_place(each.id) == each.id) {
      stages.push_back({each.id, each.title});
    }
  }
  auto sheets = store_->registers().job_sheets();
  auto* row = child_of<StageRow>(body_, sheets ? std::move(*sheets) : std::vector<store::SheetIssue>(), stages);
  column->addWidget(row);
  connect(row, &StageRow::taken, this,
          [this, row](const std::string& file, const std::string& stage, const std::string& before) {
            auto with = sheet::with_stage(kept_.draft, file, stage, before);
            with ? take_over(std::move(*with)) : row->set_fault(widgets::say(with.error()));
          });
}

void SheetForm::add_tray_row(QBoxLayout* column, sheet::Side side) {
  auto* tray = child_of<TrayRow>(body_);
  column->addWidget(tray);
  connect(tray, &TrayRow::laid, this,
          [this, tray, side](const std::string& from, const std::string& to, const std::string& step,
                             const std::string& u_mm) {
            const auto laid = sheet::with_shims(kept_.draft, side, from, to, step, u_mm);
            laid ? change(*laid) : tray->set_fault(widgets::say(laid.error()));
          });
}

}  // namespace shimwright::workshop
