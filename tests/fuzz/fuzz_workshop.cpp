#include "fuzz_workshop.h"

#include <QFile>
#include <QFileInfo>

#include "fuzz_target.h"
#include "replay.h"
#include "shimwright/store/exchange.h"

namespace shimwright::fuzz {

namespace {

constexpr const char* demo = SHIMWRIGHT_DATA_DIR "/demo";

QByteArray content_of(const QString& path) {
  QFile file(path);
  require(file.open(QIODevice::ReadOnly), "what was made can be read");
  return file.readAll();
}

/// A store with the whole job of a demonstration script; closed again, so that its log is gone.
std::string make_store(const std::string& path) {
  const auto script =
      cli::read_script(content_of(QString::fromLatin1(demo) + "/02-bearing-not-home.json").toStdString());
  require(script.has_value(), "the script is read");
  auto store = store::Store::open(path, {store::Mode::read_write, "fuzz", now_ms});
  require(store.has_value(), "a store is made");
  store::IdSource ids;
  const auto known = cli::settle_in(**store, *script, ids);
  require(known.has_value(), "the script's people are entered");
  const auto replayed = cli::replay(**store, *script, *known, ids, demo, [](const std::string&) {});
  require(replayed && replayed->sealed, "the job is done and sealed");
  return replayed->job;
}

}  // namespace

FuzzWorkshop::FuzzWorkshop() {
  const QString path = place(QStringLiteral("base.shimwright"));
  job_ = make_store(path.toStdString());
  store_file_ = content_of(path);
  const QString exported = place(QStringLiteral("base.jsonl"));
  require(store::export_job(path.toStdString(), job_, exported.toStdString()).has_value(), "the job is exported");
  const QByteArray whole = content_of(exported);
  const qsizetype first = whole.indexOf('\n') + 1;
  job_line_ = whole.left(first - 1);
  photo_lines_ = whole.mid(first, whole.lastIndexOf('\n', whole.size() - 2) + 1 - first);
}

void FuzzWorkshop::lay(const QString& place, const QByteArray& content) const {
  for (const char* ending : {"", "-wal", "-shm", "-journal", ".lock"}) {
    QFile::remove(place + QLatin1String(ending));
  }
  QFile file(place);
  require(file.open(QIODevice::WriteOnly) && file.write(content) == content.size(), "a file is laid");
}

}  // namespace shimwright::fuzz
