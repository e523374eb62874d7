#pragma once

#include <optional>
#include <vector>

#include <QWidget>

#include "shimwright/widgets/marks.h"

namespace shimwright::widgets {

struct DiscSpot {
  int number = 1;
  double angle_deg = 0;  ///< 0 is up, clockwise
  Mark mark = Mark::none;
  bool next = false;  ///< to be measured now: ringed in blue
};

/// The disc from above with its marked spots; the arrow points where it stands highest.
class DiscView : public QWidget {
  Q_OBJECT

 public:
  explicit DiscView(QWidget* parent = nullptr);
  void set_spots(const std::vector<DiscSpot>& spots, std::optional<double> high_at_deg);
  [[nodiscard]] QSize sizeHint() const override { return {176, 176}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::vector<DiscSpot> spots_;
  std::optional<double> high_at_deg_;
};

}  // namespace shimwright::widgets
