#include "shimwright/print/pictures.h"

#include <catch2/catch.hpp>

#include <QCryptographicHash>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>

using namespace shimwright;

namespace {

struct Photos {
  QTemporaryDir folder;
  record::Record record;

  std::string keep(const QByteArray& content) {
    const QByteArray hash = QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex();
    QFile file(folder.filePath(QString::fromLatin1(hash)));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(content);
    record::Photo photo;
    photo.sha256 = hash.toStdString();
    record.photos.push_back(photo);
    return photo.sha256;
  }
  std::string keep(const QImage& image, const char* format) {
    const QString path = folder.filePath("made");
    REQUIRE(image.save(path, format));
    QFile made(path);
    REQUIRE(made.open(QIODevice::ReadOnly));
    return keep(made.readAll());
  }
  [[nodiscard]] std::map<std::string, std::string> printed() const {
    return print::pictures_for_paper(record, [this](const std::string& hash) {
      return folder.filePath(QString::fromStdString(hash)).toStdString();
    });
  }
};

QImage image_of(const std::string& bytes) {
  return QImage::fromData(QByteArray::fromStdString(bytes));
}

QImage red(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(Qt::red);
  return image;
}

}  // namespace

TEST_CASE("a photo goes on paper no larger than paper shows") {
  Photos photos;
  const std::string large = photos.keep(red(4000, 3000), "JPG");
  const std::string small = photos.keep(red(300, 200), "PNG");
  const auto printed = photos.printed();
  CHECK(image_of(printed.at(large)).size() == QSize(1600, 1200));
  CHECK(image_of(printed.at(small)).size() == QSize(300, 200));
}

TEST_CASE("what a camera wrote beside the picture does not go on paper") {
  Photos photos;
  const QString path = photos.folder.filePath("camera.jpg");
  REQUIRE(red(40, 20).save(path, "JPG"));
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  QByteArray content = file.readAll();
  // A comment segment of the format, right behind its start.
  const QByteArray place("51.0000 N 7.0000 E");
  QByteArray segment("\xFF\xFE", 2);
  segment += static_cast<char>(0);
  segment += static_cast<char>(place.size() + 2);
  content.insert(2, segment + place);
  const std::string hash = photos.keep(content);
  const auto printed = photos.printed();
  REQUIRE_FALSE(image_of(printed.at(hash)).isNull());
  CHECK(printed.at(hash).find("51.0000") == std::string::npos);
}

TEST_CASE("a file that is missing, changed or no picture is left out") {
  Photos photos;
  const std::string none = photos.keep(QByteArray("no picture at all"));
  const std::string changed = photos.keep(red(30, 30), "PNG");
  QFile file(photos.folder.filePath(QString::fromStdString(changed)));
  REQUIRE(file.open(QIODevice::Append));
  file.write("more");
  file.close();
  record::Photo gone;
  gone.sha256 = std::string(64, '0');
  photos.record.photos.push_back(gone);
  CHECK(photos.printed().empty());
  static_cast<void>(photos.keep(red(30, 20), "PNG"));
  CHECK(photos.printed().size() == 1);
  CHECK(print::pictures_for_paper(photos.record, [](const std::string& /*sha256*/) { return std::string(); }).empty());
}
