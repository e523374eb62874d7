#pragma once

#include "fields_page.h"

namespace shimwright::bench {

/// A reading that is an event: every attempt stays listed, and after one that is off a new one begins with a look at
/// what was in the way.
class PeakPage final : public FieldsPage {
  Q_OBJECT

 public:
  PeakPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] widgets::StripText strip() const override;
  [[nodiscard]] std::vector<FootAction> actions() override;
  void take_focus() override;

 protected:
  [[nodiscard]] job::Command command() const override;

 private:
  [[nodiscard]] std::vector<const job::Entry*> attempts() const;
  [[nodiscard]] const job::PeakRead* last_here() const;
  [[nodiscard]] bool too_many(const job::PeakRead& peak) const;
  [[nodiscard]] bool to_back_off() const;
  void show_attempts();
  void show_back_off();

  std::size_t looked_after_ = 0;  ///< attempts there were when a person said to look
  widgets::Box* back_off_;
  widgets::Box* attempts_;
  std::vector<KeptLine*> lines_;
};

}  // namespace shimwright::bench
