#include "shimwright/shell/top_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/keys.h"
#include "shimwright/widgets/style.h"

namespace shimwright::shell {

namespace {

constexpr int bar_height = 50;
constexpr int word_margin = 10;
constexpr int narrowest = 480;

}  // namespace

PlaceButton::PlaceButton(const QString& text, bool is_name, QWidget* parent)
    : QPushButton(text, parent), is_name_(is_name) {
  setAutoDefault(false);
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(text);
  setCheckable(true);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QFont PlaceButton::strong_font() const {
  QFont strong = font();
  strong.setPixelSize(is_name_ ? 19 : widgets::pixels::base);
  strong.setWeight(QFont::DemiBold);
  return strong;
}

QSize PlaceButton::sizeHint() const {
  const int width = QFontMetrics(strong_font()).horizontalAdvance(text()) + 2 * word_margin;
  return {std::max(width, widgets::pixels::target), bar_height - 1};
}

void PlaceButton::keyPressEvent(QKeyEvent* event) {
  if (widgets::is_plain_enter(*event)) {
    click();
    return;
  }
  QPushButton::keyPressEvent(event);
}

void PlaceButton::paintEvent(QPaintEvent* /*event*/) {
  const widgets::Colours& colours = widgets::colours_of(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const bool strong = is_name_ || isChecked();
  QFont type = strong_font();
  if (!strong) {
    type.setWeight(QFont::Normal);
  }
  painter.setFont(type);
  painter.setPen(strong || !isCheckable() ? colours.text : colours.soft);
  painter.drawText(rect(), Qt::AlignCenter, text());
  if (isChecked()) {
    painter.fillRect(QRect(word_margin - 2, height() - 3, width() - 2 * word_margin + 4, 3), colours.blue);
  }
  if (hasFocus()) {
    painter.setPen(QPen(colours.blue, 3));
    painter.drawRoundedRect(QRectF(rect()).adjusted(2, 4, -2, -5), 6, 6);
  }
}

TopBar::TopBar(QWidget* parent)
    : QFrame(parent),
      row_(widgets::lay<QHBoxLayout>(this, 6)),
      name_(nullptr),
      job_(nullptr),
      vehicle_(nullptr),
      spec_(nullptr),
      demonstration_(nullptr),
      demo_workshop_(nullptr),
      settings_(nullptr),
      person_(nullptr) {
  widgets::set_part(this, "bar");
  setFixedHeight(bar_height);
  setMinimumWidth(narrowest);
  row_->setContentsMargins(10, 0, 10, 1);
  name_ = widgets::child_of<PlaceButton>(this, QStringLiteral("Shimwright"), true);
  name_->setObjectName(QStringLiteral("button-name"));
  name_->setCheckable(false);
  name_->setAccessibleDescription(tr("to the bench"));
  connect(name_, &QPushButton::clicked, this, [this] { emit place_wanted(PageName::home); });
  row_->addWidget(name_);
  add_place(PageName::home, tr("Bench"), QStringLiteral("button-bench"));
  add_place(PageName::past_jobs, tr("Past jobs"), QStringLiteral("button-past-jobs"));
  add_place(PageName::workshop, tr("Workshop"), QStringLiteral("button-workshop"));
  job_ = add_label(QStringLiteral("heading-job"), "strong");
  row_->addSpacing(10);
  vehicle_ = add_label(QStringLiteral("heading-vehicle"), "soft");
  row_->addStretch();
  spec_ = add_label(QStringLiteral("heading-spec"), "soft");
  row_->addSpacing(10);
  demonstration_ = widgets::demonstration_mark(this);
  demonstration_->setObjectName(QStringLiteral("mark-demonstration"));
  row_->addWidget(demonstration_);
  demo_workshop_ = widgets::demonstration_mark(this);
  demo_workshop_->setText(tr("demo workshop"));
  demo_workshop_->setObjectName(QStringLiteral("mark-demo-workshop"));
  row_->addWidget(demo_workshop_);
  settings_ = widgets::child_of<PlaceButton>(this, tr("Settings"), false);
  settings_->setObjectName(QStringLiteral("button-settings"));
  connect(settings_, &QPushButton::clicked, this, &TopBar::settings_wanted);
  row_->addWidget(settings_);
  person_ = widgets::child_of<PlaceButton>(this, QString(), false);
  person_->setObjectName(QStringLiteral("button-person"));
  person_->setCheckable(false);
  person_->setAccessibleDescription(QStringLiteral("F9"));
  connect(person_, &QPushButton::clicked, this, &TopBar::person_wanted);
  row_->addWidget(person_);
  show_place(PageName::home);
}

PlaceButton* TopBar::add_place(PageName place, const QString& text, const QString& name) {
  auto* button = widgets::child_of<PlaceButton>(this, text, false);
  button->setObjectName(name);
  connect(button, &QPushButton::clicked, this, [this, place] { emit place_wanted(place); });
  row_->addWidget(button);
  places_.emplace_back(place, button);
  return button;
}

QLabel* TopBar::add_label(const QString& name, const char* part) {
  auto* label = widgets::child_of<QLabel>(this);
  label->setObjectName(name);
  label->setTextFormat(Qt::PlainText);
  widgets::set_part(label, part);
  row_->addWidget(label);
  return label;
}

void TopBar::mark_place(bool on_job, const PlaceButton* here) {
  for (const auto& [place, button] : places_) {
    button->setVisible(!on_job);
    button->setChecked(button == here);
  }
  settings_->setVisible(!on_job);
  settings_->setChecked(settings_ == here);
  on_job_ = on_job;
  demonstration_->setVisible(false);
  demo_workshop_->setVisible(is_demo_ && !on_job);
  give_way();
}

int TopBar::width_needed() const {
  const QMargins margins = row_->contentsMargins();
  int width = margins.left() + margins.right();
  for (int at = 0; at < row_->count(); ++at) {
    const QWidget* widget = row_->itemAt(at)->widget();
    if (widget == nullptr || !widget->isHidden()) {
      width += row_->itemAt(at)->sizeHint().width() + row_->spacing();
    }
  }
  return width;
}

/// Where words are longer than the bar, what is said elsewhere as well goes first.
void TopBar::give_way() {
  name_->show();
  demo_workshop_->setText(tr("demo workshop"));
  say_person(false);
  job_->setVisible(on_job_);
  vehicle_->setVisible(on_job_);
  vehicle_->setText(vehicle_words_.first);
  spec_->setVisible(on_job_);
  const auto when_narrow = [this](const auto& do_it) {
    if (width_needed() > width()) {
      do_it();
    }
  };
  if (on_job_) {
    when_narrow([this] { vehicle_->setText(vehicle_words_.second); });
    when_narrow([this] { spec_->hide(); });
    when_narrow([this] { vehicle_->hide(); });
  } else {
    when_narrow([this] { name_->hide(); });
    when_narrow([this] { demo_workshop_->setText(tr("demo")); });
  }
  when_narrow([this] { say_person(true); });
}

void TopBar::say_person(bool in_short) {
  const QString text = initials_.isEmpty() ? tr("At the bench: nobody") : tr("At the bench: %1").arg(initials_);
  person_->setText(!in_short ? text : initials_.isEmpty() ? QStringLiteral("?") : initials_);
  person_->setAccessibleName(text);
  person_->updateGeometry();
}

void TopBar::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  give_way();
}

void TopBar::show_place(PageName place) {
  const PlaceButton* here = nullptr;
  for (const auto& [each, button] : places_) {
    here = each == place ? button : here;
  }
  mark_place(false, here);
}

void TopBar::show_job(const Heading& heading) {
  mark_place(true, nullptr);
  job_->setText(heading.job);
  vehicle_words_ = {heading.vehicle, heading.vehicle_in_short};
  spec_->setText(heading.spec);
  demonstration_->setVisible(heading.demonstration);
  give_way();
}

void TopBar::show_settings() {
  mark_place(false, settings_);
}

void TopBar::set_person(const QString& initials) {
  initials_ = initials;
  give_way();
}

void TopBar::set_demo_workshop(bool demo) {
  is_demo_ = demo;
  demo_workshop_->setVisible(demo && !on_job_);
  give_way();
}

}  // namespace shimwright::shell
