#include "photos.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

#include "camera_data.h"
#include "disk.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

namespace {

constexpr qint64 most_bytes = qint64{20} * 1024 * 1024;

Result<QByteArray> content_of(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    return refuse("photo_unreadable", path.toStdString(),
                  SHIMWRIGHT_TEXT("store", "This photo cannot be read; choose it again."));
  }
  if (file.size() > most_bytes) {
    return refuse("photo_too_large", path.toStdString(),
                  SHIMWRIGHT_TEXT("store", "This photo is larger than 20 MB; take it at a lower resolution."));
  }
  const QByteArray content = file.readAll();
  if (content.size() != file.size()) {
    return refuse("photo_unreadable", path.toStdString(),
                  SHIMWRIGHT_TEXT("store", "This photo cannot be read; choose it again."));
  }
  return content;
}

}  // namespace

std::optional<std::string> media_type_of(const QByteArray& content) {
  if (content.startsWith(QByteArray("\xFF\xD8\xFF", 3))) {
    return "image/jpeg";
  }
  if (content.startsWith(QByteArray("\x89PNG\r\n\x1A\n", 8))) {
    return "image/png";
  }
  return std::nullopt;
}

QString photo_folder(const QString& store_path) {
  return QFileInfo(store_path).absolutePath() + QStringLiteral("/photos");
}

QString photo_place(const QString& store_path, const std::string& sha256) {
  return photo_folder(store_path) + QLatin1Char('/') + QString::fromStdString(sha256.substr(0, 2)) + QLatin1Char('/') +
         QString::fromStdString(sha256);
}

std::optional<std::string> hash_of_file(const QString& path) {
  QFile file(path);
  QCryptographicHash hash(QCryptographicHash::Sha256);
  if (!file.open(QIODevice::ReadOnly) || !hash.addData(&file)) {
    return std::nullopt;
  }
  return hash.result().toHex().toStdString();
}

Result<void> write_photo(const QString& path, const QByteArray& content) {
  const QString folder = QFileInfo(path).absolutePath();
  if (auto made = make_private_folder(folder); !made) {
    return made;
  }
  return write_whole_file(path, content);
}

Result<KeptPhoto> Store::keep_photo(const std::string& file) {
  if (auto may = may_write(); !may) {
    return passed_on(may);
  }
  auto content = content_of(QString::fromStdString(file));
  if (!content) {
    return passed_on(content);
  }
  const auto media_type = media_type_of(*content);
  if (!media_type) {
    return refuse("photo_kind", file,
                  SHIMWRIGHT_TEXT("store", "This is neither a JPEG nor a PNG photo; choose one that is."));
  }
  const auto kept = without_place(*content);
  if (!kept) {
    return refuse("photo_damaged", file,
                  SHIMWRIGHT_TEXT("store",
                                  "This photo is damaged, so the place where it was taken cannot be told from the rest "
                                  "and left out; choose another one or take it again."));
  }
  const std::string sha256 = QCryptographicHash::hash(*kept, QCryptographicHash::Sha256).toHex().toStdString();
  const QString place = photo_place(connection_->path(), sha256);
  if (hash_of_file(place) != sha256) {
    if (auto written = write_photo(place, *kept); !written) {
      return passed_on(written);
    }
  }
  return KeptPhoto{sha256, *media_type, kept->size()};
}

std::string Store::photo_path(const std::string& sha256) const {
  return photo_place(connection_->path(), sha256).toStdString();
}

}  // namespace shimwright::store
