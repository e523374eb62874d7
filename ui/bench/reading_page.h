#pragma once

#include "fields_page.h"

namespace shimwright::bench {

/// A step that asks for numbers.
class ReadingPage final : public FieldsPage {
  Q_OBJECT

 public:
  ReadingPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] widgets::StripText strip() const override;
  [[nodiscard]] std::vector<FootAction> actions() override;

 protected:
  [[nodiscard]] job::Command command() const override;

 private:
  void show_reading(const sheet::Channel& channel);
};

}  // namespace shimwright::bench
