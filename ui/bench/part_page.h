#pragma once

#include <vector>

#include "kept_line.h"
#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/number_field.h"

namespace shimwright::bench {

/// Parts that are renewed, a row each: a tick, its number, how many, batch. What is not ticked is not said to be
/// renewed; a number left blank is as the spec sheet has it.
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
  bool take_digit(int digit) override;

 private:
  struct Row {
    const sheet::PartItem* item = nullptr;
    widgets::Button* tick = nullptr;
    widgets::WordField* number = nullptr;
    widgets::NumberField* quantity = nullptr;
    widgets::WordField* batch = nullptr;
    KeptLine* kept = nullptr;
    bool renewed = false;  ///< an entry says so; what is typed then puts it right

    [[nodiscard]] bool typed() const;
    /// Ticked, or put right, and in no entry yet.
    [[nodiscard]] bool to_send() const;
  };

  void add_row(const sheet::PartItem& item, QVBoxLayout* column);
  void add_tick(Row& row, widgets::Box* box);
  void add_fields(Row& row, widgets::Box* box);
  void show_kept(Row& row);
  void chain_rows();
  static void show_tick(const Row& row);
  static void clear_row(const Row& row);
  void clear();
  void take();
  [[nodiscard]] bool typed(std::vector<job::PartFitted>& parts);

  std::vector<Row> rows_;
  KeptLine* left_out_;
  KeyLine* keys_;
  UnsentBox* unsent_ = nullptr;
};

}  // namespace shimwright::bench
