#include "shimwright/bench/new_job_page.h"

#include <QApplication>
#include <QShortcut>
#include <algorithm>

#include "days.h"
#include "earlier_jobs.h"
#include "new_job_form.h"
#include "shimwright/store/sheet_checks.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::bench {

namespace {

/// What stands beside the form without scrolling.
constexpr std::size_t most_earlier_jobs = 4;
constexpr int form_width = 640;
constexpr int least_width_beside = 960;
constexpr int least_height_beside = 140;

QWidget* box_of(QWidget* parent, const char* part, const QString& strong, const QString& soft) {
  auto* box = widgets::child_of<QFrame>(parent);
  widgets::set_part(box, part);
  auto* column = widgets::lay<QVBoxLayout>(box, 4);
  column->setContentsMargins(18, 12, 18, 12);
  column->addWidget(widgets::child_of<widgets::Text>(box, strong, "strong"));
  if (!soft.isEmpty()) {
    column->addWidget(widgets::child_of<widgets::Text>(box, soft));
  }
  return box;
}

void empty_beside(QVBoxLayout& column) {
  while (auto* const item = column.takeAt(0)) {
    const std::unique_ptr<QLayoutItem> owned(item);
    if (QWidget* const widget = owned->widget()) {
      widget->hide();
      widget->deleteLater();
    }
  }
}

}  // namespace

NewJobPage::NewJobPage(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(&bench), earlier_(std::make_unique<EarlierJobs>()) {
  auto* column = widgets::lay<QVBoxLayout>(this);
  build_body(column);
  build_foot(column);
  for (const Qt::Key enter : {Qt::Key_Return, Qt::Key_Enter}) {
    auto* keys = widgets::child_of<QShortcut>(this, QKeySequence(Qt::CTRL | enter));
    connect(keys, &QShortcut::activated, open_, &QPushButton::click);
  }
  begin();
}

NewJobPage::~NewJobPage() = default;

void NewJobPage::build_body(QBoxLayout* column) {
  body_ = widgets::child_of<widgets::Scroll>(this);
  column->addWidget(body_, 1);
  body_->column()->setContentsMargins(28, 14, 28, 10);
  body_->column()->setSpacing(6);
  QWidget* const content = body_->content();
  body_->column()->addWidget(widgets::child_of<widgets::Text>(content, tr("New job"), "title"));
  auto* row = widgets::lay_in<widgets::TurningRow>(body_->column(), 34);
  row->set_least_width(least_width_beside);
  auto* left = widgets::lay_in<QVBoxLayout>(row);
  row->setStretch(0, 1);
  form_ = widgets::child_of<NewJobForm>(content);
  form_->setMaximumWidth(form_width);
  left->addWidget(form_);
  left->addStretch();
  beside_ = widgets::child_of<widgets::Scroll>(content);
  beside_->setMinimumHeight(least_height_beside);
  row->addWidget(beside_, 1);
  connect(form_, &NewJobForm::vehicle_edited, this, &NewJobPage::look_for_vehicle);
  connect(form_, &NewJobForm::odometer_edited, this, &NewJobPage::show_earlier);
  connect(qApp, &QApplication::focusChanged, form_, [this](QWidget* /*before*/, QWidget* now) {
    if (now != nullptr && form_->isAncestorOf(now)) {
      body_->show_child(now);
    }
  });
}

void NewJobPage::build_foot(QBoxLayout* column) {
  auto* foot = widgets::child_of<QFrame>(this);
  widgets::set_part(foot, "bar-below");
  column->addWidget(foot);
  auto* row = widgets::lay<QHBoxLayout>(foot, 14);
  row->setContentsMargins(20, 9, 20, 9);
  const auto button = [&](const QString& text, const char* name, widgets::Button::Kind kind) {
    auto* made = widgets::child_of<widgets::Button>(foot, text, kind);
    made->setObjectName(QLatin1String(name));
    row->addWidget(made);
    return made;
  };
  cancel_ = button(tr("Cancel"), "button-cancel", widgets::Button::Kind::plain);
  throw_away_ = button(tr("Throw it away"), "button-throw-away", widgets::Button::Kind::plain);
  go_on_ = button(tr("Go on typing"), "button-go-on-typing", widgets::Button::Kind::plain);
  said_ = widgets::child_of<widgets::Text>(foot, QString(), "error");
  said_->setObjectName(QStringLiteral("foot-sentence"));
  row->addWidget(said_, 1);
  open_ = button({}, "button-open-job", widgets::Button::Kind::main);
  open_->set_keys(tr("Ctrl Enter"));
  connect(cancel_, &QPushButton::clicked, this, &NewJobPage::cancel);
  connect(throw_away_, &QPushButton::clicked, this, [this] {
    begin();
    emit cancelled();
  });
  connect(go_on_, &QPushButton::clicked, this, [this] {
    ask_before_loss(false);
    take_focus();
  });
  connect(open_, &QPushButton::clicked, this, &NewJobPage::open_job);
  connect(form_, &NewJobForm::finished, open_, [this] { open_->setFocus(Qt::TabFocusReason); });
}

void NewJobPage::begin() {
  ask_before_loss(false);
  number_.clear();
  const auto number = bench_->store().next_job_number();
  const auto specs = store::usable_spec_sheets(bench_->store());
  waiting_ = specs ? waiting_sheets(*specs) : QString();
  if (number) {
    number_ = *number;
  }
  const auto job_sheets = store::usable_job_sheets(bench_->store());
  form_->clear(day_of(bench_->now()).year(), specs ? *specs : std::vector<store::SheetIssue>(),
               job_sheets ? *job_sheets : std::vector<store::SheetIssue>());
  open_->set_action_text(tr("Open job %1").arg(widgets::qt(number_)));
  open_->setEnabled(!bench_->looks_only());
  sheets_refused_ = job_sheets ? std::nullopt : std::optional(job_sheets.error());
  if (!number || !specs) {
    show_refusal(number ? specs.error() : number.error());
  } else if (sheets_refused_) {
    show_refusal(*sheets_refused_);
  } else if (bench_->looks_only()) {
    said_->setText(tr("This workshop is open for looking only: no job can be opened."));
  }
  look_for_vehicle();
  body_->show_top();
}

void NewJobPage::begin_with(const std::string& vehicle_key) {
  begin();
  const auto earlier = read_earlier_jobs(bench_->store(), vehicle_key, 1);
  const bool known = earlier && !earlier->latest.empty();
  form_->vehicle().set(vehicle_key, known ? earlier->latest.front().chassis_reason : std::nullopt);
}

bool NewJobPage::has_unsent() const {
  return form_->has_typed();
}

void NewJobPage::take_focus() {
  form_->vehicle().take_focus();
}

void NewJobPage::look_for_vehicle() {
  const auto key = form_->vehicle().key_to_look_for();
  if (key == vehicle_key_ && key) {
    return;
  }
  vehicle_key_ = key;
  *earlier_ = {};
  filled_words_.clear();
  form_->take_back_filled();
  if (key) {
    if (auto earlier = read_earlier_jobs(bench_->store(), *key, most_earlier_jobs)) {
      *earlier_ = *std::move(earlier);
    } else {
      show_refusal(earlier.error());
    }
  }
  if (!earlier_->latest.empty()) {
    const EarlierJob& latest = earlier_->latest.front();
    const QStringList names = form_->fill_from(latest);
    if (!names.isEmpty()) {
      filled_words_ = tr("Filled in from job %1: %2. Change what is different.")
                          .arg(widgets::qt(latest.number), names.join(QStringLiteral(", ")));
    }
  }
  show_earlier();
}

void NewJobPage::show_earlier() {
  QVBoxLayout& column = *beside_->column();
  QWidget* const content = beside_->content();
  empty_beside(column);
  if (!earlier_->latest.empty()) {
    column.addWidget(widgets::child_of<widgets::Text>(content, tr("This vehicle was here before"), "strong"));
  } else if (vehicle_key_) {
    column.addWidget(widgets::child_of<widgets::Text>(content, tr("This vehicle was not here before."), "soft"));
  }
  for (const EarlierNotice& each : notices_of(*earlier_, form_->odometer())) {
    column.addWidget(box_of(content, "notice", each.heading, each.text));
  }
  for (const EarlierJob& each : earlier_->latest) {
    column.addWidget(box_of(content, "card", heading_of(each), details_of(each)));
  }
  if (earlier_->more > 0) {
    column.addWidget(widgets::child_of<widgets::Text>(
        content, tr("Older jobs of this vehicle under Past jobs: %1.").arg(earlier_->more), "soft"));
  }
  if (!waiting_.isEmpty()) {
    column.addWidget(widgets::child_of<widgets::Text>(content, waiting_, "soft"));
  }
  if (!filled_words_.isEmpty()) {
    column.addWidget(widgets::child_of<widgets::Text>(content, filled_words_, "soft"));
  }
  column.addStretch();
}

void NewJobPage::cancel() {
  if (has_unsent()) {
    ask_before_loss(true);
    return;
  }
  begin();
  emit cancelled();
}

void NewJobPage::ask_before_loss(bool ask) {
  said_->setText(ask ? tr("What is typed here is kept nowhere else.") : QString());
  throw_away_->setVisible(ask);
  go_on_->setVisible(ask);
  if (ask) {
    go_on_->setFocus(Qt::OtherFocusReason);
  }
  cancel_->setVisible(!ask);
}

QString NewJobPage::waiting_sheets(const std::vector<store::SheetIssue>& usable) {
  const auto latest = bench_->store().registers().spec_sheets();
  QStringList waiting;
  for (const store::SheetIssue& each : latest ? *latest : std::vector<store::SheetIssue>()) {
    const bool offered = std::any_of(usable.begin(), usable.end(),
                                     [&each](const store::SheetIssue& one) { return one.hash == each.hash; });
    if (!offered) {
      waiting << tr("%1, issue %2").arg(widgets::qt(each.name)).arg(each.issue);
    }
  }
  return waiting.isEmpty()
             ? QString()
             : tr("Not offered before it is checked under Workshop: %1.").arg(waiting.join(QStringLiteral("; ")));
}

void NewJobPage::open_job() {
  ask_before_loss(false);
  const auto sheet_hash = form_->sheet_hash();
  if (!sheet_hash && sheets_refused_) {
    show_refusal(*sheets_refused_);
    return;
  }
  if (!sheet_hash) {
    said_->setText(tr("There is no job sheet in this workshop that was checked: add or check one under Workshop."));
    return;
  }
  const auto spec_hash = form_->spec_hash();
  if (!spec_hash) {
    form_->ask_for_gearbox();
    return;
  }
  const job::OpenJob command = form_->command(number_, bench_->ids(), bench_->now().at_ms);
  if (const auto stored = bench_->open_new(*sheet_hash, *spec_hash, command); !stored) {
    show_refusal(stored.error());
    return;
  }
  begin();
  emit opened();
}

void NewJobPage::show_refusal(const Error& error) {
  if (!form_->show_refusal(error)) {
    said_->setText(widgets::say(error));
  }
}

}  // namespace shimwright::bench
