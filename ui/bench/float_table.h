#pragma once

#include <optional>
#include <vector>

#include <QWidget>

#include "float_words.h"

class QGridLayout;

namespace shimwright::bench {

/// The runs of each spot, its float and its verdict.
class FloatTable : public QWidget {
  Q_OBJECT

 public:
  explicit FloatTable(QWidget* parent = nullptr);
  void show_runs(const std::vector<std::vector<const job::FloatRun*>>& runs, int least_runs,
                 const std::optional<job::Judgement>& judgement);

 private:
  void add_head(QGridLayout* grid, int columns);
  void add_verdict(QGridLayout* grid, int row, int column, const shim::FloatJudgement* judged, std::size_t spot);

  QWidget* rows_ = nullptr;
  bool judges_ = true;  ///< else for information only
};

/// Every shim of the tray with what it would give, best first.
class PromiseTable : public QWidget {
  Q_OBJECT

 public:
  explicit PromiseTable(QWidget* parent = nullptr);
  void show_promises(const std::vector<ShimPromise>& promises);

 private:
  QWidget* rows_ = nullptr;
};

}  // namespace shimwright::bench
