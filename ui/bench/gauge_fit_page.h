#pragma once

#include <optional>
#include <string>
#include <vector>

#include "gauge_fit_lines.h"
#include "shim_choice.h"
#include "shimwright/bench/step_page.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// Which shim seats the gauge snug: try, say what is felt, and take the one the trials settle on.
class GaugeFitPage final : public StepPage {
  Q_OBJECT

 public:
  GaugeFitPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] widgets::StripText strip() const override;
  [[nodiscard]] std::vector<FootAction> actions() override;
  void take_focus() override;
  bool take_burst(const std::string& text) override;
  bool take_digit(int digit) override;

 private:
  void build_answers();
  void show_notice();
  void show_rows();
  void show_answers();
  void show_hand();
  void ask_for_another();
  void pick(const std::string& shim);
  void say_fit(shim::Fit fit);
  void take(const std::string& shim);
  void take_back(std::size_t trial);
  void add_taking(std::vector<FootAction>& actions, bool settled);
  [[nodiscard]] const job::Advised* advice_of_float() const;
  [[nodiscard]] std::optional<std::string> advised_shim() const;
  [[nodiscard]] std::optional<std::string> shim_in_hand() const;
  [[nodiscard]] std::optional<std::string> chosen_shim() const;
  [[nodiscard]] std::size_t trials() const { return job::present_trials(state(), step()).size(); }

  std::optional<job::Judgement> judgement_;
  QString fault_;  ///< why there is no judgement
  std::optional<std::string> picked_;
  widgets::Box* notice_;
  QWidget* notice_buttons_ = nullptr;
  ShimChoice* choice_;
  widgets::ShimRows* rows_ = nullptr;
  QWidget* rows_place_;
  widgets::Text* line_;
  widgets::Text* asked_;
  QWidget* answers_;
  std::vector<widgets::Button*> answer_buttons_;
};

}  // namespace shimwright::bench
