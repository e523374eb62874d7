#pragma once

#include <QFrame>

#include "shimwright/job/judgement.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/size_scale.h"

class QGridLayout;

namespace shimwright::bench {

/// The sum line by line, the sizes with their borders, and what there is to say; where the places differ too much, that
/// in place of the sum.
class DepthCard : public QFrame {
  Q_OBJECT

 public:
  explicit DepthCard(QWidget* parent = nullptr);
  /// `stale`: something else is typed now, the sum is that of what was kept.
  void show_judgement(const job::Judgement& judgement, bool stale);
  void show_nothing(const QString& sentence);

 private:
  void show_sum(const job::Judgement& judgement);

  widgets::Text* heading_;
  widgets::Text* said_;
  QWidget* sum_ = nullptr;
  QVBoxLayout* column_;
  widgets::SizeScale* scale_;
  widgets::Text* margin_;
};

}  // namespace shimwright::bench
