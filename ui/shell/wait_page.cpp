#include "shimwright/shell/wait_page.h"

#include <QProgressBar>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::shell {

WaitPage::WaitPage(QWidget* parent)
    : QWidget(parent), doing_(widgets::child_of<widgets::Text>(this, QString(), "title")) {
  auto* column = widgets::lay<QVBoxLayout>(this, 14);
  column->setContentsMargins(28, 20, 28, 20);
  doing_->setObjectName(QStringLiteral("doing"));
  column->addWidget(doing_);
  auto* progress = widgets::child_of<QProgressBar>(this);
  progress->setRange(0, 0);
  progress->setAccessibleName(tr("Progress"));
  column->addWidget(progress);
  column->addWidget(widgets::child_of<widgets::Text>(
      this, tr("Leave the machine on until this is done. What was in the store before is kept."), "soft"));
  column->addStretch();
}

void WaitPage::set_doing(const QString& sentence) {
  doing_->setText(sentence);
}

}  // namespace shimwright::shell
