#include "job_file_card.h"

#include <QDir>
#include <QLineEdit>
#include <QStringList>
#include <utility>
#include <vector>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"

namespace shimwright::workshop {

namespace {

constexpr int widest_number = 320;

/// One file for each job of that number.
Result<std::vector<std::string>> export_all(const std::string& store, const std::vector<store::JobSummary>& jobs,
                                            const QString& folder, const store::BackupWatch& watch) {
  std::vector<std::string> files;
  for (const store::JobSummary& each : jobs) {
    const QString name = widgets::qt(store::export_name(each.number, each.id));
    auto report = store::export_job(store, each.id, widgets::plain(QDir(folder).absoluteFilePath(name)), watch);
    if (!report) {
      return tl::make_unexpected(report.error());
    }
    files.push_back(report->file);
  }
  return files;
}

}  // namespace

JobFileCard::JobFileCard(store::Store& store, DataWays ways, QWidget* parent)
    : WorkCard(tr("A job for another workshop"), QStringLiteral("job-file"), parent),
      store_(&store),
      ways_(std::move(ways)) {
  add_text(tr("A whole job goes into one file: entries, sheets, seal, and photos as they were taken, with the place "
              "where the camera wrote it down. Personal texts are in it unless they were erased."),
           "soft");
  number_ = widgets::child_of<widgets::WordField>(this, tr("Job number"));
  number_->setObjectName(QStringLiteral("export-number"));
  number_->setMaximumWidth(widest_number);
  body()->addWidget(number_);
  const auto* out = add_button(tr("Write the job to a file"), QStringLiteral("button-export"));
  auto* in = add_button(tr("Take in a job from a file"), QStringLiteral("button-import"));
  if (store.looks_only()) {
    switch_off(in);
  }
  add_progress();
  connect(out, &QAbstractButton::clicked, this, &JobFileCard::begin_export);
  connect(in, &QAbstractButton::clicked, this, &JobFileCard::begin_import);
}

void JobFileCard::begin_export() {
  auto jobs = store_->jobs_numbered(number_->text());
  if (!jobs) {
    tell_refused(jobs.error());
    return;
  }
  if (jobs->empty()) {
    tell(tr("There is no job of this number in the store: look at the number again."), false);
    number_->edit()->setFocus();
    return;
  }
  const QString folder = ways_.choose_export_folder ? ways_.choose_export_folder() : QString();
  if (folder.isEmpty()) {
    return;
  }
  run(tr("The job is being written."),
      [this, folder, path = store_->path(), jobs = std::move(*jobs)](const store::BackupWatch& watch) {
        auto files = export_all(path, jobs, folder, watch);
        return [this, files = std::move(files)] {
          if (!files) {
            tell_refused(files.error());
            return;
          }
          QStringList lines;
          for (const std::string& each : *files) {
            lines.append(tr("Written and read again: %1").arg(QDir::toNativeSeparators(widgets::qt(each))));
          }
          tell(lines.join(QLatin1Char('\n')), true);
        };
      });
}

void JobFileCard::begin_import() {
  const QString file = ways_.choose_job_file ? ways_.choose_job_file() : QString();
  if (file.isEmpty()) {
    return;
  }
  const store::By by = ways_.by ? ways_.by() : store::By();
  run(tr("The file is being looked through."),
      [this, by, path = store_->path(), from = widgets::plain(file)](const store::BackupWatch& watch) {
        auto report = store::import_job(path, from, by, watch);
        return [this, report = std::move(report)] {
          if (report) {
            show_import(*report);
          } else {
            tell_refused(report.error());
          }
        };
      });
}

void JobFileCard::show_import(const store::ImportReport& report) {
  const QString number = widgets::qt(report.number).simplified();
  QStringList lines;
  if (report.entries_new == 0) {
    lines.append(tr("Job %1 is here already, with all its entries.").arg(number));
  } else if (report.entries_there == 0) {
    lines.append(
        tr("Job %1 was taken in: %2 entries, %3 photos.").arg(number).arg(report.entries_new).arg(report.photos_new));
  } else {
    lines.append(tr("Job %1 went on: %2 entries were added to the %3 that are here.")
                     .arg(number)
                     .arg(report.entries_new)
                     .arg(report.entries_there));
  }
  for (const Message& each : report.told) {
    lines.append(widgets::say(each).simplified());
  }
  tell(lines.join(QLatin1Char('\n')), true);
  emit job_came();
}

}  // namespace shimwright::workshop
