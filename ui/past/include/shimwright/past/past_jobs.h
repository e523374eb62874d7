#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/quantity/error.h"
#include "shimwright/store/scanned_code.h"
#include "shimwright/store/store.h"

class QLabel;
class QLineEdit;

namespace shimwright::widgets {
class Button;
class Scroll;
}  // namespace shimwright::widgets

namespace shimwright::past {

class CodeCard;
class JobRow;
struct Finding;

/// Lets a person choose a signed file; blank: not now.
using ChooseSignedFile = std::function<QString()>;
[[nodiscard]] ChooseSignedFile usual_signed_file();

/// The jobs of the workshop, found by any part of what names them, or by the scanned code of a record. A blank field
/// shows the latest.
class PastJobs : public QWidget {
  Q_OBJECT

 public:
  /// The store must outlive it.
  explicit PastJobs(store::Store& store, QWidget* parent = nullptr) : PastJobs(store, usual_signed_file(), parent) {}
  PastJobs(store::Store& store, ChooseSignedFile choose, QWidget* parent = nullptr);

  /// Reads what is shown anew.
  void refresh();
  /// Looks for this as if it had been typed here.
  void search(const QString& text);
  /// These jobs and no others, until something is typed.
  void show_jobs(const QString& heading, std::vector<std::string> jobs);

 signals:
  void open_record(const std::string& job);
  void take_up(const std::string& job);
  void new_job_for(const std::string& vehicle_key);
  void open_vehicle(const std::string& vehicle_key);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Row {
    JobRow* row;
    QWidget* vehicle;  ///< the button to the page of its vehicle
    QWidget* beside;   ///< the button that takes it up, or begins a new job
  };

  void clear_rows();
  void show_latest();
  void show_asked(const std::vector<std::string>& asked);
  void show_code(const QString& text);
  void check_file();
  void show_checked(const Result<store::ScannedCode>& checked);
  void show_more();
  void show_found(const QString& text);
  void add_row(const store::JobSummary& job, const std::optional<Finding>& finding);
  void align_buttons();
  /// Whether the key was for the list.
  [[nodiscard]] bool move_from_field(int key);
  [[nodiscard]] bool move_from_row(QObject* from, int key);
  void focus_on(QWidget* widget);

  store::Store* store_;
  ChooseSignedFile choose_;
  QLineEdit* field_;
  QLabel* above_rows_;
  widgets::Scroll* scroll_;
  CodeCard* card_;
  widgets::Button* more_;
  QString sought_;
  std::int64_t most_ = 0;
  std::vector<Row> rows_;
  QString asked_heading_;
  std::optional<std::vector<std::string>> asked_;  ///< shown while nothing is typed; unset: the latest
};

}  // namespace shimwright::past
