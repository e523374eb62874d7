#pragma once

#include <QAbstractButton>

#include "shimwright/widgets/marks.h"

namespace shimwright::workshop {

/// One item of a register in its list: what it is called, what is kept of it below, and a mark where it wants
/// attention. Pressed, it is opened. Its accessible name is all it says.
class RegisterRow : public QAbstractButton {
  Q_OBJECT

 public:
  RegisterRow(const QString& name, const QString& kept, QWidget* parent = nullptr);
  void set_mark(widgets::Mark mark);
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  [[nodiscard]] QFont name_font() const;
  [[nodiscard]] int text_width(int width) const;
  [[nodiscard]] int height_at(int width) const;

  QString kept_;
  widgets::Mark mark_ = widgets::Mark::none;
  bool has_marks_ = false;  ///< in its list; without them no room is left for one
};

}  // namespace shimwright::workshop
