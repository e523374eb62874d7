#include "instruments_section.h"

#include <QLineEdit>
#include <array>
#include <utility>

#include "flow_row.h"
#include "register_row.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "widgets_away.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::qt;

namespace {

constexpr std::array kinds = {sheet::InstrumentKind::dial_gauge,     sheet::InstrumentKind::depth_gauge,
                              sheet::InstrumentKind::micrometer,     sheet::InstrumentKind::torque_wrench,
                              sheet::InstrumentKind::thermometer,    sheet::InstrumentKind::multimeter,
                              sheet::InstrumentKind::pressure_gauge, sheet::InstrumentKind::scale};

/// What is read again and again.
QString repeat_guide(sheet::InstrumentKind kind) {
  switch (kind) {
    case sheet::InstrumentKind::dial_gauge:
      return InstrumentsSection::tr(
          "Set up as for a float, at one marked spot. Set zero, lift until it stops, read, let down. Enter the lift; "
          "do it ten times, by the same hand.");
    case sheet::InstrumentKind::depth_gauge:
      return InstrumentsSection::tr(
          "Measure one depth at one marked place, lifting the gauge off each time. Ten times.");
    case sheet::InstrumentKind::micrometer:
      return InstrumentsSection::tr(
          "Measure one shim at one marked place, opening the micrometer each time. Ten times.");
    case sheet::InstrumentKind::torque_wrench:
      return InstrumentsSection::tr(
          "Release it on the tester at one setting and enter what the tester shows. Ten times.");
    default:
      return InstrumentsSection::tr("Read the same thing again and again while nothing changes. Ten times.");
  }
}

}  // namespace

InstrumentsSection::InstrumentsSection(store::Store& store, WorkshopWays ways, QWidget* parent)
    : QWidget(parent), store_(&store), ways_(std::move(ways)) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(child_of<widgets::Text>(this, tr("Instruments"), "heading"));
  told_ = child_of<widgets::Text>(this, QString(), "strong");
  told_->setObjectName(QStringLiteral("instruments-told"));
  told_->hide();
  column->addWidget(told_);
  place_ = widgets::lay_in<QVBoxLayout>(column, 12);
  list_ = child_of<QWidget>(this);
  static_cast<void>(widgets::lay<QVBoxLayout>(list_, 8));
  column->addWidget(list_);
  build_adding(column);
}

void InstrumentsSection::build_adding(QVBoxLayout* column) {
  auto* row = child_of<FlowRow>(this);
  column->addWidget(row);
  kind_ = child_of<widgets::PickBox>(row, tr("Kind of instrument"));
  kind_->setObjectName(QStringLiteral("pick-kind"));
  for (const sheet::InstrumentKind kind : kinds) {
    kind_->addItem(kind_words(kind), qt(sheet::name_of(kind)));
  }
  row->add(kind_);
  add_ = child_of<widgets::Button>(row, tr("Add an instrument"));
  add_->setObjectName(QStringLiteral("button-add-instrument"));
  add_->setEnabled(!store_->looks_only());
  row->add(add_);
  connect(add_, &QPushButton::clicked, this, [this] {
    store::KeptInstrument made;
    made.instrument.id = ids_.id(ways_.clock().at_ms);
    made.instrument.kind = sheet::instrument_kind_named(kind_->id()).value_or(sheet::InstrumentKind::dial_gauge);
    open(made, true);
  });
}

bool InstrumentsSection::has_unsent() const {
  return card_ != nullptr && card_->has_unsent();
}

void InstrumentsSection::refresh() {
  if (!has_unsent()) {
    close();
  }
  show_list();
}

void InstrumentsSection::show_list() {
  empty_column(*list_);
  const auto instruments = store_->registers().kept_instruments();
  if (!instruments) {
    list_->layout()->addWidget(child_of<widgets::Text>(list_, widgets::say(instruments.error()), "error"));
    return;
  }
  const job::Moment now = ways_.clock();
  for (const bool in_use : {true, false}) {
    for (const store::KeptInstrument& each : *instruments) {
      if (each.in_use == in_use) {
        auto* row = child_of<RegisterRow>(list_, qt(each.instrument.name), instrument_words(each, now));
        row->setObjectName(QStringLiteral("row-") + qt(each.instrument.name));
        row->set_mark(mark_of(each, now));
        row->setEnabled(!store_->looks_only());
        list_->layout()->addWidget(row);
        connect(row, &RegisterRow::clicked, this, [this, each] { open(each, false); });
      }
    }
  }
}

void InstrumentsSection::open(const store::KeptInstrument& kept, bool is_new) {
  if (has_unsent()) {
    card_->tell(tr("Keep this first, or leave it as it was."));
    return;
  }
  close();
  auto* form = child_of<InstrumentForm>(this, kept, is_new);
  put_up(*form, QStringLiteral("form-instrument"));
  connect(form, &FormCard::keep_wanted, this, [this, form] { keep(*form); });
  connect(form, &InstrumentForm::repeat_test_wanted, this, [this, kept] { test(kept); });
  form->findChild<QLineEdit*>()->setFocus(Qt::OtherFocusReason);
  show_form(*form);
}

void InstrumentsSection::put_up(FormCard& card, const QString& name) {
  card_ = &card;
  card.setObjectName(name);
  place_->addWidget(&card);
  connect(&card, &FormCard::leave_wanted, this, [this] { close(); });
  card.show();
}

void InstrumentsSection::keep(InstrumentForm& form) {
  const auto kept = form.instrument();
  if (kept && put(*kept, form)) {
    close(tr("Kept."));
    show_list();
  }
}

void InstrumentsSection::test(const store::KeptInstrument& kept) {
  if (has_unsent()) {
    card_->tell(tr("Keep this first, or leave it as it was."));
    return;
  }
  close();
  const quantity::Unit unit = quantity::default_unit(sheet::dimension_read_by(kept.instrument.kind));
  auto* test =
      child_of<RepeatCard>(this, RepeatCard::Of::instrument, tr("Repeat test of %1").arg(qt(kept.instrument.name)),
                           repeat_guide(kept.instrument.kind), unit);
  put_up(*test, QStringLiteral("repeat-test"));
  connect(test, &RepeatCard::found, this, [this, kept, test](qint64 deviation) {
    store::KeptInstrument tested = kept;
    tested.instrument.repeatability = deviation;
    tested.repeatability_on = job::iso_day_of(ways_.clock());
    if (put(tested, *test)) {
      close(tr("Kept: readings with %1 carry this from now on.").arg(qt(kept.instrument.name)));
      show_list();
    }
  });
  test->take_focus();
  show_form(*test);
}

bool InstrumentsSection::put(const store::KeptInstrument& kept, FormCard& form) {
  if (const auto put = store_->registers().put(kept, by_now(ways_)); !put) {
    form.tell(put.error());
    return false;
  }
  return true;
}

void InstrumentsSection::close(const QString& told) {
  FormCard* const before = std::exchange(card_, nullptr);
  if (before != nullptr) {
    before->hide();
    before->deleteLater();
  }
  told_->setText(told);
  told_->setVisible(!told.isEmpty());
  if (before != nullptr && isVisible()) {
    add_->setFocus(Qt::OtherFocusReason);
  }
}

}  // namespace shimwright::workshop
