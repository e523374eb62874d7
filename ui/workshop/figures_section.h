#pragma once

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/store/figures.h"
#include "shimwright/store/measurement_export.h"
#include "shimwright/widgets/number_field.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/workshop/workshop_ways.h"
#include "work_card.h"

namespace shimwright::workshop {

/// The card that says of which time the figures are and what counts as back soon, and reads them in the background.
class FiguresCard : public WorkCard {
  Q_OBJECT

 public:
  FiguresCard(store::Store& store, WorkshopWays ways, QWidget* parent);

  /// Reads them anew; nothing while it reads already, or where a field cannot be read.
  void read();
  [[nodiscard]] store::Period period() const;

 signals:
  void came(const shimwright::store::Figures& figures);

 private:
  void choose_months(int months);
  [[nodiscard]] std::optional<store::BackWithin> within();

  store::Store* store_;
  WorkshopWays ways_;
  int months_ = 12;      ///< 0: all there are
  bool wanted_ = false;  ///< others, while some are being read
  std::vector<std::pair<int, widgets::Button*>> spans_;
  widgets::NumberField* distance_;
  widgets::NumberField* days_;
};

/// The card that writes the measurements of that time to a file.
class PeriodExportCard : public WorkCard {
  Q_OBJECT

 public:
  PeriodExportCard(store::Store& store, WorkshopWays ways, std::function<store::Period()> period, QWidget* parent);

 private:
  void begin(store::TableForm form);

  store::Store* store_;
  WorkshopWays ways_;
  std::function<store::Period()> period_;
};

/// What all jobs say of the workshop; each figure opens its jobs.
class FiguresSection : public QWidget {
  Q_OBJECT

 public:
  FiguresSection(store::Store& store, WorkshopWays ways, QWidget* parent = nullptr);
  void refresh() { card_->read(); }
  [[nodiscard]] bool works() const { return card_->works(); }

 signals:
  void jobs_wanted(const QString& heading, const std::vector<std::string>& jobs);

 private:
  void show_figures(const store::Figures& figures);
  struct Figure {
    QString title;
    QString number;
    double share;  ///< below 0: without a bar
    store::JobIds jobs;
  };

  void add_row(widgets::Box* box, const Figure& figure);
  static void align_bars(const widgets::Box& box);
  [[nodiscard]] widgets::Box* add_box(const QString& heading, const QString& text);
  void show_months(const store::Figures& figures);
  void show_shims(const store::Figures& figures);
  void show_returns(const store::Figures& figures);

  FiguresCard* card_;
  QWidget* shown_;
  QVBoxLayout* column_;
};

}  // namespace shimwright::workshop
