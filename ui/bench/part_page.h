#pragma once

#include <map>
#include <vector>

#include "kept_line.h"
#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/number_field.h"

namespace shimwright::bench {

/// Parts that are renewed: number, how many, batch. What is left blank is as the spec sheet has it.
class PartPage final : public StepPage {
  Q_OBJECT

 public:
  PartPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] std::vector<FootAction> actions() override;
  void take_focus() override;
  [[nodiscard]] bool has_unsent() const override;
  [[nodiscard]] bool commit() override;
  bool take_burst(const std::string& text) override;

 private:
  struct Row {
    const sheet::PartItem* item = nullptr;
    widgets::WordField* number = nullptr;
    widgets::NumberField* quantity = nullptr;
    widgets::WordField* batch = nullptr;
    KeptLine* kept = nullptr;
  };

  void add_row(const sheet::PartItem& item, QVBoxLayout* column);
  void chain_rows();
  void clear();
  void take();
  [[nodiscard]] bool typed(std::vector<job::PartFitted>& parts);

  std::vector<Row> rows_;
  KeptLine* left_out_;
  UnsentBox* unsent_ = nullptr;
};

}  // namespace shimwright::bench
