#pragma once

#include <optional>

#include <QAbstractButton>
#include <QFont>

#include "shimwright/store/types.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/style.h"

namespace shimwright::past {

/// `24 Nov 2026`, by this machine's days.
[[nodiscard]] QString day_of(std::int64_t at_ms);
/// `open`, `parked`, `closed`, with the shape that says the same.
[[nodiscard]] QString standing_word(store::JobStanding standing);
[[nodiscard]] widgets::Mark standing_mark(store::JobStanding standing);
/// `VIN`, `plate`, …
[[nodiscard]] QString place_word(store::FoundIn place);

/// The type of a line in a row.
[[nodiscard]] QFont row_font(const QFont& base, int pixels, bool strong);
/// Two lines of a column, the upper strong, cut where the column ends.
void paint_lines(QPainter& painter, const QRect& box, const QString& upper, const QString& lower,
                 const widgets::Colours& colours, Qt::TextElideMode elide = Qt::ElideRight);

/// Why a job stands in a list of results.
struct Finding {
  store::FoundIn place = store::FoundIn::vehicle;
  QString term;  ///< what was found there
  bool exact = true;
  QString sought;           ///< as it was typed
  bool taken_back = false;  ///< it counts no longer in this job
};

/// A job as one row to press: number and day, vehicle and plate, standing, where it was found.
class JobRow : public QAbstractButton {
  Q_OBJECT

 public:
  JobRow(const store::JobSummary& job, std::optional<Finding> finding, QWidget* parent = nullptr);

  [[nodiscard]] const store::JobSummary& job() const { return job_; }
  [[nodiscard]] QSize sizeHint() const override { return {600, 68}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {360, 68}; }

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] QString under_standing() const;
  [[nodiscard]] QString under_finding() const;
  [[nodiscard]] QString before_term() const;
  [[nodiscard]] QString how_near(const Finding& finding) const;
  /// Whether what was found stands in the row anyway.
  [[nodiscard]] bool is_shown() const;
  void paint_vehicle(QPainter& painter, const QRect& box) const;

  store::JobSummary job_;
  std::optional<Finding> finding_;
};

}  // namespace shimwright::past
