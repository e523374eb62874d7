#include "part_page.h"

#include <QLineEdit>
#include <algorithm>

#include "job_words.h"
#include "reading_words.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "step_pages.h"

namespace shimwright::bench {

using widgets::child_of;
using widgets::NumberField;
using widgets::qt;
using widgets::WordField;

namespace {

constexpr int quantity_width = 250;

QString part_words(const job::PartFitted& part) {
  QString words = QStringLiteral("%1, %2").arg(qt(part.number)).arg(part.quantity);
  if (!part.batch.empty()) {
    words += PartPage::tr(", batch %1").arg(qt(part.batch));
  }
  return words;
}

}  // namespace

PartPage::PartPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : StepPage(bench, step, parent), left_out_(child_of<KeptLine>(this)) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(left_out_);
  for (const std::string& id : std::get<sheet::PartStep>(step.body).parts) {
    if (const sheet::PartItem* item = spec().part(id)) {
      add_row(*item, column);
    }
  }
  unsent_ = child_of<UnsentBox>(this, tr("Keep the parts, or clear the fields."));
  column->addWidget(unsent_);
  chain_rows();
  connect(unsent_, &UnsentBox::cleared, this, &PartPage::clear);
  refresh();
}

void PartPage::add_row(const sheet::PartItem& item, QVBoxLayout* column) {
  Row row;
  row.item = &item;
  const QString id = qt(item.id);
  auto* box = child_of<widgets::Box>(this, said(item.title),
                                     item.one_time ? tr("renewed at every assembly") : QString(), "card");
  column->addWidget(box);
  auto* fields = widgets::lay_in<QHBoxLayout>(box->body(), 16);
  row.number = child_of<WordField>(box, tr("Part number"));
  row.number->edit()->setObjectName(QStringLiteral("field-%1-number").arg(id));
  row.number->edit()->setFixedHeight(56);
  row.quantity = child_of<NumberField>(box, tr("How many"), quantity::Unit::piece);
  row.quantity->edit()->setObjectName(QStringLiteral("field-%1-quantity").arg(id));
  row.quantity->set_may_be_blank(true);
  row.quantity->setFixedWidth(quantity_width);
  row.batch = child_of<WordField>(box, tr("Batch or serial, if it has one"));
  row.batch->edit()->setObjectName(QStringLiteral("field-%1-batch").arg(id));
  row.batch->edit()->setFixedHeight(56);
  fields->addWidget(row.number, 1, Qt::AlignTop);
  fields->addWidget(row.quantity, 0, Qt::AlignTop);
  fields->addWidget(row.batch, 1, Qt::AlignTop);
  box->body()->addWidget(child_of<widgets::Text>(
      box,
      tr("Left blank, it is as in the spec sheet: number %1, quantity %2.").arg(qt(item.number)).arg(item.quantity),
      "small"));
  row.kept = child_of<KeptLine>(box);
  row.kept->setObjectName(QStringLiteral("kept-") + id);
  box->body()->addWidget(row.kept);
  connect(row.number->edit(), &QLineEdit::textChanged, this, &StepPage::look_changed);
  connect(row.quantity, &NumberField::edited, this, &StepPage::look_changed);
  connect(row.batch->edit(), &QLineEdit::textChanged, this, &StepPage::look_changed);
  rows_.push_back(row);
}

void PartPage::chain_rows() {
  for (std::size_t at = 0; at < rows_.size(); ++at) {
    const Row row = rows_[at];
    connect(row.number, &WordField::entered, this, [row] { row.quantity->take_focus(); });
    connect(row.quantity, &NumberField::entered, this, [row] { row.batch->edit()->setFocus(Qt::OtherFocusReason); });
    if (at + 1 < rows_.size()) {
      QLineEdit* next = rows_[at + 1].number->edit();
      connect(row.batch, &WordField::entered, this, [next] { next->setFocus(Qt::OtherFocusReason); });
    }
  }
}

void PartPage::refresh() {
  left_out_->show_words(widgets::Mark::deviation, left_out_words(bench(), step_state()));
  const job::Entry* last = nullptr;
  for (const job::Entry* entry : job::present_entries(state(), step())) {
    last = std::holds_alternative<job::PartsFitted>(entry->body) ? entry : last;
  }
  for (const Row& row : rows_) {
    QString words;
    if (last != nullptr) {
      for (const job::PartFitted& part : std::get<job::PartsFitted>(last->body).parts) {
        if (part.part == row.item->id) {
          words = tr("kept: %1, %2").arg(part_words(part), by_whom(bench(), *last));
        }
      }
    }
    row.kept->show_words(mark_of(step_state()), words);
  }
}

bool PartPage::has_unsent() const {
  return std::any_of(rows_.begin(), rows_.end(), [](const Row& row) {
    return !row.number->text().empty() || !row.quantity->blank() || !row.batch->text().empty();
  });
}

/// That all these parts were renewed is for a person to say, not for leaving the page.
bool PartPage::commit() {
  unsent_->setVisible(has_unsent());
  return !has_unsent();
}

void PartPage::take_focus() {
  if (!rows_.empty()) {
    rows_.front().batch->edit()->setFocus(Qt::OtherFocusReason);
  }
}

bool PartPage::take_burst(const std::string& text) {
  for (const Row& row : rows_) {
    if (row.batch->text().empty()) {
      row.batch->set_text(text);
      row.batch->edit()->setFocus(Qt::OtherFocusReason);
      return true;
    }
  }
  return false;
}

std::vector<FootAction> PartPage::actions() {
  if (job::passed(step_state()) && !has_unsent()) {
    return {};
  }
  return {{"take", tr("Renewed: save"), [this] { take(); }, true}};
}

bool PartPage::typed(std::vector<job::PartFitted>& parts) {
  for (const Row& row : rows_) {
    job::PartFitted part{row.item->id, row.number->text(), row.item->quantity, row.batch->text()};
    if (!row.quantity->blank()) {
      const auto number = row.quantity->number();
      if (!number) {
        row.quantity->set_fault(widgets::say(number.error()));
        row.quantity->take_focus();
        return false;
      }
      part.quantity = number->base;
    }
    parts.push_back(std::move(part));
  }
  return true;
}

void PartPage::take() {
  std::vector<job::PartFitted> parts;
  if (!typed(parts) || !send(job::FitParts{step().id, parts}, false)) {
    return;
  }
  clear();
  refresh();
  emit look_changed();
  if (job::passed(step_state())) {
    emit leaves();
  }
}

void PartPage::clear() {
  unsent_->hide();
  for (const Row& row : rows_) {
    row.number->set_text({});
    row.quantity->set_text({});
    row.batch->set_text({});
  }
}

StepPage* make_part_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<PartPage>(parent, bench, step);
}

}  // namespace shimwright::bench
