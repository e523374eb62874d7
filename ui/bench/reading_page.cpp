#include "reading_page.h"

#include "reading_words.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "step_pages.h"

namespace shimwright::bench {

using widgets::child_of;

namespace {

const std::vector<sheet::Channel>& channels_of(const sheet::Step& step) {
  return std::get<sheet::ReadStep>(step.body).channels;
}

std::vector<const sheet::Channel*> pointers_to(const std::vector<sheet::Channel>& channels) {
  std::vector<const sheet::Channel*> pointers;
  for (const sheet::Channel& each : channels) {
    pointers.push_back(&each);
  }
  return pointers;
}

}  // namespace

ReadingPage::ReadingPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : FieldsPage(bench, step, pointers_to(channels_of(step)), parent) {
  auto* column = widgets::lay<QVBoxLayout>(this, 14);
  column->addWidget(left_out());
  column->addWidget(fields());
  refresh();
}

void ReadingPage::refresh() {
  FieldsPage::refresh();
  for (const sheet::Channel& channel : channels_of(step())) {
    show_reading(channel);
  }
}

void ReadingPage::show_reading(const sheet::Channel& channel) {
  widgets::Mark mark = widgets::Mark::none;
  QString words;
  bool bad = false;
  for (const job::Entry* entry : job::present_entries(state(), step())) {
    const auto* read = std::get_if<job::Read>(&entry->body);
    if (read == nullptr) {
      continue;
    }
    for (const job::Reading& reading : read->readings) {
      if (reading.channel == channel.id) {
        mark = mark_of(reading.verdict);
        bad = is_off(reading.verdict);
        words = tr("kept: %1, %2").arg(judged_number_words(reading, channel.signed_value), by_whom(bench(), *entry));
      }
    }
  }
  fields()->show_kept(channel.id, mark, words, bad);
}

widgets::StripText ReadingPage::strip() const {
  const job::Read* last = nullptr;
  for (const job::Entry* entry : job::present_entries(state(), step())) {
    const auto* read = std::get_if<job::Read>(&entry->body);
    last = read == nullptr ? last : read;
  }
  const job::Reading* shown = nullptr;
  if (last != nullptr) {
    for (const job::Reading& reading : last->readings) {
      shown = shown == nullptr || !is_off(shown->verdict) ? &reading : shown;
    }
  }
  return shown == nullptr ? widgets::StripText{} : strip_of(*shown);
}

std::vector<FootAction> ReadingPage::actions() {
  if (finished()) {
    return {};
  }
  const QString text = channels_of(step()).size() == 1 ? tr("Keep the reading") : tr("Keep the readings");
  return {{"take", text, [this] { take(); }, true}};
}

job::Command ReadingPage::command() const {
  return job::EnterReadings{step().id, fields()->typed()};
}

StepPage* make_reading_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<ReadingPage>(parent, bench, step);
}

}  // namespace shimwright::bench
