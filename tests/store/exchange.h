#pragma once

#include <string>

#include <QDir>
#include <QDirIterator>
#include <QFile>

#include <nlohmann/json.hpp>

#include "sample_photos.h"
#include "sealed_job.h"
#include "shimwright/record/hash.h"
#include "shimwright/store/check.h"
#include "shimwright/store/exchange.h"

/// What the tests of job files share: jobs worth exporting, and files taken apart and put together again.
namespace shimwright::store::test {

inline QByteArray tiny_photo(int which) {
  return bare_jpeg("invented photo " + QByteArray::number(which));
}

inline std::string hash_of(const QByteArray& content) {
  return record::sha256_hex({content.constData(), static_cast<std::size_t>(content.size())});
}

inline void put_file(const QString& path, const QByteArray& content) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write(content) == content.size());
}

inline QByteArray content_of(const std::string& path) {
  QFile file(QString::fromStdString(path));
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

/// Sheets that need not be in any store.
inline job::Sheets sheets_from(const std::string& job_sheet, const std::string& spec_sheet) {
  return {std::make_shared<const sheet::JobSheet>(got(sheet::read_job_sheet(job_sheet))), record::sha256_hex(job_sheet),
          std::make_shared<const sheet::SpecSheet>(got(sheet::read_spec_sheet(spec_sheet))),
          record::sha256_hex(spec_sheet)};
}

/// A job at its end whose photos lie in the store, ready to be sealed.
inline std::string closed_job_with_photos(Workbench& bench, const std::string& last) {
  namespace made = job::test;
  const job::Sheets sheets = sheets_from(shipped("sheets/dry-pack-renewal.json"), shipped("specs/D7-2.json"));
  made::Bench job(sheets);
  job.context.person = mk;
  job.take(made::open_command()).answer_up_to("sign-technician");
  job.context.person = mk;
  job.take(job::Sign{"sign-technician"});
  job.context.person = rt;
  job.take(job::Sign{"sign-checker"});
  int which = 0;
  std::vector<job::Entry> entries = job.state.entries;
  for (job::Entry& each : entries) {
    if (auto* photo = std::get_if<job::PhotoTaken>(&each.body)) {
      const QByteArray content = tiny_photo(++which);
      put_file(bench.file("photo.jpg"), content);
      photo->sha256 = got(bench.store().keep_photo(bench.file("photo.jpg").toStdString())).sha256;
      photo->bytes = content.size();
    }
  }
  REQUIRE(which > 0);
  const std::string id = "01930000-0000-7000-8000-00000000" + last + "00";
  went(bench.store().append(id, entries, {}, job::fold(sheets, entries)));
  return id;
}

inline std::string sealed_job_with_photos(Workbench& bench, const std::string& last) {
  if (got(signing_keys(bench.store())).empty()) {
    give_pins(bench);
  }
  const std::string id = closed_job_with_photos(bench, last);
  static_cast<void>(got(seal_job(bench.store(), id, both_pins(), by_mk(600), cheap_rules())));
  static_cast<void>(got(add_addendum(bench.store(), id, "found later", "0.1 l of oil topped up", pin("081542"),
                                     by_rt(700), cheap_rules())));
  return id;
}

inline std::string exported(Workbench& bench, const std::string& job) {
  const std::string out = bench.file(QString::fromStdString(job) + ".jsonl").toStdString();
  static_cast<void>(got(export_job(bench.path(), job, out)));
  return out;
}

inline ImportReport imported(Workbench& bench, const std::string& file) {
  return got(import_job(bench.path(), file, by_mk(900)));
}

/// Everything in a store that an import may change: each row of each table, and the names of the photos.
inline std::string content_of_store(Workbench& bench) {
  std::string all;
  Connection& connection = bench.store().connection();
  for (const Row& table : got(connection.rows("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"))) {
    all += text_in(table, 0) + "\n";
    for (const Row& row : got(connection.rows("SELECT * FROM " + text_in(table, 0)))) {
      for (std::size_t at = 0; at < row.size(); ++at) {
        all += text_in(row, at) + bytes_in(row, at) + std::to_string(number_in(row, at)) + "|";
      }
      all += "\n";
    }
  }
  QDirIterator files(QString::fromStdString(bench.path()).section('/', 0, -2), QDir::Files | QDir::Hidden,
                     QDirIterator::Subdirectories);
  QStringList names;
  while (files.hasNext()) {
    names.append(files.next());
  }
  names.sort();
  return all + names.join('\n').toStdString();
}

/// A job's file in parts.
struct FileInParts {
  nlohmann::json job;
  QList<QByteArray> photos;

  explicit FileInParts(const std::string& path) {
    QList<QByteArray> lines = content_of(path).split('\n');
    REQUIRE(lines.size() >= 3);
    job = nlohmann::json::parse(lines.takeFirst().toStdString());
    lines.removeLast();  // after the last line feed
    lines.removeLast();
    photos = lines;
  }
  /// Makes the chain hold again, as anybody can.
  void chain_anew() {
    std::string previous;
    for (nlohmann::json& each : job["entries"]) {
      each["previous_hash"] = previous;
      record::StoredEntry entry{each["seq"],
                                {each["at_ms"], each["offset_min"], each["clock_went_back"]},
                                each["person"],
                                each["kind"],
                                each["kind_version"],
                                each["body"],
                                previous,
                                ""};
      previous = record::entry_hash(job["job"].get<std::string>(), entry);
      each["hash"] = previous;
    }
  }
  [[nodiscard]] static QByteArray whole(const QByteArray& first, const QList<QByteArray>& photos) {
    QByteArray all = first + '\n';
    for (const QByteArray& each : photos) {
      all += each + '\n';
    }
    return all + "{\"sha256\":\"" + QByteArray::fromStdString(hash_of(all)) + "\"}\n";
  }
  [[nodiscard]] QByteArray whole() const { return whole(QByteArray::fromStdString(job.dump()), photos); }
};

}  // namespace shimwright::store::test
