#pragma once

#include <memory>
#include <string>
#include <string_view>

#include <QCoreApplication>
#include <QTemporaryDir>

#include "shimwright/store/store.h"

/// What the fuzzers of files start from: a workshop with one whole job, made once, sealed and with its photos.
namespace shimwright::fuzz {

inline constexpr std::int64_t now_ms = 1795421400000;

class FuzzWorkshop {
 public:
  FuzzWorkshop();

  [[nodiscard]] const std::string& job() const { return job_; }
  /// The store's file; closed, and emptied of its log.
  [[nodiscard]] const QByteArray& store_file() const { return store_file_; }
  /// The first line of the job's file, and all lines of photos after it.
  [[nodiscard]] const QByteArray& job_line() const { return job_line_; }
  [[nodiscard]] const QByteArray& photo_lines() const { return photo_lines_; }
  [[nodiscard]] QString place(const QString& name) const { return folder_.filePath(name); }
  /// Lays a file there anew; nothing of an earlier one is left beside it.
  void lay(const QString& place, const QByteArray& content) const;

 private:
  int count_ = 1;
  char name_[5] = "fuzz";
  char* words_[2] = {name_, nullptr};
  QCoreApplication application_{count_, words_};
  QTemporaryDir folder_;
  std::string job_;
  QByteArray store_file_;
  QByteArray job_line_;
  QByteArray photo_lines_;
};

}  // namespace shimwright::fuzz
