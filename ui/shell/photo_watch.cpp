#include "shimwright/shell/photo_watch.h"

#include <algorithm>
#include <utility>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"

namespace shimwright::shell {

namespace {

constexpr std::size_t most_named = 5;

QString matter() {
  return QStringLiteral("photos");
}

QString in_short(const std::vector<std::string>& numbers) {
  QStringList named;
  for (std::size_t index = 0; index < std::min(numbers.size(), most_named); ++index) {
    named << widgets::qt(numbers[index]);
  }
  return named.join(QStringLiteral(", ")) + (numbers.size() > most_named ? QStringLiteral(" …") : QString());
}

}  // namespace

PhotoWatch::PhotoWatch(const store::Store& store, const Settings& settings, Notices& notices, QObject* parent)
    : QObject(parent),
      store_(&store),
      settings_(&settings),
      notices_(&notices),
      work_(widgets::child_of<widgets::BackgroundWork>(this)) {}

void PhotoWatch::look() {
  if (works()) {
    return;
  }
  work_->begin([this, path = store_->path()](const store::BackupWatch& watch) {
    auto found = store::missing_photos(path, watch);
    return [this, found = std::move(found)] {
      if (!found) {
        tell(widgets::say(found.error()));
      } else if (found->missing > 0) {
        tell_missing(*found);
      }
    };
  });
}

void PhotoWatch::bring_back(const QString& backup) {
  if (works()) {
    return;
  }
  work_->begin([this, path = store_->path(), backup = widgets::plain(backup)](const store::BackupWatch& watch) {
    auto brought = store::bring_back_photos(path, backup, watch);
    return [this, brought = std::move(brought)] {
      if (brought) {
        tell_brought(*brought);
      } else {
        tell(widgets::say(brought.error()));
      }
    };
  });
}

void PhotoWatch::tell_missing(const store::MissingPhotos& found) {
  const QString sentence = tr("Photos that are gone from the folder of photos: %1. They are of job %2.")
                               .arg(found.missing)
                               .arg(in_short(found.jobs));
  const auto last = settings_->last_backup();
  if (store_->looks_only() || !last) {
    tell(sentence);
    return;
  }
  notices_->offer(matter(), sentence, tr("Bring them back from the backup"),
                  [this, file = last->file] { bring_back(file); });
}

void PhotoWatch::tell_brought(const store::PhotosBrought& brought) {
  if (brought.gone == 0) {
    tell(tr("Photos that are back: %1. None is missing now.").arg(brought.copied));
  } else {
    tell(tr("Photos that are back: %1. Not in the backup either: %2.").arg(brought.copied).arg(brought.gone));
  }
}

void PhotoWatch::tell(const QString& sentence) {
  notices_->tell(matter(), sentence);
}

}  // namespace shimwright::shell
