// What of the record's page goes on paper or into a file.
#include <QDir>
#include <QFileInfo>
#include <QPrinter>
#include <QStandardPaths>
#include <utility>

#include "page_column.h"
#include "page_run.h"
#include "printing.h"
#include "shimwright/past/record_view.h"
#include "shimwright/print/pictures.h"
#include "shimwright/store/job_record.h"
#include "shimwright/widgets/background_work.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"

namespace shimwright::past {

namespace {

/// A path for a file that a person may have named without its ending.
QString with_ending(const QString& path) {
  const QString with = path + QStringLiteral(".pdf");
  return QFileInfo(path).suffix().isEmpty() && !QFileInfo::exists(with) ? with : path;
}

}  // namespace

void RecordView::say_end(bool finished) {
  show_run(false);
  say_result(finished ? texts_.done : texts_.stopped, true);
  if (finished) {
    first_print_is_made();
  }
}

void RecordView::stop() {
  run_->stop();
  if (writing_->runs()) {
    stop_->setEnabled(false);
    writing_->stop();
  }
}

void RecordView::first_print_is_made() {
  just_sealed_ = false;
  if (record_ && record_->seal && !record_->seal->reprint) {
    record::Record again = std::move(*record_);
    again.seal->reprint = true;
    show_record(std::move(again));
    zoom();
  }
}

void RecordView::save() {
  if (!record_ || run_->runs()) {
    return;
  }
  const QString chosen = ways_.choose_file(suggested_file());
  if (!chosen.isEmpty()) {
    save_to(with_ending(QFileInfo(chosen).absoluteFilePath()));
  }
}

void RecordView::save_to(const QString& path) {
  const std::optional<record::Record>& of_view = record_;
  if (!of_view) {
    return;
  }
  texts_ = {tr("Writing page %1 of %2"), tr("Saved: %1").arg(QDir::toNativeSeparators(path)),
            tr("Stopped: nothing was written.")};
  show_run(true);
  say_result(texts_.page.arg(1).arg(pages_->pages().size()), true);
  writing_->begin_instead([this, path = widgets::plain(path), paper = ways_.paper, record = *of_view,
                           &fonts = *fonts_](const store::BackupWatch& watch) {
    const auto written = write_to_file(record, path, paper, fonts, watch);
    return [this, written] {
      if (written) {
        say_end(*written);
      } else {
        show_run(false);
        say_result(widgets::say(written.error()), false);
      }
    };
  });
}

void RecordView::print() {
  if (!record_ || run_->runs()) {
    return;
  }
  auto printer = printer_for(*record_, ways_.paper);
  if (!ways_.choose_printer(*printer)) {
    return;
  }
  run(steps_to_printer(std::move(printer), *record_, ways_.paper, *fonts_),
      {tr("Printing page %1 of %2"), tr("Handed to the printer."),
       tr("Stopped. Pages the printer had already may still come out.")});
}

void RecordView::show_photos(bool shown) {
  reading_->drop();
  if (!record_) {
    return;
  }
  if (shown) {
    read_pictures();
  } else {
    put_pictures(false, {});
  }
}

void RecordView::read_pictures() {
  const std::optional<record::Record>& of_view = record_;
  if (!of_view) {
    return;
  }
  allow(false);  // a paper without the photos is not what the button says
  say_result(tr("The photos are being read."), true);
  std::map<std::string, std::string> paths;
  for (const auto& each : of_view->photos) {
    paths.emplace(each.sha256, store_->photo_path(each.sha256));
  }
  reading_->begin_instead([this, record = *of_view, paths = std::move(paths)](const store::BackupWatch& watch) {
    auto pictures = print::pictures_for_paper(record, [&](const std::string& sha256) {
      const auto path = paths.find(sha256);
      return watch.stop->load() || path == paths.end() ? std::string() : path->second;
    });
    return [this, pictures = std::move(pictures)] { put_pictures(true, pictures); };
  });
}

void RecordView::put_pictures(bool shown, std::map<std::string, std::string> pictures) {
  std::optional<record::Record>& of_view = record_;
  if (!of_view) {
    return;
  }
  record::Record record = *std::move(of_view);
  record.with_photos = shown;
  record.pictures = std::move(pictures);
  show_record(std::move(record));
  say_result({}, true);
  allow(true);
  zoom();
}

void RecordView::print_slip() {
  if (run_->runs() || !fonts_) {
    return;
  }
  const auto slip = store::shift_slip_of(*store_, job_);
  if (!slip) {
    say_result(widgets::say(slip.error()), false);
    return;
  }
  auto printer = printer_for_slip(*slip);
  if (ways_.choose_printer(*printer)) {
    run(slip_to_printer(std::move(printer), *slip, *fonts_),
        {tr("Printing page %1 of %2"), tr("Handed to the printer."),
         tr("Stopped. Pages the printer had already may still come out.")});
  }
}

QString RecordView::suggested_file() const {
  QString name = tr("record-%1").arg(record_ ? widgets::qt(record_->job.number) : QString());
  for (QChar& each : name) {
    if (!each.isLetterOrNumber() && each != QLatin1Char('-') && each != QLatin1Char('_')) {
      each = QLatin1Char('-');
    }
  }
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  return QDir(folder).filePath(name + QStringLiteral(".pdf"));
}

void RecordView::run(PageSteps steps, RunTexts texts) {
  texts_ = std::move(texts);
  show_run(true);
  run_->begin(std::move(steps));
}

void RecordView::show_run(bool runs) {
  const bool stop_had_focus = stop_->hasFocus();
  allow(!runs);
  photos_->setEnabled(!runs);
  stop_->setEnabled(true);
  stop_->setVisible(runs);
  if (runs) {
    stop_->setFocus();
  } else if (stop_had_focus) {
    save_->setFocus();
  }
}

}  // namespace shimwright::past
