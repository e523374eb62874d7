#include "shimwright/past/vehicle_page.h"

#include <QDir>
#include <QFileInfo>
#include <QKeyEvent>
#include <QLabel>
#include <algorithm>
#include <memory>
#include <utility>

#include "float_chart.h"
#include "job_comparison.h"
#include "life_row.h"
#include "page_run.h"
#include "shimwright/widgets/background_work.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"
#include "vehicle_parts.h"

namespace shimwright::past {

using widgets::child_of;

namespace {

widgets::Button* add_button(QWidget* parent, QBoxLayout* row, const QString& text, const char* name,
                            widgets::Button::Kind kind = widgets::Button::Kind::plain) {
  auto* button = child_of<widgets::Button>(parent, text, kind);
  button->setObjectName(QLatin1String(name));
  row->addWidget(button);
  return button;
}

/// A frame for what is filled anew each time; takes the place of the one before.
QWidget* fresh_in_place(QWidget* parent, QWidget* old, QLayout* layout) {
  auto* made = child_of<QFrame>(parent);
  widgets::set_part(made, "card");
  if (old != nullptr) {
    widgets::put_in_place_of(*layout, old, made);
    old->hide();
    old->deleteLater();
  } else {
    layout->addWidget(made);
  }
  return made;
}

}  // namespace

VehiclePage::VehiclePage(store::Store& store, VehicleWays ways, QWidget* parent)
    : QWidget(parent),
      store_(&store),
      ways_(std::move(ways)),
      scroll_(nullptr),
      run_(child_of<PageRun>(this)),
      work_(child_of<widgets::BackgroundWork>(this)) {
  auto* column = widgets::lay<QVBoxLayout>(this);
  column->addWidget(bar());
  scroll_ = child_of<widgets::Scroll>(this);
  scroll_->let_scroll_sideways();
  column->addWidget(scroll_, 1);
  QVBoxLayout* inside = scroll_->column();
  inside->setContentsMargins(20, 4, 16, 16);
  inside->setSpacing(12);
  refused_ = child_of<widgets::Text>(scroll_->content(), QString(), "error");
  refused_->setObjectName(QStringLiteral("vehicle-refused"));
  inside->addWidget(refused_);
  refused_->hide();
  reading_ = child_of<widgets::Text>(scroll_->content(), tr("The jobs of this vehicle are being read."), "soft");
  reading_->setObjectName(QStringLiteral("vehicle-reading"));
  inside->addWidget(reading_);
  reading_->hide();
  comparison_ = child_of<JobComparison>(scroll_->content(), *store_);
  inside->addWidget(comparison_);
  comparison_->hide();
  life_ = child_of<QWidget>(scroll_->content());
  inside->addWidget(life_);
  build_life(widgets::lay<QVBoxLayout>(life_, 12));
  inside->addStretch(1);
  connect(run_, &PageRun::came_to, this,
          [this](int job, int of_all) { tell(tr("Writing job %1 of %2").arg(job).arg(of_all), true); });
  connect(run_, &PageRun::failed, this, [this](const Error& error) {
    show_run(false);
    tell(widgets::say(error), false);
  });
  connect(run_, &PageRun::stopped, this, [this] {
    show_run(false);
    tell(tr("Stopped: nothing was written."), true);
  });
}

// What is under way writes from the store.
VehiclePage::~VehiclePage() {
  run_->stop();
}

QWidget* VehiclePage::bar() {
  auto* bar = child_of<QWidget>(this);
  auto* both = widgets::lay<widgets::TurningRow>(bar, 8);
  both->setContentsMargins(20, 8, 16, 6);
  auto* words = widgets::lay_in<QVBoxLayout>(both, 0);
  title_ = child_of<widgets::Text>(bar, QString(), "title");
  title_->setObjectName(QStringLiteral("vehicle-title"));
  words->addWidget(title_);
  under_title_ = child_of<widgets::Text>(bar, QString(), "soft");
  words->addWidget(under_title_);
  both->setStretch(0, 1);
  auto* buttons = widgets::lay_in<QHBoxLayout>(both, 6);
  back_ = add_button(bar, buttons, tr("Back"), "button-back");
  compare_ = add_button(bar, buttons, tr("Compare two jobs"), "button-compare");
  compare_->setMinimumWidth(compare_->sizeHint().width());
  new_job_ = add_button(bar, buttons, tr("New job for it"), "button-new-job", widgets::Button::Kind::main);
  buttons->addStretch(1);
  connect(back_, &QAbstractButton::clicked, this, &VehiclePage::back);
  connect(compare_, &QAbstractButton::clicked, this, [this] { show_comparison(!comparison_->isVisibleTo(this)); });
  connect(new_job_, &QAbstractButton::clicked, this, [this] { emit new_job_for(history_.vehicle); });
  setFocusProxy(back_);
  return bar;
}

void VehiclePage::build_life(QVBoxLayout* column) {
  column->addWidget(child_of<widgets::Text>(
      life_,
      tr("Each job with the large bearing and the lower disc before the stroke, the small and the upper behind."),
      "soft"));
  rows_ = widgets::lay_in<QVBoxLayout>(column, 6);
  older_ = child_of<widgets::Text>(life_, QString(), "soft");
  older_->setObjectName(QStringLiteral("vehicle-older"));
  column->addWidget(older_);
  auto* charts = widgets::lay_in<widgets::TurningRow>(column, 12);
  for (const auto& [chart, title] : {std::pair(&lower_, tr("Float of the lower disc over the vehicle's life")),
                                     std::pair(&upper_, tr("Float of the upper disc over the vehicle's life"))}) {
    auto* card = child_of<QFrame>(life_);
    widgets::set_part(card, "card");
    auto* inside = widgets::lay<QVBoxLayout>(card);
    inside->setContentsMargins(8, 8, 8, 8);
    *chart = child_of<FloatChart>(card, title);
    inside->addWidget(*chart);
    charts->addWidget(card, 1);
  }
  lower_->setObjectName(QStringLiteral("chart-lower"));
  upper_->setObjectName(QStringLiteral("chart-upper"));
  wear_ = fresh_in_place(life_, nullptr, column);
  column->addWidget(child_of<widgets::Text>(life_, tr("The same in numbers"), "heading"));
  numbers_ = fresh_in_place(life_, nullptr, column);
  build_export(column);
}

void VehiclePage::build_export(QVBoxLayout* column) {
  auto* card = child_of<widgets::Box>(
      life_, tr("Every measurement as a file"),
      tr("For a spreadsheet or another program. Plate and customer reference are in it unless they were erased."),
      "card");
  column->addWidget(card);
  auto* buttons = widgets::lay_in<widgets::TurningRow>(card->body(), 6);
  csv_ = add_button(card, buttons, tr("Save as CSV"), "button-export-csv");
  json_ = add_button(card, buttons, tr("Save as JSON"), "button-export-json");
  stop_ = add_button(card, buttons, tr("Stop"), "button-stop");
  stop_->hide();
  told_ = child_of<widgets::Text>(card, QString());
  told_->setObjectName(QStringLiteral("export-result"));
  buttons->addWidget(told_, 1);
  connect(csv_, &QAbstractButton::clicked, this, [this] { begin_export(store::TableForm::csv); });
  connect(json_, &QAbstractButton::clicked, this, [this] { begin_export(store::TableForm::json); });
  connect(stop_, &QAbstractButton::clicked, run_, &PageRun::stop);
}

void VehiclePage::show_vehicle(const std::string& vehicle_key) {
  run_->stop();
  tell({}, true);
  history_ = store::VehicleHistory{vehicle_key, {}, 0};
  show_comparison(false);
  compare_->setEnabled(false);
  fill();
  // Nothing is said of a vehicle before it is known.
  life_->hide();
  refresh();
  scroll_->show_top();
}

void VehiclePage::refresh() {
  refused_->hide();
  reading_->show();
  life_->setEnabled(false);
  work_->begin_instead([this, path = store_->path(), vehicle = history_.vehicle,
                        most = ways_.most_jobs](const store::BackupWatch& watch) {
    const auto read = store::vehicle_history(path, vehicle, most, watch);
    return [this, read] { take(read); };
  });
}

void VehiclePage::take(const Result<store::VehicleHistory>& read) {
  reading_->hide();
  refused_->setVisible(!read);
  life_->setEnabled(read.has_value());
  if (read) {
    history_ = *read;
  } else {
    refused_->setText(widgets::say(read.error()));
    history_.jobs.clear();
  }
  compare_->setEnabled(history_.jobs.size() > 1);
  life_->setVisible(!comparison_->isVisibleTo(this));
  fill();
}

void VehiclePage::fill() {
  title_->setText(widgets::qt(history_.vehicle));
  under_title_->setText(vehicle_words(history_));
  fill_rows();
  lower_->set_points(chart_points(history_, sheet::Side::lower));
  upper_->set_points(chart_points(history_, sheet::Side::upper));
  numbers_ = fresh_in_place(life_, numbers_, life_->layout());
  fill_number_table(history_, numbers_);
  numbers_->show();
  fill_wear();
}

void VehiclePage::fill_rows() {
  for (LifeRow* each : row_buttons_) {
    each->hide();
    each->deleteLater();
  }
  row_buttons_.clear();
  for (const store::JobOfVehicle& job : history_.jobs) {
    auto* row = child_of<LifeRow>(life_, job);
    connect(row, &QAbstractButton::clicked, this, [this, id = job.summary.id] { emit open_record(id); });
    row->installEventFilter(this);
    rows_->addWidget(row);
    row->show();
    row_buttons_.push_back(row);
  }
  older_->setVisible(history_.older > 0);
  older_->setText(
      tr("Older jobs that are not shown here: %1. The past jobs find them by the VIN.").arg(history_.older));
}

void VehiclePage::fill_wear() {
  wear_ = fresh_in_place(life_, wear_, life_->layout());
  auto* column = widgets::lay<QVBoxLayout>(wear_, 6);
  column->setContentsMargins(14, 10, 14, 10);
  column->addWidget(child_of<widgets::Text>(wear_, tr("Wear"), "heading"));
  const auto wear = store::wear_of(history_);
  for (const record::Wear& each : wear) {
    column->addWidget(
        child_of<widgets::Text>(wear_, widgets::say(each.facts) + QLatin1Char(' ') + widgets::say(each.conclusion)));
  }
  if (wear.empty()) {
    column->addWidget(child_of<widgets::Text>(
        wear_, tr("No pack was measured both when it was fitted and as it was found later."), "soft"));
  }
  wear_->show();
}

void VehiclePage::show_comparison(bool shown) {
  if (shown) {
    std::vector<store::JobSummary> jobs;
    for (const store::JobOfVehicle& each : history_.jobs) {
      jobs.push_back(each.summary);
    }
    comparison_->set_jobs(std::move(jobs));
  }
  // What is hidden would hand its focus to no one knows whom.
  if (focusWidget() != nullptr && (life_->isAncestorOf(focusWidget()) || comparison_->isAncestorOf(focusWidget()))) {
    compare_->setFocus();
  }
  comparison_->setVisible(shown);
  life_->setVisible(!shown);
  compare_->set_action_text(shown ? tr("The whole life") : tr("Compare two jobs"));
  scroll_->show_top();
}

void VehiclePage::begin_export(store::TableForm form) {
  if (run_->runs() || history_.jobs.empty()) {
    return;
  }
  const QString ending = form == store::TableForm::csv ? QStringLiteral("csv") : QStringLiteral("json");
  const QString chosen = ways_.choose_file(export_file_name(history_.vehicle, ending));
  if (chosen.isEmpty()) {
    return;
  }
  auto jobs = store_->jobs_of_vehicle(history_.vehicle);
  if (!jobs) {
    tell(widgets::say(jobs.error()), false);
    return;
  }
  std::vector<std::string> ids;
  for (auto job = jobs->rbegin(); job != jobs->rend(); ++job) {
    ids.push_back(job->id);
  }
  const QString path = QFileInfo(chosen).absoluteFilePath();
  auto begun = store::MeasurementExport::begin(*store_, std::move(ids), widgets::plain(path), form);
  if (!begun) {
    tell(widgets::say(begun.error()), false);
    return;
  }
  const auto writing = std::make_shared<store::MeasurementExport>(std::move(*begun));
  show_run(true);
  run_->begin({static_cast<int>(writing->jobs()), [writing] { return writing->write_next(); },
               [this, writing, path]() -> Result<void> {
                 auto report = writing->finish();
                 if (!report) {
                   return tl::make_unexpected(report.error());
                 }
                 show_run(false);
                 tell(tr("Saved: %1").arg(QDir::toNativeSeparators(path)), true);
                 return {};
               }});
}

void VehiclePage::show_run(bool runs) {
  const bool stop_had_focus = stop_->hasFocus();
  csv_->setEnabled(!runs);
  json_->setEnabled(!runs);
  stop_->setVisible(runs);
  if (runs) {
    stop_->setFocus();
  } else if (stop_had_focus) {
    csv_->setFocus();
  }
}

void VehiclePage::tell(const QString& text, bool good) {
  widgets::set_part(told_, good ? "strong" : "error");
  told_->setText(text);
}

bool VehiclePage::eventFilter(QObject* watched, QEvent* event) {
  const auto at = std::find(row_buttons_.begin(), row_buttons_.end(), watched);
  if (event->type() == QEvent::KeyPress && at != row_buttons_.end()) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool up = key == Qt::Key_Up;
    if (up || key == Qt::Key_Down) {
      const bool ends = up ? at == row_buttons_.begin() : std::next(at) == row_buttons_.end();
      if (!ends) {
        LifeRow* const wanted = up ? *std::prev(at) : *std::next(at);
        wanted->setFocus(Qt::TabFocusReason);
        scroll_->show_child(wanted);
      }
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

void VehiclePage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    comparison_->isVisibleTo(this) ? show_comparison(false) : emit back();
  } else if (!scroll_->scroll_by(event->key())) {
    QWidget::keyPressEvent(event);
  }
}

}  // namespace shimwright::past
