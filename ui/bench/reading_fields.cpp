#include "reading_fields.h"

#include <algorithm>

#include "reading_words.h"
#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

using widgets::child_of;
using widgets::NumberField;
using widgets::qt;

namespace {

constexpr int field_width = 384;
constexpr int instrument_width = 344;

/// Instruments that an entry's readings were taken with.
std::vector<const job::InstrumentUsed*> instruments_of(const job::EntryBody& body) {
  std::vector<const job::InstrumentUsed*> found;
  const auto add = [&](const std::optional<job::InstrumentUsed>& used) {
    if (used) {
      found.push_back(&*used);
    }
  };
  if (const auto* read = std::get_if<job::Read>(&body)) {
    for (const job::Reading& each : read->readings) {
      add(each.instrument);
    }
  } else if (const auto* peak = std::get_if<job::PeakRead>(&body)) {
    add(peak->reading.instrument);
  }
  return found;
}

bool is_of_kind(const std::vector<job::Instrument>& known, const std::string& id, sheet::InstrumentKind kind) {
  return std::any_of(known.begin(), known.end(),
                     [&](const job::Instrument& each) { return each.id == id && each.kind == kind; });
}

}  // namespace

ReadingFields::ReadingFields(Workbench& bench, const std::vector<const sheet::Channel*>& channels, QWidget* parent)
    : QWidget(parent), bench_(&bench), column_(widgets::lay<QVBoxLayout>(this, 14)) {
  for (const sheet::Channel* channel : channels) {
    add_field(*channel);
  }
  for (const sheet::Channel* channel : channels) {
    add_instrument(*channel);
  }
  refresh();
}

void ReadingFields::add_field(const sheet::Channel& channel) {
  auto* line = widgets::lay_in<QHBoxLayout>(column_, 20);
  Row row;
  row.channel = &channel;
  const QString title = qt(channel.title.in(window_language()));
  const std::size_t at = rows_.size();
  QWidget* field = nullptr;
  if (channel.signed_value) {
    row.with_sign = child_of<SignedField>(this, title);
    row.with_sign->name(qt(channel.id));
    row.number = row.with_sign->number();
    connect(row.with_sign, &SignedField::edited, this, [this, field = row.with_sign] {
      const auto number = quantity::read_number(field->text(), field->number()->unit());
      field->set_hint(number ? tr("taken as %1").arg(number_words(*number, true)) : QString());
      emit edited();
    });
    connect(row.with_sign, &SignedField::entered, this, [this, at] { go_on_from(at); });
    field = row.with_sign;
  } else {
    row.number = child_of<NumberField>(this, title, channel.unit);
    row.number->edit()->setObjectName(qt("field-" + channel.id));
    connect(row.number, &NumberField::edited, this, &ReadingFields::edited);
    connect(row.number, &NumberField::entered, this, [this, at] { go_on_from(at); });
    field = row.number;
  }
  if (const sheet::Limit* limit = limit_of(*bench_->state().sheets.spec, channel)) {
    row.number->set_hint(limit_words(*limit));
  } else if (const sheet::Step* other =
                 channel.equals ? bench_->state().sheets.job->find(channel.equals->step) : nullptr) {
    row.number->set_hint(tr("Compared with “%1”.").arg(qt(other->title.in(window_language()))));
  }
  field->setFixedWidth(field_width);
  line->addWidget(field, 0, Qt::AlignTop);
  row.kept = child_of<KeptLine>(this);
  row.kept->setObjectName(qt("kept-" + channel.id));
  row.kept->setContentsMargins(0, 40, 0, 0);
  line->addWidget(row.kept, 1);
  line->addStretch(0);
  rows_.push_back(row);
}

void ReadingFields::add_instrument(const sheet::Channel& channel) {
  if (!channel.instrument || instruments_.count(*channel.instrument) > 0) {
    return;
  }
  auto* place = widgets::lay_in<QVBoxLayout>(column_, 4);
  const QString title = instrument_title(*channel.instrument);
  place->addWidget(child_of<widgets::Text>(this, title, "small"));
  auto* box = child_of<InstrumentBox>(this, title, *channel.instrument);
  box->setObjectName(qt("instrument-" + std::string(sheet::name_of(*channel.instrument))));
  box->setMinimumWidth(instrument_width);
  place->addWidget(box, 0, Qt::AlignLeft);
  instruments_[*channel.instrument] = box;
}

std::string ReadingFields::last_used(sheet::InstrumentKind kind) const {
  std::string found;
  for (const job::Entry* entry : bench_->state().live()) {
    for (const job::InstrumentUsed* used : instruments_of(entry->body)) {
      found = is_of_kind(bench_->context().instruments, used->id, kind) ? used->id : found;
    }
  }
  return found;
}

void ReadingFields::refresh() {
  for (const auto& [kind, box] : instruments_) {
    box->offer(bench_->context().instruments, bench_->now());
    if (!offered_) {
      box->choose(last_used(kind));
    }
  }
  offered_ = true;
}

void ReadingFields::show_kept(const std::string& channel, widgets::Mark mark, const QString& words, bool bad) {
  for (Row& row : rows_) {
    if (row.channel->id == channel) {
      row.kept->show_words(mark, words, bad);
      row.has_kept = !words.isEmpty();
      row.number->set_may_be_blank(row.has_kept);
    }
  }
}

bool ReadingFields::blank() const {
  return std::all_of(rows_.begin(), rows_.end(), [](const Row& row) { return row.number->blank(); });
}

bool ReadingFields::readable() {
  for (const Row& row : rows_) {
    if (const auto number = row.number->number(); !row.number->blank() && !number) {
      row.number->set_fault(widgets::say(number.error()));
      row.number->take_focus();
      return false;
    }
  }
  return true;
}

void ReadingFields::ask_for_number() {
  if (rows_.empty()) {
    return;
  }
  NumberField* first = rows_.front().number;
  if (const auto number = first->number(); !number) {
    first->set_fault(widgets::say(number.error()));
  }
  first->take_focus();
}

std::vector<job::TypedReading> ReadingFields::typed() const {
  std::vector<job::TypedReading> readings;
  for (const Row& row : rows_) {
    if (row.number->blank()) {
      continue;
    }
    // A number whose sign is not chosen goes out as it is typed: the job logic knows what to say to it.
    const std::string with_sign = row.with_sign == nullptr ? std::string() : row.with_sign->text();
    const auto box = row.channel->instrument ? instruments_.find(*row.channel->instrument) : instruments_.end();
    readings.push_back({row.channel->id, with_sign.empty() ? row.number->text() : with_sign,
                        box == instruments_.end() ? std::string() : box->second->id()});
  }
  return readings;
}

void ReadingFields::clear() {
  for (const Row& row : rows_) {
    if (row.with_sign != nullptr) {
      row.with_sign->set_text({});
    } else {
      row.number->set_text({});
    }
  }
}

void ReadingFields::take_focus() {
  for (const Row& row : rows_) {
    if (row.number->blank() && !row.has_kept) {
      row.number->take_focus();
      return;
    }
  }
  if (!rows_.empty()) {
    rows_.front().number->take_focus();
  }
}

bool ReadingFields::take_burst(const std::string& text) {
  const auto free = std::find_if(rows_.begin(), rows_.end(), [](const Row& row) { return row.number->blank(); });
  if (free == rows_.end()) {
    return false;
  }
  const Row& row = *free;
  if (row.with_sign != nullptr) {
    row.with_sign->set_text(text);
  } else {
    row.number->set_text(text);
  }
  if (const auto number = row.number->number(); !number) {
    row.number->set_fault(widgets::say(number.error()));
    row.number->take_focus();
    return true;
  }
  go_on_from(static_cast<std::size_t>(free - rows_.begin()));
  return true;
}

bool ReadingFields::show_refusal(const Error& error) {
  for (const Row& row : rows_) {
    const std::string ending = "/" + row.channel->id;
    const std::string& place = error.place;
    if (place.size() >= ending.size() && place.compare(place.size() - ending.size(), ending.size(), ending) == 0) {
      row.number->set_fault(widgets::say(error));
      row.number->take_focus();
      return true;
    }
  }
  return false;
}

void ReadingFields::go_on_from(std::size_t at) {
  if (at + 1 < rows_.size()) {
    rows_[at + 1].number->take_focus();
  } else {
    complete();
  }
}

void ReadingFields::complete() {
  if (blank() || !readable()) {
    return;
  }
  for (const Row& row : rows_) {
    if (row.number->blank() && !row.has_kept) {
      row.number->take_focus();
      return;
    }
  }
  emit completed();
}

}  // namespace shimwright::bench
