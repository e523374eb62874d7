#pragma once

#include "kept_line.h"
#include "shimwright/bench/step_page.h"

class QLineEdit;
class QPlainTextEdit;

namespace shimwright::bench {

/// A step answered in words. A serial has one line, which a scanner may end with Enter; other words have several.
class TextPage final : public StepPage {
  Q_OBJECT

 public:
  TextPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] std::vector<FootAction> actions() override;
  void take_focus() override;
  [[nodiscard]] bool has_unsent() const override { return !typed().empty(); }
  [[nodiscard]] bool commit() override { return keep(); }
  bool take_burst(const std::string& text) override;

 private:
  [[nodiscard]] std::string typed() const;
  void set_typed(const QString& text);
  [[nodiscard]] const job::Entry* kept() const;
  [[nodiscard]] bool keep();
  void take();
  void take_over();

  QLineEdit* line_ = nullptr;        ///< of a serial
  QPlainTextEdit* lines_ = nullptr;  ///< of anything else
  KeptLine* kept_;
  KeptLine* left_out_;
  widgets::Button* again_ = nullptr;
};

}  // namespace shimwright::bench
