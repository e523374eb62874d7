#pragma once

#include <functional>
#include <string>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/quantity/error.h"
#include "shimwright/store/measurement_export.h"
#include "shimwright/store/vehicle_history.h"

class QLabel;
class QVBoxLayout;

namespace shimwright::widgets {
class BackgroundWork;
class Button;
class Scroll;
}  // namespace shimwright::widgets

namespace shimwright::past {

class FloatChart;
class JobComparison;
class LifeRow;
class PageRun;

/// What the page takes from outside, so that a test can fix it.
struct VehicleWays {
  /// Lets a person say where the file goes, beginning with a name that ends in `.csv` or `.json`; blank: nowhere.
  std::function<QString(const QString& suggestion)> choose_file;
  std::size_t most_jobs = 50;  ///< so many are read for the page
};

/// The dialog of the toolkit.
[[nodiscard]] VehicleWays usual_vehicle_ways();

/// One vehicle: its jobs, its floats over its life against the limits of each time, the wear of its packs, two of its
/// jobs compared, and its measurements as a file. Its jobs are read in a thread of their own.
class VehiclePage : public QWidget {
  Q_OBJECT

 public:
  /// The store must outlive it.
  VehiclePage(store::Store& store, VehicleWays ways, QWidget* parent = nullptr);
  ~VehiclePage() override;

  void show_vehicle(const std::string& vehicle_key);
  /// Reads what is shown anew; until that is done nothing of it can be pressed.
  void refresh();

 signals:
  void back();
  void open_record(const std::string& job);
  void new_job_for(const std::string& vehicle_key);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] QWidget* bar();
  void build_life(QVBoxLayout* column);
  void build_export(QVBoxLayout* column);
  void take(const Result<store::VehicleHistory>& read);
  void fill();
  void fill_rows();
  void fill_wear();
  void show_comparison(bool shown);
  void begin_export(store::TableForm form);
  void show_run(bool runs);
  void tell(const QString& text, bool good);

  store::Store* store_;
  VehicleWays ways_;
  store::VehicleHistory history_;
  widgets::Scroll* scroll_;
  QLabel* title_ = nullptr;
  QLabel* under_title_ = nullptr;
  QLabel* refused_ = nullptr;
  QLabel* reading_ = nullptr;
  QWidget* life_ = nullptr;
  QVBoxLayout* rows_ = nullptr;
  QLabel* older_ = nullptr;
  std::vector<LifeRow*> row_buttons_;
  FloatChart* lower_ = nullptr;
  FloatChart* upper_ = nullptr;
  QWidget* numbers_ = nullptr;
  QWidget* wear_ = nullptr;
  JobComparison* comparison_ = nullptr;
  widgets::Button* back_ = nullptr;
  widgets::Button* compare_ = nullptr;
  widgets::Button* new_job_ = nullptr;
  widgets::Button* csv_ = nullptr;
  widgets::Button* json_ = nullptr;
  widgets::Button* stop_ = nullptr;
  QLabel* told_ = nullptr;
  PageRun* run_;
  widgets::BackgroundWork* work_;
};

}  // namespace shimwright::past
