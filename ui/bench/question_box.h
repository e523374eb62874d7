#pragma once

#include <vector>

#include <QFrame>

#include "shimwright/bench/workbench.h"
#include "shimwright/sheet/job_sheet.h"

class QVBoxLayout;

namespace shimwright::bench {

/// What was entered and looks wrong: each question with the button that says it is right as it stands. Entering it anew
/// is the other answer, and the page's own.
class QuestionBox : public QFrame {
  Q_OBJECT

 public:
  explicit QuestionBox(QWidget* parent);
  void show_state(const job::StepState& state);

 signals:
  void confirmed(const std::string& question);

 private:
  std::vector<job::Question> shown_;
  QWidget* content_ = nullptr;
  QVBoxLayout* outer_;
};

}  // namespace shimwright::bench
