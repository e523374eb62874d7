#include "shimwright/widgets/parts.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/units.h"

namespace shimwright::widgets {

Text::Text(const QString& text, const char* part, QWidget* parent) : QLabel(kept_together(text), parent) {
  setTextFormat(Qt::PlainText);
  setWordWrap(true);
  if (part != nullptr) {
    set_part(this, part);
  }
}

void Text::setText(const QString& text) {
  QLabel::setText(kept_together(text));
}

CautionBox::CautionBox(const QString& word, const QString& text, QWidget* parent) : QFrame(parent) {
  set_part(this, "caution");
  auto* row = lay<QHBoxLayout>(this);
  row->setContentsMargins(14, 8, 14, 8);
  auto* label = child_of<QLabel>(this);
  label->setTextFormat(Qt::RichText);
  label->setWordWrap(true);
  label->setText(QStringLiteral("<b>%1</b>&nbsp; %2").arg(word.toHtmlEscaped(), kept_together(text).toHtmlEscaped()));
  row->addWidget(label);
}

Box::Box(const QString& heading, const QString& text, const char* part, QWidget* parent)
    : QFrame(parent),
      body_(lay<QVBoxLayout>(this, 6)),
      heading_(child_of<Text>(this, heading, "large")),
      text_(child_of<Text>(this, text)) {
  set_part(this, part);
  body_->setContentsMargins(18, 14, 18, 14);
  body_->addWidget(heading_);
  body_->addWidget(text_);
  set_heading(heading);
  set_text(text);
}

void Box::set_heading(const QString& heading) {
  heading_->setText(heading);
  heading_->setVisible(!heading.isEmpty());
}

void Box::set_text(const QString& text) {
  text_->setText(text);
  text_->setVisible(!text.isEmpty());
}

QLabel* demonstration_mark(QWidget* parent) {
  auto* mark = child_of<QLabel>(parent, QLabel::tr("demonstration values"));
  mark->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  set_part(mark, "demo");
  return mark;
}

WordField::WordField(const QString& title, QWidget* parent) : QWidget(parent), edit_(nullptr) {
  auto* column = lay<QVBoxLayout>(this, 4);
  column->addWidget(child_of<Text>(this, title, "small"));
  edit_ = child_of<QLineEdit>(this);
  edit_->setMinimumHeight(52);
  edit_->setAccessibleName(title);
  column->addWidget(edit_);
  setFocusProxy(edit_);
  connect(edit_, &QLineEdit::textEdited, this, &WordField::edited);
  connect(edit_, &QLineEdit::returnPressed, this, &WordField::entered);
}

std::string WordField::text() const {
  return plain(edit_->text().trimmed());
}

void WordField::set_text(const std::string& text) {
  edit_->setText(qt(text));
}

Scroll::Scroll(QWidget* parent)
    : QFrame(parent),
      area_(child_of<QScrollArea>(this)),
      content_(child_of<QWidget>(area_)),
      column_(lay<QVBoxLayout>(content_, 12)) {
  auto* outer = lay<QVBoxLayout>(this);
  outer->addWidget(area_);
  set_part(content_, "scrolled");
  area_->setFrameShape(QFrame::NoFrame);
  area_->setWidgetResizable(true);
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area_->setFocusPolicy(Qt::NoFocus);
  area_->setWidget(content_);
  // The area learns of a content that has grown only with the events to come; a person who scrolls has the last word.
  connect(area_->verticalScrollBar(), &QScrollBar::rangeChanged, this, &Scroll::show_wanted);
  connect(area_->verticalScrollBar(), &QScrollBar::actionTriggered, this, [this] { wanted_ = nullptr; });
}

void Scroll::show_top() {
  wanted_ = nullptr;
  area_->verticalScrollBar()->setValue(0);
}

void Scroll::let_scroll_sideways() {
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
}

void Scroll::show_child(QWidget* child) {
  wanted_ = child;
  content_->layout()->activate();
  show_wanted();
}

bool Scroll::scroll_by(int key) {
  QScrollBar* const bar = area_->verticalScrollBar();
  switch (key) {
    case Qt::Key_PageUp:
      bar->setValue(bar->sliderPosition() - bar->pageStep());
      return true;
    case Qt::Key_PageDown:
      bar->setValue(bar->sliderPosition() + bar->pageStep());
      return true;
    case Qt::Key_Home:
      bar->setValue(bar->minimum());
      return true;
    case Qt::Key_End:
      bar->setValue(bar->maximum());
      return true;
    default:
      return false;
  }
}

void Scroll::show_wanted() {
  if (wanted_ != nullptr && !wanted_->isHidden() && content_->isAncestorOf(wanted_)) {
    area_->ensureWidgetVisible(wanted_, 0, 60);
  }
}

bool Scroll::overflows() const {
  const QSize shown = area_->maximumViewportSize();
  // What has just changed is not known further out yet.
  const auto inside = content_->findChildren<QWidget*>();
  for (auto child = inside.rbegin(); child != inside.rend(); ++child) {
    if ((*child)->layout() != nullptr) {
      (*child)->layout()->invalidate();
      (*child)->layout()->activate();
    }
  }
  column_->invalidate();
  const int needed =
      column_->hasHeightForWidth() ? column_->totalHeightForWidth(shown.width()) : column_->totalSizeHint().height();
  return needed > shown.height();
}

}  // namespace shimwright::widgets
