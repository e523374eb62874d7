#pragma once

#include "reading_fields.h"
#include "shimwright/bench/step_page.h"

namespace shimwright::bench {

/// A reading that is an event: every attempt stays listed, and after one that is off a new one begins with a look at
/// what was in the way.
class PeakPage final : public StepPage {
  Q_OBJECT

 public:
  PeakPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] widgets::StripText strip() const override;
  [[nodiscard]] std::vector<FootAction> actions() override;
  void take_focus() override { fields_->take_focus(); }
  [[nodiscard]] bool has_unsent() const override { return !fields_->blank(); }
  [[nodiscard]] bool commit() override { return keep(); }
  bool take_burst(const std::string& text) override { return fields_->take_burst(text); }

 private:
  [[nodiscard]] const sheet::Channel& channel() const { return std::get<sheet::PeakStep>(step().body).channel; }
  [[nodiscard]] std::vector<const job::Entry*> attempts() const;
  [[nodiscard]] const job::PeakRead* last_here() const;
  [[nodiscard]] bool too_many(const job::PeakRead& peak) const;
  [[nodiscard]] bool keep();
  void take();
  void show_attempts();
  void show_back_off();

  ReadingFields* fields_;
  KeptLine* left_out_;
  widgets::Box* back_off_;
  widgets::Box* attempts_;
  std::vector<KeptLine*> lines_;
};

}  // namespace shimwright::bench
