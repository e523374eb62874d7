#pragma once

#include <optional>
#include <string>
#include <vector>

#include "depth_card.h"
#include "instrument_box.h"
#include "shim_choice.h"
#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/number_field.h"
#include "signed_field.h"

class QGridLayout;

namespace shimwright::bench {

/// The shim from measured depths: fields on the left, the sum and the sizes on the right.
class DepthPage final : public StepPage {
  Q_OBJECT

 public:
  DepthPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] widgets::StripText strip() const override;
  [[nodiscard]] std::vector<FootAction> actions() override;
  void take_focus() override;
  [[nodiscard]] bool has_unsent() const override;
  [[nodiscard]] bool commit() override { return keep(); }

 private:
  /// What stands in the fields, as texts.
  struct Typed {
    std::vector<std::string> readings;
    std::string reference;
    std::string stamp;
    friend bool operator==(const Typed&, const Typed&) = default;
  };

  void build_fields(QVBoxLayout* column);
  void add_place(int place);
  void show_places(std::size_t count);
  void go_to_field_after(const widgets::NumberField* field);
  void show_kept();
  void show_card();
  void look_at_typed();
  bool keep();
  void take(const std::string& shim);
  void ask_for_another();
  void show_refusal(const Error& error);
  [[nodiscard]] Typed typed() const;
  [[nodiscard]] std::vector<widgets::NumberField*> fields() const;
  [[nodiscard]] std::optional<std::string> chosen_shim() const;
  [[nodiscard]] const sheet::DepthSpec* depth_spec() const;
  void add_taking(std::vector<FootAction>& actions, const job::Advised& advised);

  std::optional<job::Judgement> judgement_;
  QString fault_;
  std::optional<Typed> kept_;
  bool typed_else_ = false;  ///< what stands in the fields is not what was kept
  QGridLayout* places_;
  std::vector<widgets::NumberField*> readings_;
  std::size_t places_shown_ = 0;
  widgets::Button* more_ = nullptr;
  widgets::NumberField* reference_ = nullptr;
  SignedField* stamp_ = nullptr;
  InstrumentBox* gauge_ = nullptr;
  widgets::Text* other_sign_ = nullptr;
  DepthCard* card_ = nullptr;
  ShimChoice* choice_ = nullptr;
};

}  // namespace shimwright::bench
