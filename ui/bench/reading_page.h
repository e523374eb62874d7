#pragma once

#include "reading_fields.h"
#include "shimwright/bench/step_page.h"

namespace shimwright::bench {

/// A step that asks for numbers.
class ReadingPage final : public StepPage {
  Q_OBJECT

 public:
  ReadingPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] widgets::StripText strip() const override;
  [[nodiscard]] std::vector<FootAction> actions() override;
  void take_focus() override { fields_->take_focus(); }
  [[nodiscard]] bool has_unsent() const override { return !fields_->blank(); }
  [[nodiscard]] bool commit() override { return keep(); }
  bool take_burst(const std::string& text) override { return fields_->take_burst(text); }

 private:
  [[nodiscard]] bool keep();
  void take();
  void show_reading(const sheet::Channel& channel);

  ReadingFields* fields_;
  KeptLine* left_out_;
};

}  // namespace shimwright::bench
