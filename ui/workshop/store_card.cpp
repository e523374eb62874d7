#include "store_card.h"

#include <QDir>
#include <QDirIterator>
#include <QFileInfo>
#include <QLocale>
#include <algorithm>

#include "shimwright/widgets/say.h"

namespace shimwright::workshop {

namespace {

/// Store, log and photos.
qint64 bytes_of(const QString& store) {
  qint64 bytes = QFileInfo(store).size() + QFileInfo(store + QStringLiteral("-wal")).size();
  QDirIterator photos(QFileInfo(store).absolutePath() + QStringLiteral("/photos"), QDir::Files,
                      QDirIterator::Subdirectories);
  while (photos.hasNext()) {
    photos.next();
    bytes += photos.fileInfo().size();
  }
  return bytes;
}

}  // namespace

QString size_text(qint64 bytes) {
  return QLocale::c().formattedDataSize(bytes, 1, QLocale::DataSizeSIFormat);
}

StoreCard::StoreCard(store::Store& store, QWidget* parent)
    : WorkCard(tr("The store"), QStringLiteral("check"), parent), store_(&store) {
  place_ = add_text(QString());
  place_->setObjectName(QStringLiteral("store-place"));
  place_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  size_ = add_text(QString());
  size_->setObjectName(QStringLiteral("store-jobs"));
  add_text(tr("The check goes through every entry, reading and photo and compares it with what was written. Jobs go on "
              "meanwhile."),
           "soft");
  const auto* begin = add_button(tr("Check the store"), QStringLiteral("button-check"));
  add_progress();
  connect(begin, &QAbstractButton::clicked, this, &StoreCard::begin_check);
}

void StoreCard::refresh() {
  const QString path = widgets::qt(store_->path());
  place_->setText(QDir::toNativeSeparators(path));
  const auto count = store_->job_count();
  const QString jobs = count ? (*count == 1 ? tr("1 job") : tr("%1 jobs").arg(*count)) : widgets::say(count.error());
  size_->setText(tr("%1, %2 with photos").arg(jobs, size_text(bytes_of(path))));
}

void StoreCard::begin_check() {
  run(tr("The store is being checked."), [this, path = store_->path()](const store::BackupWatch& watch) {
    // A connection of this thread: the window's own is not to be used here.
    const auto store = store::Store::open(path, {store::Mode::look_only, {}, 0});
    auto report = store ? store::check(**store, watch) : tl::make_unexpected(store.error());
    return [this, report = std::move(report)] {
      if (report) {
        show_report(*report);
      } else {
        tell_refused(report.error());
      }
    };
  });
}

void StoreCard::show_report(const store::CheckReport& report) {
  if (report.in_order()) {
    QString text = tr("All is as it was written. Jobs: %1, entries: %2, photos: %3.")
                       .arg(report.jobs)
                       .arg(report.entries)
                       .arg(report.photos);
    if (report.sealed_elsewhere > 0) {
      text += QLatin1Char(' ') + tr("Sealed in another store: %1.").arg(report.sealed_elsewhere);
    }
    tell(text, true);
    return;
  }
  constexpr std::size_t most = 6;
  QString text =
      tr("Not as it was written, in so many places: %1. Keep the store as it is, and look at your last backup.")
          .arg(report.findings.size());
  for (std::size_t at = 0; at < std::min(most, report.findings.size()); ++at) {
    const store::Finding& each = report.findings[at];
    text += QStringLiteral("\n%1: %2").arg(widgets::qt(each.place()), widgets::say(each.message));
  }
  if (report.findings.size() > most) {
    text += QLatin1Char('\n') + tr("and %1 more").arg(report.findings.size() - most);
  }
  tell(text, false);
}

}  // namespace shimwright::workshop
