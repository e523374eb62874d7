#include "depth_card.h"

#include <QGridLayout>

#include "depth_sum.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

using widgets::child_of;
using widgets::Text;

DepthCard::DepthCard(QWidget* parent) : QFrame(parent), column_(widgets::lay<QVBoxLayout>(this, 10)) {
  widgets::set_part(this, "card");
  column_->setContentsMargins(18, 14, 18, 14);
  heading_ = child_of<Text>(this, QString(), "strong");
  said_ = child_of<Text>(this, QString());
  said_->setObjectName(QStringLiteral("depth-said"));
  scale_ = child_of<widgets::SizeScale>(this);
  margin_ = child_of<Text>(this, QString());
  column_->addWidget(heading_);
  column_->addWidget(said_);
  column_->addWidget(scale_);
  column_->addWidget(margin_);
  column_->addStretch(1);
}

void DepthCard::show_nothing(const QString& sentence) {
  if (sum_ != nullptr) {
    sum_->hide();
  }
  heading_->setText(tr("The sum"));
  widgets::set_part(heading_, "strong");
  said_->setText(sentence);
  said_->show();
  scale_->hide();
  margin_->hide();
}

void DepthCard::show_judgement(const job::Judgement& judgement, bool stale) {
  const job::Conclusion conclusion = judgement.advised.conclusion;
  const bool fine = conclusion == job::Conclusion::fit_shim;
  heading_->setText(stale ? tr("The sum of the depths kept before") : depth_heading(conclusion));
  widgets::set_part(heading_, fine || stale ? "strong" : "large");
  said_->setText(widgets::say(judgement.advised.reason));
  said_->setVisible(!fine);
  show_sum(judgement);
  const bool on_scale = judgement.answer.depth && judgement.answer.depth->required_mm &&
                        conclusion != job::Conclusion::impossible && conclusion != job::Conclusion::outside;
  scale_->setVisible(on_scale);
  if (on_scale) {
    scale_->set_cells(depth_sizes(judgement), judgement.answer.depth->required_mm);
  }
  margin_->setText(depth_margin(judgement));
  margin_->setVisible(conclusion != job::Conclusion::tilted);  // said above
}

void DepthCard::show_sum(const job::Judgement& judgement) {
  if (sum_ != nullptr) {
    sum_->hide();
    sum_->deleteLater();
  }
  sum_ = child_of<QWidget>(static_cast<QWidget*>(this));
  auto* grid = widgets::lay<QGridLayout>(sum_);
  grid->setContentsMargins(8, 0, 8, 0);
  grid->setVerticalSpacing(12);
  grid->setColumnStretch(0, 1);
  int row = 0;
  for (const SumLine& line : depth_sum(judgement)) {
    if (line.total) {
      auto* rule = child_of<QFrame>(sum_);
      rule->setFixedHeight(2);
      widgets::set_part(rule, "rule");
      grid->addWidget(rule, row++, 0, 1, 2);
    }
    auto* title = child_of<Text>(sum_, line.title, line.total ? "sum-total" : "echo");
    auto* value = child_of<Text>(sum_, line.value, line.total ? "sum-total" : "echo");
    value->setWordWrap(false);
    value->setAlignment(Qt::AlignRight | Qt::AlignTop);
    grid->addWidget(title, row, 0);
    grid->addWidget(value, row++, 1);
  }
  sum_->setVisible(row > 0);
  column_->insertWidget(2, sum_);
}

}  // namespace shimwright::bench
