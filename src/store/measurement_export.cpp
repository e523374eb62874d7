#include "shimwright/store/measurement_export.h"

#include <QFile>
#include <QFileInfo>
#include <utility>

#include "connection.h"
#include "disk.h"
#include "opening.h"
#include "record_names.h"
#include "shimwright/job/evolve.h"
#include "shimwright/record/measurement_table.h"

namespace shimwright::store {

namespace {

/// What every file of the form begins with.
std::string begins_with(TableForm form) {
  return form == TableForm::csv ? record::csv_head() : record::measurements_begin();
}

/// Nothing lies there, or an older file of ours.
Result<void> is_free(const QString& out, TableForm form) {
  QFile there(out);
  if (!QFileInfo::exists(out)) {
    return {};
  }
  const std::string expected = begins_with(form);
  if (there.open(QIODevice::ReadOnly) &&
      there.read(static_cast<qint64>(expected.size())) == QByteArray::fromStdString(expected)) {
    return {};
  }
  return refuse("file_in_the_way", "",
                SHIMWRIGHT_TEXT("store",
                                "Something other than an older export of measurements lies there and is not written "
                                "over; choose another name."));
}

}  // namespace

MeasurementExport::MeasurementExport(Store& store, std::vector<std::string> jobs, std::string out, TableForm form,
                                     WholeFile file)
    : store_(&store),
      jobs_(std::move(jobs)),
      out_(std::move(out)),
      form_(form),
      file_(std::make_unique<WholeFile>(std::move(file))) {}

MeasurementExport::MeasurementExport(MeasurementExport&& other) noexcept = default;
MeasurementExport::~MeasurementExport() = default;

Result<MeasurementExport> MeasurementExport::begin(Store& store, std::vector<std::string> jobs, const std::string& out,
                                                   TableForm form) {
  if (auto absolute = check_path(out); !absolute) {
    return passed_on(absolute);
  }
  const QString place = QString::fromStdString(out);
  if (auto free = is_free(place, form); !free) {
    return passed_on(free);
  }
  auto file = WholeFile::begin(place);
  if (!file) {
    return passed_on(file);
  }
  MeasurementExport made(store, std::move(jobs), out, form, *std::move(file));
  if (auto wrote = made.file_->write(QByteArray::fromStdString(begins_with(form))); !wrote) {
    return passed_on(wrote);
  }
  return Result<MeasurementExport>(std::move(made));
}

Result<void> MeasurementExport::write_next() {
  const std::string& job = jobs_[written_];
  auto loaded = store_->load(job);
  if (!loaded) {
    return passed_on(loaded);
  }
  auto names = record_names(*store_, *loaded);
  if (!names) {
    return passed_on(names);
  }
  const record::Record record = record::make_record(job::fold(loaded->sheets, loaded->entries), *names);
  const std::string between = form_ == TableForm::json && written_ > 0 ? "," : "";
  ++written_;
  return file_->write(QByteArray::fromStdString(
      between + (form_ == TableForm::csv ? record::csv_lines(job, record) : record::measurements_json(job, record))));
}

Result<TableReport> MeasurementExport::finish() {
  Result<void> done =
      form_ == TableForm::json ? file_->write(QByteArray::fromStdString(record::measurements_end())) : Result<void>();
  if (done) {
    auto on_disk = file_->unnamed();
    done = on_disk ? file_->name() : passed_on(on_disk);
  }
  if (!done) {
    return passed_on(done);
  }
  return TableReport{out_, jobs()};
}

Result<TableReport> export_jobs(Store& store, std::vector<std::string> jobs, const std::string& out, TableForm form,
                                const BackupWatch& watch) {
  auto writing = MeasurementExport::begin(store, std::move(jobs), out, form);
  if (!writing) {
    return passed_on(writing);
  }
  for (std::int64_t done = 0; !writing->all_written();) {
    if (watch.stop != nullptr && watch.stop->load()) {
      return refuse("stopped", "", SHIMWRIGHT_TEXT("store", "The export was stopped; no file was left."));
    }
    if (auto wrote = writing->write_next(); !wrote) {
      return passed_on(wrote);
    }
    if (watch.progress) {
      watch.progress(++done, writing->jobs());
    }
  }
  return writing->finish();
}

Result<TableReport> export_period(const std::string& store_path, const Period& period, const std::string& out,
                                  TableForm form, const BackupWatch& watch) {
  auto store = Store::open(store_path, {Mode::look_only, "", period.to_ms});
  if (!store) {
    return passed_on(store);
  }
  auto jobs = jobs_of_period(**store, period);
  if (!jobs) {
    return passed_on(jobs);
  }
  return export_jobs(**store, std::move(*jobs), out, form, watch);
}

}  // namespace shimwright::store
