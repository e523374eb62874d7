#pragma once

#include <optional>
#include <string>
#include <vector>

#include "float_entry.h"
#include "float_table.h"
#include "shim_choice.h"
#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/disc_view.h"
#include "shimwright/widgets/limit_strip.h"

namespace shimwright::bench {

/// The float of a disc at its spots: entered run by run, judged by the engine, and what to do about it.
class FloatPage final : public StepPage {
  Q_OBJECT

 public:
  FloatPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] widgets::StripText strip() const override;
  [[nodiscard]] std::vector<FootAction> actions() override;
  void take_focus() override;
  [[nodiscard]] bool says_what_to_do() const override { return judgement_ && !measuring(); }
  [[nodiscard]] bool has_unsent() const override { return !entry_->isHidden() && !entry_->blank(); }
  [[nodiscard]] bool commit() override { return !has_unsent() || keep_run(); }

 private:
  using Runs = std::vector<std::vector<const job::FloatRun*>>;

  void build();
  void show_advice();
  void show_entry(const Runs& runs);
  void show_disc(const Runs& runs);
  void show_promises();
  bool keep_run();
  /// Without spots: all of them.
  void begin_series(job::SeriesReason reason, const std::vector<int>& spots = {});
  void add_one_spot(std::vector<FootAction>& actions);
  void ask_for_shim();
  void change_to(const std::string& shim);
  void add_deciding(std::vector<FootAction>& actions, job::Conclusion conclusion);
  [[nodiscard]] bool measuring() const;
  [[nodiscard]] bool as_found() const { return std::get<sheet::FloatStep>(step().body).as_found; }
  [[nodiscard]] bool method_forbids() const { return as_found() && !float_spec().as_found; }
  [[nodiscard]] const sheet::FloatSpec& float_spec() const { return spec().side(step().its_side()).disc_float; }
  [[nodiscard]] int next_spot(const Runs& runs) const;
  [[nodiscard]] QString earlier_words() const;

  std::optional<job::Judgement> judgement_;
  QString fault_;
  std::optional<int> spot_picked_;
  bool promises_shown_ = false;
  bool edited_ = false;
  widgets::Box* advice_ = nullptr;
  ShimChoice* choice_ = nullptr;
  FloatEntry* entry_ = nullptr;
  widgets::LimitStrip* limits_ = nullptr;
  widgets::DiscView* disc_ = nullptr;
  FloatTable* table_ = nullptr;
  widgets::Text* facts_ = nullptr;
  PromiseTable* promises_ = nullptr;
};

}  // namespace shimwright::bench
