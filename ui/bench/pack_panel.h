#pragma once

#include <vector>

#include <QFrame>
#include <QLabel>

#include "job_words.h"
#include "shimwright/widgets/pack_drawing.h"

namespace shimwright::bench {

/// Where you are: four numbers above the half section.
class PackPanel : public QFrame {
  Q_OBJECT

 public:
  explicit PackPanel(QWidget* parent);
  void show_state(const job::JobState& state, const job::Context& context, const sheet::Step* step);

 private:
  struct Line {
    QLabel* title;
    QLabel* value;
  };
  std::vector<Line> lines_;
  widgets::PackDrawing* drawing_;
};

}  // namespace shimwright::bench
