#pragma once

#include <string>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/store/job_record.h"
#include "shimwright/store/store.h"

class QBoxLayout;
class QLabel;

namespace shimwright::widgets {
class Button;
}

namespace shimwright::past {

/// Two jobs of a vehicle laid beside each other, reading by reading; what differs is marked. Which two is chosen by
/// going to an earlier or a later one.
class JobComparison : public QWidget {
  Q_OBJECT

 public:
  /// The store must outlive it.
  explicit JobComparison(store::Store& store, QWidget* parent = nullptr);

  /// Latest first; two at least. The latest two are compared.
  void set_jobs(std::vector<store::JobSummary> jobs);

 private:
  struct Side {
    QLabel* head = nullptr;
    widgets::Button* earlier = nullptr;
    widgets::Button* later = nullptr;
    std::size_t job = 0;
    Result<record::Record> record;  ///< of that job, read when it is chosen
    job::Sheets sheets;
  };

  void add_side(Side& side, const QString& name, QBoxLayout* row);
  void go(Side& side, int step);
  void read(Side& side);
  void refresh();
  void show_rows();

  store::Store* store_;
  std::vector<store::JobSummary> jobs_;
  Side first_;
  Side second_;
  widgets::Button* only_ = nullptr;
  QLabel* told_ = nullptr;
  QWidget* table_ = nullptr;
  bool only_different_ = false;
};

}  // namespace shimwright::past
