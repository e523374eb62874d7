#include "fields_page.h"

#include "reading_words.h"
#include "shimwright/widgets/child.h"

namespace shimwright::bench {

FieldsPage::FieldsPage(Workbench& bench, const sheet::Step& step, const std::vector<const sheet::Channel*>& channels,
                       QWidget* parent)
    : StepPage(bench, step, parent),
      fields_(widgets::child_of<ReadingFields>(this, bench, channels)),
      left_out_(widgets::child_of<KeptLine>(this)) {
  connect(fields_, &ReadingFields::edited, this, &StepPage::look_changed);
  connect(fields_, &ReadingFields::completed, this, &FieldsPage::take);
}

void FieldsPage::refresh() {
  fields_->refresh();
  left_out_->show_words(widgets::Mark::deviation, left_out_words(bench(), step_state()));
}

void FieldsPage::take() {
  if (fields_->blank()) {
    fields_->ask_for_number();
    return;
  }
  if (!keep()) {
    return;
  }
  if (job::passed(step_state())) {
    emit leaves();
  } else {
    take_focus();
  }
}

bool FieldsPage::keep() {
  if (fields_->blank()) {
    return true;
  }
  if (!fields_->readable()) {
    return false;
  }
  const auto entries = bench().send(command());
  if (!entries) {
    if (!fields_->show_refusal(entries.error())) {
      emit refused(entries.error());
    }
    return false;
  }
  fields_->clear();
  refresh();
  emit look_changed();
  return true;
}

}  // namespace shimwright::bench
