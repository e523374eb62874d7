#include "shimwright/print/pictures.h"

#include <QBuffer>
#include <QCryptographicHash>
#include <QFile>
#include <QImageReader>
#include <optional>

namespace shimwright::print {

namespace {

constexpr int most_pixels = 1600;  // 170 mm wide, that is 240 to the inch
constexpr int jpeg_quality = 85;
constexpr qint64 most_file_bytes = qint64{20} * 1024 * 1024;

std::optional<QByteArray> whole_file(const QString& path, const std::string& sha256) {
  QFile file(path);
  if (path.isEmpty() || !file.open(QIODevice::ReadOnly) || file.size() > most_file_bytes) {
    return std::nullopt;
  }
  QByteArray content = file.readAll();
  const QByteArray hash = QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex();
  return hash.toStdString() == sha256 ? std::optional(std::move(content)) : std::nullopt;
}

/// The dots alone: a reader hands on what was written beside them, and a writer writes it again.
QImage bare(const QImage& read) {
  const QImage flat = read.convertToFormat(QImage::Format_RGB32);
  return QImage(flat.constBits(), flat.width(), flat.height(), flat.bytesPerLine(), flat.format()).copy();
}

std::optional<std::string> as_printed(QByteArray content) {
  QBuffer source(&content);
  QImageReader reader(&source);
  reader.setAutoTransform(true);
  if (const QSize size = reader.size(); size.width() > most_pixels || size.height() > most_pixels) {
    reader.setScaledSize(size.scaled(most_pixels, most_pixels, Qt::KeepAspectRatio));
  }
  const QImage image = bare(reader.read());
  QByteArray printed;
  QBuffer target(&printed);
  if (image.isNull() || !image.save(&target, "JPG", jpeg_quality)) {
    return std::nullopt;
  }
  return printed.toStdString();
}

}  // namespace

std::map<std::string, std::string> pictures_for_paper(
    const record::Record& record, const std::function<std::string(const std::string& sha256)>& path_of) {
  std::map<std::string, std::string> pictures;
  for (const record::Photo& each : record.photos) {
    if (auto content = whole_file(QString::fromStdString(path_of(each.sha256)), each.sha256)) {
      if (auto printed = as_printed(std::move(*content))) {
        pictures.emplace(each.sha256, std::move(*printed));
      }
    }
  }
  return pictures;
}

}  // namespace shimwright::print
