#include "job_file_reading.h"

#include <QFileInfo>

#include "photos.h"

namespace shimwright::store {

namespace {

tl::unexpected<Error> cut_off() {
  return refuse("job_file_damaged", "",
                SHIMWRIGHT_TEXT("store",
                                "This job file is not as it was written, its end may be missing: have it exported "
                                "anew."));
}

}  // namespace

Result<std::unique_ptr<JobFileReading>> JobFileReading::begin(const QString& path) {
  // NOLINTNEXTLINE(cppcoreguidelines-owning-memory): the constructor is private, the owner takes it at once.
  std::unique_ptr<JobFileReading> reading(new JobFileReading(path));
  if (!QFileInfo(path).isFile() || !reading->file_.open(QIODevice::ReadOnly)) {
    return refuse("cannot_read", path.toStdString(),
                  SHIMWRIGHT_TEXT("store", "This file cannot be read: look whether it is there and may be read."));
  }
  return reading;
}

std::optional<QByteArray> JobFileReading::next_line(std::size_t longest) {
  QByteArray bytes = file_.readLine(static_cast<qint64>(longest) + 2);
  if (!bytes.endsWith('\n')) {
    return std::nullopt;
  }
  bytes.chop(1);
  return bytes;
}

std::optional<QByteArray> JobFileReading::hashed_line(std::size_t longest) {
  auto bytes = next_line(longest);
  if (bytes) {
    hash_.addData(*bytes);
    hash_.addData(QByteArrayView("\n"));
  }
  return bytes;
}

Result<JobLine> JobFileReading::job() {
  // Most of what is no file of ours is known by its beginning, however long its lines are.
  if (file_.peek(2) != "{\"") {
    return read_job_line({});
  }
  const qint64 size = file_.size();
  const auto first = hashed_line(longest_job_line);
  if (!first && size > static_cast<qint64>(longest_job_line)) {
    return refuse("too_large", "",
                  SHIMWRIGHT_TEXT("store", "This job file is larger than any of this program; have it looked at."));
  }
  return first ? read_job_line(*first) : cut_off();
}

Result<QByteArray> JobFileReading::photo(const FilePhoto& expected) {
  const auto next = hashed_line(longest_photo_line);
  auto content = next ? read_photo_line(*next, expected) : cut_off();
  if (content && !media_type_of(*content)) {
    return refuse("photo_kind", expected.sha256,
                  SHIMWRIGHT_TEXT("store", "This is neither a JPEG nor a PNG photo; choose one that is."));
  }
  return content;
}

Result<void> JobFileReading::end() {
  const std::string expected = hash_.result().toHex().toStdString();
  const auto last = next_line(256);
  auto said = last ? read_end_line(*last) : cut_off();
  return said && *said == expected && file_.atEnd() ? Result<void>() : cut_off();
}

}  // namespace shimwright::store
