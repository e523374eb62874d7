#include "shimwright/past/record_view.h"

#include <QKeyEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <algorithm>
#include <utility>

#include "page_column.h"
#include "page_run.h"
#include "seal_box.h"
#include "shimwright/print/page_painter.h"
#include "shimwright/record/layout.h"
#include "shimwright/store/job_record.h"
#include "shimwright/widgets/background_work.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/giving.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::past {

namespace {

constexpr int beside_pages = 24;  // what stays free of the width when pages fit
constexpr int least_of_pages = 80;
constexpr int seen_again = 60;  // what of a view is still seen after turning to the next

}  // namespace

RecordView::RecordView(store::Store& store, RecordWays ways, QWidget* parent)
    : QWidget(parent),
      store_(&store),
      fonts_(print::load_fonts()),
      ways_(std::move(ways)),
      run_(widgets::child_of<PageRun>(this)),
      writing_(widgets::child_of<widgets::BackgroundWork>(this)),
      reading_(widgets::child_of<widgets::BackgroundWork>(this)),
      pages_(nullptr),
      area_(nullptr),
      title_(nullptr),
      place_(nullptr),
      result_(nullptr),
      zoom_(nullptr),
      save_(nullptr),
      photos_(nullptr),
      slip_(nullptr),
      print_(nullptr),
      stop_(nullptr) {
  build();
  const auto say_place = [this](qint64 page, qint64 of_all) { say_result(texts_.page.arg(page).arg(of_all), true); };
  connect(run_, &PageRun::came_to, this, say_place);
  connect(writing_, &widgets::BackgroundWork::came_to, this, say_place);
  connect(run_, &PageRun::done, this, [this] { say_end(true); });
  connect(run_, &PageRun::failed, this, [this](const Error& error) {
    show_run(false);
    say_result(widgets::say(error), false);
  });
  connect(run_, &PageRun::stopped, this, [this] { say_end(false); });
}

void RecordView::build() {
  auto* column = widgets::lay<QVBoxLayout>(this);
  column->addWidget(bar());
  column->addWidget(state_line());
  if (ways_.seal.by) {
    auto* giving = widgets::child_of<widgets::GivingScroll>(this);
    giving->column()->setContentsMargins(16, 0, 16, 8);
    seal_ = widgets::child_of<SealBox>(giving->content(), *store_, ways_.seal);
    giving->column()->addWidget(seal_);
    column->addWidget(giving);
    connect(seal_, &SealBox::just_sealed, this, [this] {
      just_sealed_ = true;
      show_pages();
    });
    connect(seal_, &SealBox::added_to, this, &RecordView::show_pages);
  }
  area_ = widgets::child_of<QScrollArea>(this);
  area_->setObjectName(QStringLiteral("pages"));
  area_->setFrameShape(QFrame::NoFrame);
  area_->setFocusPolicy(Qt::NoFocus);
  area_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
  area_->setMinimumHeight(least_of_pages);
  area_->setWidgetResizable(true);
  area_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  pages_ = widgets::child_of<PageColumn>(area_);
  area_->setWidget(pages_);
  area_->viewport()->installEventFilter(this);
  connect(area_->verticalScrollBar(), &QScrollBar::valueChanged, this, &RecordView::say_page);
  column->addWidget(area_, 1);
}

QWidget* RecordView::bar() {
  auto* bar = widgets::child_of<QWidget>(this);
  auto* both = widgets::lay<widgets::TurningRow>(bar, 6);
  both->setContentsMargins(16, 8, 16, 6);
  QHBoxLayout* row = widgets::lay_in<QHBoxLayout>(both, 6);
  const auto button = [&](const QString& text, const char* name, widgets::Button::Kind kind) {
    auto* made = widgets::child_of<widgets::Button>(bar, text, kind);
    made->setObjectName(QLatin1String(name));
    row->addWidget(made);
    return made;
  };
  using Kind = widgets::Button::Kind;
  auto* back_button = button(tr("Back"), "button-back", Kind::plain);
  connect(back_button, &QAbstractButton::clicked, this, &RecordView::back);
  connect(button(tr("Page up"), "button-page-up", Kind::plain), &QAbstractButton::clicked, this,
          [this] { scroll_by_view(-1); });
  connect(button(tr("Page down"), "button-page-down", Kind::plain), &QAbstractButton::clicked, this,
          [this] { scroll_by_view(1); });
  zoom_ = button(tr("Fit width"), "button-zoom", Kind::plain);
  zoom_->setMinimumWidth(zoom_->sizeHint().width());
  zoom_->set_action_text(tr("100 %"));
  connect(zoom_, &QAbstractButton::clicked, this, [this] { set_fits(!fits_); });
  row->addStretch(1);
  row = widgets::lay_in<QHBoxLayout>(both, 6);
  row->addStretch(1);
  photos_ = button(tr("With photos"), "button-photos", Kind::plain);
  photos_->setCheckable(true);
  connect(photos_, &QAbstractButton::toggled, this, &RecordView::show_photos);
  slip_ = button(tr("Shift slip"), "button-slip", Kind::plain);
  connect(slip_, &QAbstractButton::clicked, this, &RecordView::print_slip);
  print_ = button(tr("Print"), "button-print", Kind::plain);
  connect(print_, &QAbstractButton::clicked, this, &RecordView::print);
  save_ = button(tr("Save as PDF"), "button-save-pdf", Kind::main);
  connect(save_, &QAbstractButton::clicked, this, &RecordView::save);
  setFocusProxy(back_button);
  return bar;
}

QWidget* RecordView::state_line() {
  auto* line = widgets::child_of<QWidget>(this);
  auto* row = widgets::lay<QHBoxLayout>(line, 12);
  row->setContentsMargins(18, 0, 16, 8);
  title_ = widgets::child_of<QLabel>(line);
  widgets::set_part(title_, "strong");
  row->addWidget(title_);
  place_ = widgets::child_of<QLabel>(line);
  place_->setObjectName(QStringLiteral("page-place"));
  widgets::set_part(place_, "soft");
  row->addWidget(place_);
  result_ = widgets::child_of<widgets::Text>(line, QString());
  result_->setObjectName(QStringLiteral("record-result"));
  result_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  row->addWidget(result_, 1);
  stop_ = widgets::child_of<widgets::Button>(line, tr("Stop"));
  stop_->setObjectName(QStringLiteral("button-stop"));
  stop_->hide();
  connect(stop_, &QAbstractButton::clicked, this, &RecordView::stop);
  row->addWidget(stop_);
  return line;
}

// What is under way draws with the fonts.
RecordView::~RecordView() {
  run_->stop();
  writing_->end_now();
}

void RecordView::show_job(const std::string& job) {
  job_ = job;
  just_sealed_ = false;
  record_.reset();
  photos_->setChecked(false);
  show_pages();
  if (seal_ != nullptr) {
    seal_->show_job(job);
  }
}

void RecordView::show_pages() {
  run_->stop();
  if (writing_->runs()) {
    writing_->drop();
    show_run(false);
  }
  reading_->drop();
  say_result({}, true);
  auto record = store::record_of(*store_, job_);
  if (record && just_sealed_) {
    if (auto& seal = record->seal; seal) {
      seal->reprint = false;
    }
  }
  if (record && fonts_) {
    show_record(std::move(*record));
  } else {
    record_.reset();
    pages_->clear();
    title_->clear();
    say_result(widgets::say(record ? fonts_.error() : record.error()), false);
  }
  allow(true);
  photos_->setVisible(record_ && !record_->photos.empty());
  slip_->setVisible(record_ && !record_->job.closed);
  zoom();
  area_->verticalScrollBar()->setValue(0);
  say_page();
  if (photos_->isChecked()) {
    show_photos(true);
  }
}

void RecordView::allow(bool printing) {
  save_->setEnabled(printing && record_.has_value());
  print_->setEnabled(printing && record_.has_value());
  slip_->setEnabled(printing);
}

void RecordView::show_record(record::Record record) {
  const print::FontMeasure measure(*fonts_);
  pages_->set_pages(record::lay_out(record, ways_.paper, measure), *fonts_);
  title_->setText(tr("Record of job %1").arg(widgets::qt(record.job.number)));
  record_ = std::move(record);
}

void RecordView::say_result(const QString& text, bool good) {
  widgets::set_part(result_, good ? "soft" : "error");
  result_->setText(text);
}

void RecordView::say_page() {
  const int count = static_cast<int>(pages_->pages().size());
  if (count == 0) {
    place_->clear();
    return;
  }
  const int middle = area_->verticalScrollBar()->sliderPosition() + area_->viewport()->height() / 2;
  place_->setText(tr("page %1 of %2").arg(pages_->page_at(middle) + 1).arg(count));
}

void RecordView::scroll_by_view(int direction) {
  QScrollBar* const scroll = area_->verticalScrollBar();
  scroll->setValue(scroll->sliderPosition() + direction * std::max(1, area_->viewport()->height() - seen_again));
}

void RecordView::set_fits(bool fits) {
  fits_ = fits;
  zoom_->set_action_text(fits ? tr("100 %") : tr("Fit width"));
  zoom();
}

void RecordView::zoom() {
  if (pages_->pages().empty()) {
    return;
  }
  QScrollBar* const scroll = area_->verticalScrollBar();
  const double before = scroll->maximum() > 0 ? static_cast<double>(scroll->sliderPosition()) / scroll->maximum() : 0.0;
  const double fitting = (area_->viewport()->width() - beside_pages) / pages_->widest_mm();
  pages_->set_dots_per_mm(fits_ ? std::max(fitting, 1.0) : logicalDpiX() / 25.4);
  scroll->setValue(static_cast<int>(before * scroll->maximum()));
  say_page();
}

bool RecordView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == area_->viewport() && event->type() == QEvent::Resize) {
    zoom();
  }
  return QWidget::eventFilter(watched, event);
}

void RecordView::keyPressEvent(QKeyEvent* event) {
  QScrollBar* const scroll = area_->verticalScrollBar();
  switch (event->key()) {
    case Qt::Key_PageUp:
      scroll_by_view(-1);
      break;
    case Qt::Key_PageDown:
      scroll_by_view(1);
      break;
    case Qt::Key_Home:
      scroll->setValue(0);
      break;
    case Qt::Key_End:
      scroll->setValue(scroll->maximum());
      break;
    case Qt::Key_Escape:
      emit back();
      break;
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace shimwright::past
