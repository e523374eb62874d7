#pragma once

#include <string>
#include <utility>
#include <vector>

#include <QAbstractButton>
#include <QFrame>

#include "shimwright/job/state.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// A line of the sheet: mark, words, and what is said at its end.
class SheetRow : public QAbstractButton {
  Q_OBJECT

 public:
  SheetRow(const QString& text, bool is_stage, QWidget* parent);
  void set_look(widgets::Mark mark, const QString& end, bool here);
  /// As high as its words need, at least what a finger hits.
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] QFont type_of_words(bool strong) const;
  [[nodiscard]] int width_of_end() const;

  bool is_stage_;
  bool here_ = false;
  widgets::Mark mark_ = widgets::Mark::open;
  QString end_;
};

/// The job sheet on the left: every stage, and the steps of the one that is open.
class SheetList : public QFrame {
  Q_OBJECT

 public:
  explicit SheetList(QWidget* parent);
  void show_state(const job::JobState& state, const std::string& step_id, const std::string& language);

 signals:
  void step_wanted(const std::string& step_id);
  void stage_wanted(const std::string& stage_id);

 private:
  void build(const job::JobState& state, const std::string& stage_id, const std::string& language);
  void draw(const job::JobState& state, const std::string& step_id);

  widgets::Scroll* scroll_;
  std::string stage_id_;
  std::string job_;
  std::vector<std::pair<std::string, SheetRow*>> stages_;
  std::vector<std::pair<std::string, SheetRow*>> steps_;
};

}  // namespace shimwright::bench
