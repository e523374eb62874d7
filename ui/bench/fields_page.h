#pragma once

#include <vector>

#include "kept_line.h"
#include "reading_fields.h"
#include "shimwright/bench/step_page.h"
#include "shimwright/job/command.h"

namespace shimwright::bench {

/// A step answered by the numbers of some channels: how they are kept, refused and left.
class FieldsPage : public StepPage {
  Q_OBJECT

 public:
  FieldsPage(Workbench& bench, const sheet::Step& step, const std::vector<const sheet::Channel*>& channels,
             QWidget* parent);

  void refresh() override;
  void take_focus() override { fields_->take_focus(); }
  [[nodiscard]] bool has_unsent() const override { return !fields_->blank(); }
  [[nodiscard]] bool commit() override { return keep(); }
  bool take_burst(const std::string& text) override { return fields_->take_burst(text); }

 protected:
  /// What the typed numbers are sent as.
  [[nodiscard]] virtual job::Command command() const = 0;

  [[nodiscard]] ReadingFields* fields() const { return fields_; }
  [[nodiscard]] KeptLine* left_out() const { return left_out_; }
  /// The step is answered and nothing else is typed: there is nothing to keep.
  [[nodiscard]] bool finished() const { return job::passed(step_state()) && fields_->blank(); }
  void take();

 private:
  [[nodiscard]] bool keep();

  ReadingFields* fields_;
  KeptLine* left_out_;
};

}  // namespace shimwright::bench
