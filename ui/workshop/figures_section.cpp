#include "figures_section.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QStandardPaths>
#include <algorithm>
#include <utility>

#include "figure_row.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/turning_row.h"
#include "widgets_away.h"

namespace shimwright::workshop {

using widgets::child_of;

namespace {

/// After every moment a clock may have shown.
constexpr std::int64_t end_of_time_ms = std::int64_t{1} << 52;
constexpr std::size_t most_shims = 12;
constexpr int longest_gap = 24;

QString jobs_words(std::size_t count) {
  return count == 1 ? QCoreApplication::translate("workshop", "1 job")
                    : QCoreApplication::translate("workshop", "%1 jobs").arg(count);
}

QString month_words(const store::Month& month) {
  return QLocale().toString(QDate(month.year, static_cast<int>(month.month), 1), FiguresSection::tr("MMM yyyy"));
}

QString side_words(sheet::Side side) {
  return side == sheet::Side::lower ? FiguresSection::tr("large bearing") : FiguresSection::tr("small bearing");
}

store::Month month_before(const store::Month& month) {
  return month.month == 1 ? store::Month{month.year - 1, 12} : store::Month{month.year, month.month - 1};
}

int months_between(const store::Month& late, const store::Month& early) {
  return (late.year - early.year) * 12 + static_cast<int>(late.month) - static_cast<int>(early.month);
}

/// The latest first; a month without jobs between two with some is there too. A gap of years is left out: a clock was
/// wrong, or the store lay.
std::vector<std::pair<store::Month, store::JobIds>> with_months_between(
    const std::map<store::Month, store::JobIds>& by_month) {
  std::vector<std::pair<store::Month, store::JobIds>> all;
  for (auto month = by_month.rbegin(); month != by_month.rend(); ++month) {
    const int gap = all.empty() ? 0 : months_between(all.back().first, month->first);
    for (int left = gap > longest_gap ? 1 : gap; left > 1; --left) {
      all.emplace_back(month_before(all.back().first), store::JobIds());
    }
    all.emplace_back(*month);
  }
  return all;
}

double share_of(std::size_t part, std::size_t whole) {
  return whole == 0 ? 0 : static_cast<double>(part) / static_cast<double>(whole);
}

}  // namespace

FiguresCard::FiguresCard(store::Store& store, WorkshopWays ways, QWidget* parent)
    : WorkCard(tr("Jobs of which time"), QStringLiteral("figures"), parent), store_(&store), ways_(std::move(ways)) {
  auto* row = widgets::lay_in<widgets::TurningRow>(body(), 6);
  for (const auto& [months, title] :
       {std::pair(12, tr("Last 12 months")), std::pair(36, tr("Last 3 years")), std::pair(0, tr("All jobs"))}) {
    auto* button = child_of<widgets::Button>(this, title);
    button->setObjectName(QStringLiteral("button-months-%1").arg(months));
    button->setCheckable(true);
    row->addWidget(button);
    spans_.emplace_back(months, button);
    connect(button, &QAbstractButton::clicked, this, [this, months = months] { choose_months(months); });
  }
  row->addStretch(1);
  add_text(tr("A vehicle is back soon within:"), "soft");
  auto* fields = widgets::lay_in<widgets::TurningRow>(body(), 12);
  distance_ = child_of<widgets::NumberField>(this, tr("Distance"), quantity::Unit::kilometre);
  distance_->setObjectName(QStringLiteral("field-within-km"));
  distance_->set_text("30000");
  days_ = child_of<widgets::NumberField>(this, tr("Time, in days"), quantity::Unit::piece);
  days_->setObjectName(QStringLiteral("field-within-days"));
  days_->set_text("365");
  fields->addWidget(distance_, 1);
  fields->addWidget(days_, 1);
  widgets::chain_fields({distance_, days_}, [this] { read(); });
  const auto* again =
      add_button(tr("Show the figures"), QStringLiteral("button-read-figures"), widgets::Button::Kind::main);
  connect(again, &QAbstractButton::clicked, this, &FiguresCard::read);
  add_progress();
  choose_months(months_);
}

void FiguresCard::choose_months(int months) {
  const bool is_other = months != months_;
  months_ = months;
  for (const auto& [of, button] : spans_) {
    button->setChecked(of == months);
  }
  if (is_other) {
    read();
  }
}

store::Period FiguresCard::period() const {
  const job::Moment now = ways_.clock();
  const QDate today = QDateTime::fromMSecsSinceEpoch(now.at_ms, Qt::OffsetFromUTC, now.offset_min * 60).date();
  const QDate first(today.year(), today.month(), 1);
  if (months_ == 0) {
    return {0, end_of_time_ms};
  }
  return {first.addMonths(1 - months_).startOfDay().toMSecsSinceEpoch(),
          today.addDays(1).startOfDay().toMSecsSinceEpoch()};
}

std::optional<store::BackWithin> FiguresCard::within() {
  const auto distance = distance_->number();
  const auto days = days_->number();
  if (!distance || !days) {
    tell_refused(distance ? days.error() : distance.error());
    return std::nullopt;
  }
  return store::BackWithin{distance->base, days->base};
}

void FiguresCard::read() {
  // Another time that is wanted meanwhile is read next: no figures stay under a button they are not of.
  wanted_ = works();
  const auto asked = wanted_ ? std::nullopt : within();
  if (!asked) {
    return;
  }
  run(tr("The figures are being read."),
      [this, asked = *asked, of = period(), path = store_->path()](const store::BackupWatch& watch) {
        auto figures = store::figures_of(path, of, asked, watch);
        return [this, figures = std::move(figures)] {
          if (wanted_) {
            read();
          } else if (figures) {
            tell(jobs_words(figures->jobs.size()), true);
            emit came(*figures);
          } else {
            tell_refused(figures.error());
          }
        };
      });
}

PeriodExportCard::PeriodExportCard(store::Store& store, WorkshopWays ways, std::function<store::Period()> period,
                                   QWidget* parent)
    : WorkCard(tr("Every measurement of this time as a file"), QStringLiteral("period-export"), parent),
      store_(&store),
      ways_(std::move(ways)),
      period_(std::move(period)) {
  add_text(tr("For a spreadsheet or another program. Plate and customer reference are in it unless they were erased."),
           "soft");
  const auto* csv = add_button(tr("Save as CSV"), QStringLiteral("button-export-period-csv"));
  const auto* json = add_button(tr("Save as JSON"), QStringLiteral("button-export-period-json"));
  add_progress();
  connect(csv, &QAbstractButton::clicked, this, [this] { begin(store::TableForm::csv); });
  connect(json, &QAbstractButton::clicked, this, [this] { begin(store::TableForm::json); });
}

void PeriodExportCard::begin(store::TableForm form) {
  const QString name =
      form == store::TableForm::csv ? QStringLiteral("measurements.csv") : QStringLiteral("measurements.json");
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  const QString chosen = ways_.data.choose_table ? ways_.data.choose_table(QDir(folder).filePath(name)) : QString();
  if (chosen.isEmpty()) {
    return;
  }
  const QString file = QFileInfo(chosen).absoluteFilePath();
  run(tr("The measurements are being written."), [this, form, file, of = period_(),
                                                  path = store_->path()](const store::BackupWatch& watch) {
    auto report = store::export_period(path, of, widgets::plain(file), form, watch);
    return [this, file, report = std::move(report)] {
      if (report) {
        tell(tr("%1 in: %2").arg(jobs_words(static_cast<std::size_t>(report->jobs)), QDir::toNativeSeparators(file)),
             true);
      } else {
        tell_refused(report.error());
      }
    };
  });
}

FiguresSection::FiguresSection(store::Store& store, WorkshopWays ways, QWidget* parent)
    : QWidget(parent), card_(nullptr), shown_(nullptr), column_(nullptr) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(child_of<widgets::Text>(this, tr("Figures of the workshop"), "heading"));
  card_ = child_of<FiguresCard>(this, store, ways);
  column->addWidget(card_);
  shown_ = child_of<QWidget>(this);
  column->addWidget(shown_);
  column->addWidget(child_of<PeriodExportCard>(this, store, std::move(ways), [this] { return card_->period(); }));
  connect(card_, &FiguresCard::came, this, &FiguresSection::show_figures);
}

void FiguresSection::show_figures(const store::Figures& figures) {
  auto* const old = shown_;
  shown_ = child_of<QWidget>(this);
  shown_->setObjectName(QStringLiteral("figures-shown"));
  column_ = widgets::lay<QVBoxLayout>(shown_, 12);
  widgets::put_in_place_of(*layout(), old, shown_);
  old->hide();
  old->deleteLater();
  show_months(figures);
  show_shims(figures);
  show_returns(figures);
  shown_->show();
}

widgets::Box* FiguresSection::add_box(const QString& heading, const QString& text) {
  auto* box = child_of<widgets::Box>(shown_, heading, text, "card");
  column_->addWidget(box);
  return box;
}

void FiguresSection::add_row(widgets::Box* box, const Figure& figure) {
  auto* row = child_of<FigureRow>(box, figure.title, figure.number, figure.share);
  row->setObjectName(QStringLiteral("figure-%1").arg(figure.title));
  box->body()->addWidget(row);
  if (!figure.jobs.empty()) {
    connect(row, &QAbstractButton::clicked, this,
            [this, heading = figure.title, jobs = figure.jobs] { emit jobs_wanted(heading, jobs); });
    return;
  }
  // A door to no jobs stays shut, and says so.
  auto* none = child_of<widgets::Text>(box, tr("%1: there is no such job in this time.").arg(figure.title));
  none->setObjectName(QStringLiteral("figure-none-%1").arg(figure.title));
  none->hide();
  box->body()->addWidget(none);
  connect(row, &QAbstractButton::clicked, this, [none] {
    none->show();
    bring_into_sight(*none);
  });
}

/// All bars of a box begin at one place.
void FiguresSection::align_bars(const widgets::Box& box) {
  int widest = 0;
  const auto rows = box.findChildren<FigureRow*>();
  for (const FigureRow* each : rows) {
    widest = std::max(widest, each->title_width());
  }
  for (FigureRow* each : rows) {
    each->set_title_room(widest);
  }
}

void FiguresSection::show_months(const store::Figures& figures) {
  std::size_t most = 0;
  for (const auto& [month, jobs] : figures.by_month) {
    most = std::max(most, jobs.size());
  }
  auto* months =
      add_box(tr("Jobs a month"), figures.by_month.empty() ? tr("No job was opened in this time.") : QString());
  for (const auto& [month, jobs] : with_months_between(figures.by_month)) {
    add_row(months, {month_words(month), QString::number(jobs.size()), share_of(jobs.size(), most), jobs});
  }
  align_bars(*months);
  if (!figures.elsewhere.empty()) {
    add_row(months, {tr("From another workshop, in none of the figures"), QString::number(figures.elsewhere.size()), -1,
                     figures.elsewhere});
  }
  auto* again = add_box(tr("A second assembly"), tr("Of the jobs in which a shim was chosen."));
  const double share = share_of(figures.again.size(), figures.with_shim.size());
  add_row(again,
          {tr("Pack off again"),
           tr("%1 of %2, %3 %").arg(figures.again.size()).arg(figures.with_shim.size()).arg(share * 100, 0, 'f', 0),
           share, figures.again});
}

void FiguresSection::show_shims(const store::Figures& figures) {
  const double mean =
      figures.shims_found == 0 ? 0 : static_cast<double>(figures.trials) / static_cast<double>(figures.shims_found);
  auto* trials =
      add_box(tr("Trials for a shim"),
              figures.shims_found == 0
                  ? tr("No shim was found by trials in this time.")
                  : tr("%1 on average, for %2 shims.").arg(QLocale().toString(mean, 'f', 1)).arg(figures.shims_found));
  for (const auto& [count, found] : figures.by_trials) {
    const auto shims = static_cast<std::size_t>(found.shims);
    add_row(trials, {count == 1 ? tr("1 trial") : tr("%1 trials").arg(count), QString::number(shims),
                     share_of(shims, static_cast<std::size_t>(figures.shims_found)), found.jobs});
  }
  align_bars(*trials);
  std::vector<const std::pair<const store::ShimName, store::JobIds>*> shims;
  for (const auto& each : figures.by_shim) {
    shims.push_back(&each);
  }
  std::stable_sort(shims.begin(), shims.end(),
                   [](const auto* left, const auto* right) { return left->second.size() > right->second.size(); });
  const std::size_t most = shims.empty() ? 0 : shims.front()->second.size();
  auto* used = add_box(tr("Shims most used"), tr("Those that were left in the vehicle; the first %1.").arg(most_shims));
  shims.resize(std::min(shims.size(), most_shims));
  for (const auto* each : shims) {
    add_row(used,
            {tr("%1, %2, %3")
                 .arg(widgets::qt(each->first.gearbox), side_words(each->first.side), widgets::qt(each->first.shim)),
             QString::number(each->second.size()), share_of(each->second.size(), most), each->second});
  }
  align_bars(*used);
}

void FiguresSection::show_returns(const store::Figures& figures) {
  auto* back = add_box(tr("Vehicles that were back soon"),
                       tr("Counted from the last job before on the same vehicle, also one from before this time."));
  add_row(back, {tr("Back within the distance and the days"), QString::number(figures.back.size()), -1, figures.back});
  add_row(back, {tr("Back within the days, distance not known"), QString::number(figures.back_by_time.size()), -1,
                 figures.back_by_time});
}

}  // namespace shimwright::workshop
