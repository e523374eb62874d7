#pragma once

#include <map>

#include <QWidget>

#include "shimwright/sheet/words.h"

namespace shimwright::widgets {

/// What the half section shows.
struct PackView {
  sheet::Drawing part = sheet::Drawing::none;  ///< in hand now: amber with an edge
  sheet::Side live = sheet::Side::lower;       ///< this side strong, the other pale; both strong for none
  bool one_side = false;                       ///< whether `live` counts
  std::map<sheet::Side, double> shim_mm;       ///< thickness laid, drawn exaggerated; unset: not chosen yet
  friend bool operator==(const PackView&, const PackView&) = default;
};

/// Our own half section of a dry double pack on its shaft, painted from numbers; no likeness of any maker's part.
class PackDrawing : public QWidget {
  Q_OBJECT

 public:
  explicit PackDrawing(QWidget* parent = nullptr);
  void set_view(const PackView& view);
  [[nodiscard]] const PackView& view() const { return view_; }
  [[nodiscard]] QSize sizeHint() const override { return {232, 460}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  PackView view_;
};

}  // namespace shimwright::widgets
