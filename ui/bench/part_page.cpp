#include "part_page.h"

#include <QLineEdit>
#include <algorithm>

#include "job_words.h"
#include "reading_words.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"
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

bool PartPage::Row::typed() const {
  return !number->text().empty() || !quantity->blank() || !batch->text().empty();
}

bool PartPage::Row::to_send() const {
  return renewed ? typed() : tick->isChecked();
}

PartPage::PartPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : StepPage(bench, step, parent), left_out_(child_of<KeptLine>(this)), keys_(child_of<KeyLine>(this)) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(left_out_);
  column->addWidget(keys_, 0, Qt::AlignLeft);
  setFocusProxy(keys_);
  for (const std::string& id : std::get<sheet::PartStep>(step.body).parts) {
    if (const sheet::PartItem* item = spec().part(id)) {
      add_row(*item, column);
    }
  }
  keys_->setText(rows_.size() == 1 ? tr("Key 1: it is renewed. A scan is the batch.")
                                   : tr("Keys 1 to %1: that one is renewed. A scan is the batch.").arg(rows_.size()));
  unsent_ = child_of<UnsentBox>(this, tr("Tick what is renewed and keep it, or clear ticks and fields."));
  column->addWidget(unsent_);
  chain_rows();
  connect(unsent_, &UnsentBox::cleared, this, &PartPage::clear);
  refresh();
}

void PartPage::add_row(const sheet::PartItem& item, QVBoxLayout* column) {
  Row row;
  row.item = &item;
  auto* box = child_of<widgets::Box>(this, said(item.title),
                                     item.one_time ? tr("one-time: renewed at every assembly") : QString(), "card");
  column->addWidget(box);
  add_tick(row, box);
  add_fields(row, box);
  row.kept = child_of<KeptLine>(box);
  row.kept->setObjectName(QStringLiteral("kept-") + qt(item.id));
  box->body()->addWidget(row.kept);
  rows_.push_back(row);
}

void PartPage::add_tick(Row& row, widgets::Box* box) {
  auto* line = widgets::lay_in<widgets::TurningRow>(box->body(), 16);
  row.tick = child_of<widgets::Button>(box, QString(), widgets::Button::Kind::answer);
  row.tick->setObjectName(QStringLiteral("button-tick-") + qt(row.item->id));
  row.tick->setCheckable(true);
  row.tick->setAccessibleDescription(said(row.item->title));
  if (std::get<sheet::PartStep>(step().body).parts.size() > 1) {
    row.tick->set_keys(QString::number(rows_.size() + 1));
  }
  line->addWidget(row.tick, 1);
  auto* number = child_of<widgets::Text>(
      box, tr("Number %1, quantity %2").arg(qt(row.item->number)).arg(row.item->quantity), "strong");
  line->addWidget(number, 1);
  connect(row.tick, &QAbstractButton::toggled, this, [this, at = rows_.size()] {
    show_tick(rows_[at]);
    emit look_changed();
  });
}

void PartPage::add_fields(Row& row, widgets::Box* box) {
  const QString id = qt(row.item->id);
  auto* fields = widgets::lay_in<QHBoxLayout>(box->body(), 16);
  row.number = child_of<WordField>(box, tr("Another number"));
  row.number->edit()->setObjectName(QStringLiteral("field-%1-number").arg(id));
  row.number->edit()->setFixedHeight(56);
  row.quantity = child_of<NumberField>(box, tr("Another quantity"), quantity::Unit::piece);
  row.quantity->edit()->setObjectName(QStringLiteral("field-%1-quantity").arg(id));
  row.quantity->set_may_be_blank(true);
  row.quantity->setFixedWidth(quantity_width);
  row.batch = child_of<WordField>(box, tr("Batch or serial, if it has one"));
  row.batch->edit()->setObjectName(QStringLiteral("field-%1-batch").arg(id));
  row.batch->edit()->setFixedHeight(56);
  fields->addWidget(row.number, 1, Qt::AlignTop);
  fields->addWidget(row.quantity, 0, Qt::AlignTop);
  fields->addWidget(row.batch, 1, Qt::AlignTop);
  connect(row.number->edit(), &QLineEdit::textChanged, this, &StepPage::look_changed);
  connect(row.quantity, &NumberField::edited, this, &StepPage::look_changed);
  connect(row.batch->edit(), &QLineEdit::textChanged, this, &StepPage::look_changed);
}

/// Told by its words as well as by its colour.
void PartPage::show_tick(const Row& row) {
  row.tick->set_action_text(row.renewed             ? tr("Renewed, and kept")
                            : row.tick->isChecked() ? tr("Renewed: ticked")
                                                    : tr("Tick when renewed"));
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
  keys_->setVisible(!state().closed && !state().parked);
  for (Row& row : rows_) {
    show_kept(row);
  }
}

/// What was renewed before the job lay still is asked again: it is not ticked.
void PartPage::show_kept(Row& row) {
  const bool stands = !std::holds_alternative<job::Unproven>(step_state());
  const bool was_renewed = row.renewed;
  QString words;
  for (const job::Entry* entry : job::present_entries(state(), step())) {
    const auto* fitted = std::get_if<job::PartsFitted>(&entry->body);
    for (const job::PartFitted& part : fitted == nullptr ? std::vector<job::PartFitted>() : fitted->parts) {
      words = part.part == row.item->id ? tr("kept: %1, %2").arg(part_words(part), by_whom(bench(), *entry)) : words;
    }
  }
  row.renewed = stands && !words.isEmpty();
  if (row.renewed || was_renewed) {
    row.tick->setChecked(row.renewed);
  }
  row.tick->setEnabled(!row.renewed);
  show_tick(row);
  row.kept->show_words(row.renewed ? widgets::Mark::done : mark_of(step_state()), words);
}

bool PartPage::has_unsent() const {
  return std::any_of(rows_.begin(), rows_.end(), [](const Row& row) { return row.typed() || row.to_send(); });
}

/// That a part was renewed is for a person to say, not for leaving the page.
bool PartPage::commit() {
  unsent_->setVisible(has_unsent());
  return !has_unsent();
}

void PartPage::take_focus() {
  setFocus(Qt::OtherFocusReason);
}

/// The batch of what was ticked last comes first; the keys stay where they were, for the next tick.
bool PartPage::take_burst(const std::string& text) {
  for (const bool ticked : {true, false}) {
    for (const Row& row : rows_) {
      if (row.batch->text().empty() && !row.renewed && row.tick->isChecked() == ticked) {
        row.batch->set_text(text);
        return true;
      }
    }
  }
  return false;
}

bool PartPage::take_digit(int digit) {
  if (digit < 1 || digit > static_cast<int>(rows_.size())) {
    return false;
  }
  const Row& row = rows_[static_cast<std::size_t>(digit - 1)];
  if (row.tick->isEnabled()) {
    row.tick->toggle();
  }
  return true;
}

std::vector<FootAction> PartPage::actions() {
  if (job::passed(step_state()) && !has_unsent()) {
    return {};
  }
  return {{"take", tr("Keep what is ticked"), [this] { take(); }, true}};
}

bool PartPage::typed(std::vector<job::PartFitted>& parts) {
  for (const Row& row : rows_) {
    if (!row.to_send()) {
      continue;
    }
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
  for (const Row& row : rows_) {
    const bool was_sent = std::any_of(parts.begin(), parts.end(),
                                      [&row](const job::PartFitted& part) { return part.part == row.item->id; });
    if (was_sent) {
      clear_row(row);
    }
  }
  refresh();
  emit look_changed();
  if (job::passed(step_state()) && commit()) {
    emit leaves();
  }
}

void PartPage::clear_row(const Row& row) {
  row.number->set_text({});
  row.quantity->set_text({});
  row.batch->set_text({});
}

void PartPage::clear() {
  unsent_->hide();
  for (const Row& row : rows_) {
    clear_row(row);
    row.tick->setChecked(row.renewed);
  }
}

StepPage* make_part_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<PartPage>(parent, bench, step);
}

}  // namespace shimwright::bench
