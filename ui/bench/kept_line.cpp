#include "kept_line.h"

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/style.h"

namespace shimwright::bench {

using widgets::child_of;

namespace {

constexpr int kept_mark_size = 22;

}  // namespace

KeptLine::KeptLine(QWidget* parent)
    : QWidget(parent),
      mark_(child_of<widgets::MarkView>(this, widgets::Mark::none, kept_mark_size)),
      text_(child_of<widgets::Text>(this, QString())) {
  auto* row = widgets::lay<QHBoxLayout>(this, 10);
  row->addWidget(mark_, 0, Qt::AlignTop);
  row->addWidget(text_, 1, Qt::AlignTop);
  hide();
}

void KeptLine::show_words(widgets::Mark mark, const QString& words, bool bad) {
  mark_->set_mark(mark);
  mark_->setVisible(mark != widgets::Mark::none);
  text_->setText(words);
  widgets::set_part(text_, bad ? "bad" : "");
  setVisible(!words.isEmpty());
}

KeyLine::KeyLine(QWidget* parent) : widgets::Text(QString(), "keys", parent) {
  setObjectName(QStringLiteral("keys"));
  setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
  setWordWrap(false);
}

UnsentBox::UnsentBox(const QString& sentence, QWidget* parent)
    : widgets::Box(tr("Typed and not kept yet"), sentence, "notice", parent) {
  auto* button = child_of<widgets::Button>(this, tr("Clear what is typed"));
  button->setObjectName(QStringLiteral("button-clear-typed"));
  body()->addWidget(button, 0, Qt::AlignLeft);
  connect(button, &widgets::Button::clicked, this, [this] {
    hide();
    emit cleared();
  });
  hide();
}

}  // namespace shimwright::bench
