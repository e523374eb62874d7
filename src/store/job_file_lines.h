#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <QByteArray>

#include "shimwright/quantity/error.h"
#include "shimwright/record/signed_record.h"

/// The lines of a job's file (docs/formats/job-file.md): the job, its photos one by one, and a hash over them all.
namespace shimwright::store {

inline constexpr std::size_t longest_job_line = std::size_t{16} * 1024 * 1024;
inline constexpr std::size_t longest_photo = std::size_t{20} * 1024 * 1024;
/// Four characters stand for three bytes; the rest is the members around them.
inline constexpr std::size_t longest_photo_line = longest_photo / 3 * 4 + 256;

struct FilePerson {
  std::string id;
  std::string name;
  std::string initials;
  friend bool operator==(const FilePerson&, const FilePerson&) = default;
};

struct FilePhoto {
  std::string sha256;
  std::int64_t bytes = 0;
  friend bool operator==(const FilePhoto&, const FilePhoto&) = default;
};

/// The first line, as it stands there: what it says is still to be looked at.
struct JobLine {
  std::string store;     ///< id of the store it comes from
  std::string workshop;  ///< its name
  std::string job;
  std::string job_sheet;  ///< byte for byte
  std::string spec_sheet;
  std::vector<record::StoredEntry> entries;
  std::vector<FilePerson> persons;
  std::map<std::string, record::PersonalText> personal;
  std::optional<record::SignedRecord> seal;  ///< without its entries and personal texts
  std::vector<FilePhoto> photos;
};

/// Without the line feed. Code: `not_utf8`.
[[nodiscard]] Result<QByteArray> written(const JobLine& line);
[[nodiscard]] QByteArray photo_line(const std::string& sha256, const QByteArray& content);
[[nodiscard]] QByteArray end_line(const std::string& sha256);

/// Strict: each member of its type, none unknown, none twice. Codes: `not_job_file`, `newer_format`, those of
/// json::parse() and json::ObjectReader, `bad_statement`.
[[nodiscard]] Result<JobLine> read_job_line(const QByteArray& line);
/// The content of a photo, which has that hash and that size. Codes: `job_file_damaged`, those of the JSON reader.
[[nodiscard]] Result<QByteArray> read_photo_line(const QByteArray& line, const FilePhoto& expected);
/// The hash the last line says.
[[nodiscard]] Result<std::string> read_end_line(const QByteArray& line);

}  // namespace shimwright::store
