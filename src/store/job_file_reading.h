#pragma once

#include <memory>
#include <optional>

#include <QCryptographicHash>
#include <QFile>

#include "job_file_lines.h"

namespace shimwright::store {

/// Goes through a job's file from line to line; keeps one line at a time.
class JobFileReading {
 public:
  /// Codes: `cannot_read`.
  [[nodiscard]] static Result<std::unique_ptr<JobFileReading>> begin(const QString& path);

  /// Code: `too_large`, `not_job_file`, and as read_job_line().
  [[nodiscard]] Result<JobLine> job();
  /// The next photo, which has to be this one. Code: `job_file_damaged`.
  [[nodiscard]] Result<QByteArray> photo(const FilePhoto& expected);
  /// The last line, and nothing after it. Code: `job_file_damaged`.
  [[nodiscard]] Result<void> end();

 private:
  explicit JobFileReading(const QString& path) : file_(path) {}
  /// Without its line feed; nothing where none comes within that length.
  [[nodiscard]] std::optional<QByteArray> next_line(std::size_t longest);
  /// The same, under the hash.
  [[nodiscard]] std::optional<QByteArray> hashed_line(std::size_t longest);

  QFile file_;
  QCryptographicHash hash_{QCryptographicHash::Sha256};
};

}  // namespace shimwright::store
