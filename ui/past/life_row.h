#pragma once

#include <QAbstractButton>

#include "shimwright/store/vehicle_history.h"
#include "shimwright/widgets/marks.h"

namespace shimwright::past {

/// One job of a vehicle: number, odometer, state, shims, floats with their verdicts. Its accessible name is all it
/// says. Pressed, its record opens.
class LifeRow : public QAbstractButton {
  Q_OBJECT

 public:
  explicit LifeRow(const store::JobOfVehicle& job, QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override { return {560, 68}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {480, 68}; }

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  store::JobOfVehicle job_;
};

/// `121400 km`; a dash where it was not noted.
[[nodiscard]] QString odometer_words(const record::JobInLife& job);
/// `signed, 1 addendum`, `open`, `waits for the customer`.
[[nodiscard]] QString state_words(const store::JobOfVehicle& job);
/// `within`, `too large`, `mixed`; blank where nothing was judged.
[[nodiscard]] QString verdict_words(record::ReadingVerdict verdict);
[[nodiscard]] widgets::Mark verdict_mark(record::ReadingVerdict verdict);

}  // namespace shimwright::past
