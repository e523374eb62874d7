#pragma once

#include <optional>
#include <vector>

#include <QPointF>
#include <QString>
#include <QWidget>

#include "shimwright/widgets/marks.h"

namespace shimwright::past {

/// The float of one disc as one job judged it.
struct ChartPoint {
  double x = 0;    ///< kilometres, or days where an odometer is missing
  QString x_text;  ///< `88150 km`
  QString job;     ///< number
  bool as_found = false;
  bool so_far = false;  ///< of a job that goes on
  double mm = 0;
  std::optional<double> u_mm;  ///< half width at 95 %
  double least_mm = 0;         ///< limits of the job's own spec sheet
  double most_mm = 0;
  QString verdict;                           ///< in words
  widgets::Mark mark = widgets::Mark::none;  ///< drawn beside what is not within
  QString pack;                              ///< serial of the pack it was measured on; blank: not known
};

/// The float of one disc over the life of a vehicle. A final float is a disc, one as found a ring, one of a job that
/// goes on a ring with a dot; those of one pack
/// are joined. Behind them lie the limits of each time as a band.
class FloatChart : public QWidget {
  Q_OBJECT

 public:
  explicit FloatChart(const QString& title, QWidget* parent = nullptr);
  /// In the order of time.
  void set_points(std::vector<ChartPoint> points);
  /// Where each point lies, in pixels.
  [[nodiscard]] std::vector<QPointF> places() const;
  [[nodiscard]] QSize sizeHint() const override { return {420, 280}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {300, 280}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QString title_;
  std::vector<ChartPoint> points_;
};

}  // namespace shimwright::past
