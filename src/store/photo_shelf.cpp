#include "shimwright/store/photo_shelf.h"

#include <QFile>
#include <QFileInfo>
#include <set>

#include "bring_photos.h"
#include "check_parts.h"
#include "opening.h"
#include "photos.h"
#include "shimwright/record/hash.h"

namespace shimwright::store {

namespace {

bool is_stopped(const BackupWatch& watch) {
  return watch.stop != nullptr && *watch.stop;
}

tl::unexpected<Error> photos_stopped() {
  return refuse("stopped", "", SHIMWRIGHT_TEXT("store", "This was stopped; what was there before is there still."));
}

enum class Brought { copied, there, gone };

Result<Brought> bring_photo(const QString& from, const QString& to, const std::string& sha256) {
  const QString target = photo_place(to, sha256);
  if (hash_of_file(target) == sha256) {
    return Brought::there;
  }
  QFile source(photo_place(from, sha256));
  const QByteArray content = source.open(QIODevice::ReadOnly) ? source.readAll() : QByteArray();
  if (record::sha256_hex({content.constData(), static_cast<std::size_t>(content.size())}) != sha256) {
    return Brought::gone;
  }
  auto written = write_photo(target, content);
  return written ? Result<Brought>(Brought::copied) : passed_on(written);
}

}  // namespace

Result<PhotosBrought> bring_photos(Connection& names_of, const QString& from, const QString& to,
                                   const BackupWatch& watch) {
  auto rows = names_of.rows("SELECT DISTINCT sha256 FROM photo ORDER BY sha256");
  if (!rows) {
    return passed_on(rows);
  }
  PhotosBrought brought;
  std::int64_t done = 0;
  for (const Row& row : *rows) {
    if (is_stopped(watch)) {
      return photos_stopped();
    }
    auto one = bring_photo(from, to, text_in(row, 0));
    if (!one) {
      return passed_on(one);
    }
    (*one == Brought::copied ? brought.copied : *one == Brought::there ? brought.there : brought.gone) += 1;
    if (watch.progress) {
      watch.progress(++done, static_cast<std::int64_t>(rows->size()) + 1);
    }
  }
  return brought;
}

Result<MissingPhotos> missing_photos(const std::string& store_path, const BackupWatch& watch) {
  if (auto checked = check_path(store_path); !checked) {
    return passed_on(checked);
  }
  const QString place = QString::fromStdString(store_path);
  auto connection = connect_checked(place, Access::look);
  if (!connection) {
    return passed_on(connection);
  }
  auto rows = (*connection)
                  ->rows(
                      "SELECT DISTINCT photo.sha256, photo.bytes, job.number FROM photo JOIN job ON job.id = "
                      "photo.job ORDER BY job.number, photo.sha256");
  if (!rows) {
    return passed_on(rows);
  }
  std::set<std::string> named;
  std::set<std::string> missing;
  MissingPhotos found;
  for (const Row& row : *rows) {
    if (is_stopped(watch)) {
      return photos_stopped();
    }
    const std::string sha256 = text_in(row, 0);
    named.insert(sha256);
    const QFileInfo file(photo_place(place, sha256));
    if (!file.isFile() || file.size() != number_in(row, 1)) {
      missing.insert(sha256);
      if (found.jobs.empty() || found.jobs.back() != text_in(row, 2)) {
        found.jobs.push_back(text_in(row, 2));
      }
    }
  }
  found.photos = static_cast<std::int64_t>(named.size());
  found.missing = static_cast<std::int64_t>(missing.size());
  return found;
}

Result<PhotosBrought> bring_back_photos(const std::string& store_path, const std::string& backup,
                                        const BackupWatch& watch) {
  for (const std::string& path : {store_path, backup}) {
    if (auto checked = check_path(path); !checked) {
      return passed_on(checked);
    }
  }
  const QString place = QString::fromStdString(store_path);
  auto connection = connect_checked(place, Access::look);
  return connection ? bring_photos(**connection, QString::fromStdString(backup), place, watch)
                    : Result<PhotosBrought>(passed_on(connection));
}

}  // namespace shimwright::store
