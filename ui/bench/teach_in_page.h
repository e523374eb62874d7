#pragma once

#include <vector>

#include "kept_line.h"
#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/number_field.h"

namespace shimwright::bench {

/// A basic setting: values before and after, completed or aborted, the latter with code and reason. Every attempt stays
/// listed.
class TeachInPage final : public StepPage {
  Q_OBJECT

 public:
  TeachInPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] widgets::StripText strip() const override;
  void take_focus() override;
  [[nodiscard]] bool has_unsent() const override;
  [[nodiscard]] bool commit() override;
  bool take_burst(const std::string& text) override;
  bool take_digit(int digit) override;

 private:
  struct Row {
    const sheet::Channel* channel = nullptr;
    widgets::NumberField* before = nullptr;
    widgets::NumberField* after = nullptr;
  };

  void add_values(QVBoxLayout* column);
  void add_answers(QVBoxLayout* column);
  void chain_fields();
  [[nodiscard]] std::vector<widgets::NumberField*> fields() const;
  [[nodiscard]] bool readable();
  void answer(bool completed);
  void say_refusal(const Error& error);
  void clear();
  void show_attempts();
  [[nodiscard]] QString words_of(const job::TeachInTried& tried) const;
  [[nodiscard]] const job::Reading* read_after() const;

  std::vector<Row> rows_;
  widgets::Button* completed_ = nullptr;
  widgets::Button* aborted_ = nullptr;
  widgets::WordField* code_ = nullptr;
  widgets::WordField* reason_ = nullptr;
  widgets::Text* missing_ = nullptr;
  KeyLine* keys_ = nullptr;
  UnsentBox* unsent_ = nullptr;
  KeptLine* left_out_ = nullptr;
  widgets::Box* attempts_ = nullptr;
  std::vector<KeptLine*> lines_;
};

}  // namespace shimwright::bench
