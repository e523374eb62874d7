// window_restless SECONDS TURN_SECONDS   a restless person at the window for so long; SHIMWRIGHT_SEED plays a run
// again, SHIMWRIGHT_LONG makes it an hour. Ends with the check of every store that is there, and with records that
// print.
#include <sys/stat.h>
#include <QApplication>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QImage>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <algorithm>
#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <iterator>
#include <random>
#include <string>

#include "owner_only.h"
#include "restless_user.h"
#include "shimwright/print/pdf.h"
#include "shimwright/store/check.h"
#include "shimwright/store/exchange.h"
#include "shimwright/store/job_record.h"
#include "workshop.h"

using namespace shimwright;

namespace {

int complain(const std::string& sentence) {
  std::fprintf(stderr, "%s\n", sentence.c_str());
  return 1;
}

std::atomic<int> warnings = 0;

/// What the toolkit warns of is a fault, but for what the platform without a screen says whatever a program does, what
/// the mouse of the tests says where a widget has gone under it, and what the reader of pictures says of a photo that
/// is none.
void hear(QtMsgType type, const QMessageLogContext& context, const QString& text) {
  constexpr const char* known[] = {"This plugin does not support", "propagateSizeHints", "XDG_RUNTIME_DIR",
                                   "occurs outside target window"};
  const bool is_known = std::any_of(std::begin(known), std::end(known),
                                    [&](const char* part) { return text.contains(QLatin1String(part)); });
  const bool is_of_a_picture = QLatin1String(context.category).startsWith(QLatin1String("qt.gui.imageio"));
  if (!is_known && !is_of_a_picture) {
    std::fprintf(stderr, "%s\n", qUtf8Printable(text));
    warnings += type == QtDebugMsg || type == QtInfoMsg ? 0 : 1;
  }
}

std::uint64_t seed_of_run() {
  bool given = false;
  const auto seed = qEnvironmentVariable("SHIMWRIGHT_SEED").toULongLong(&given);
  return given ? seed : std::random_device()() * std::uint64_t{4294967296} + std::random_device()();
}

void put(const QString& path, const QByteArray& content) {
  QFile file(path);
  if (file.open(QIODevice::WriteOnly)) {
    file.write(content);
  }
}

/// What a person may choose by mistake, and two pictures.
void lay_files(const QString& folder) {
  QDir().mkpath(folder);
  QImage picture(600, 400, QImage::Format_RGB32);
  picture.fill(Qt::darkCyan);
  picture.save(folder + QStringLiteral("/photo.png"));
  picture.save(folder + QStringLiteral("/photo.jpg"));
  put(folder + QStringLiteral("/letter.png"), "Dear Sir or Madam");
  put(folder + QStringLiteral("/large.jpg"), QByteArray("\xFF\xD8\xFF\xE0") + QByteArray(21'000'000, 'x'));
  put(folder + QStringLiteral("/empty.json"), {});
  put(folder + QStringLiteral("/deep.json"), QByteArray(100'000, '['));
  put(folder + QStringLiteral("/no-job.jsonl"), "{\"format\":\"shimwright.job\"}\n");
  for (const char* name : {"sheets/dry-pack-renewal.json", "specs/D7-2.json"}) {
    QFile shipped(QStringLiteral(SHIMWRIGHT_DATA_DIR "/") + QLatin1String(name));
    put(folder + QLatin1Char('/') + QFileInfo(shipped).fileName(),
        shipped.open(QIODevice::ReadOnly) ? shipped.readAll() : QByteArray());
  }
}

/// The store is in order, and its latest jobs print. Gives how many did; less than none: something is wrong.
int check_store(const std::string& path, const QString& out) {
  auto store = store::Store::open(path, {store::Mode::read_write, "restless", cli::moment_now().at_ms});
  if (!store) {
    complain(path + ": " + store.error().in_english());
    return -1;
  }
  const auto report = store::check(**store);
  if (!report || !report->in_order()) {
    complain(report ? report->findings.front().place() + ": " + report->findings.front().message.in_english()
                    : report.error().in_english());
    return -1;
  }
  const auto jobs = (*store)->jobs(5);
  for (const store::JobSummary& each : jobs ? *jobs : std::vector<store::JobSummary>()) {
    const auto record = store::record_of(**store, each.id);
    const auto printed = record ? print::write_pdf(*record, out.toStdString()) : tl::make_unexpected(record.error());
    if (!printed || QFileInfo(out).size() < 5000) {
      complain(each.number + ": " + (printed ? "its record is empty" : printed.error().in_english()));
      return -1;
    }
  }
  std::printf("%s: in order, %lld jobs, %lld entries\n", path.c_str(), static_cast<long long>(report->jobs),
              static_cast<long long>(report->entries));
  return jobs ? static_cast<int>(jobs->size()) : -1;
}

/// Where the demonstration was deleted and nothing opened in its place, there is one more to begin.
int check_stores(const shell::StorePlaces& places, const QString& folder) {
  int printed = 0;
  for (const std::string& path : {places.own, places.demo}) {
    if (QFile::exists(QString::fromStdString(path))) {
      const int here = check_store(path, folder + QStringLiteral("/last.pdf"));
      if (here < 0) {
        return 1;
      }
      printed += here;
    }
  }
  if (printed > 0) {
    return 0;
  }
  const std::string fresh = (folder + QStringLiteral("/fresh/workshop.shimwright")).toStdString();
  const auto made = shell::make_demo_workshop(fresh, cli::moment_now());
  return made && check_store(fresh, folder + QStringLiteral("/last.pdf")) > 0 ? 0 : complain("no record printed");
}

/// Everything that lies there is for its owner alone, and nothing is half made.
int check_files(const QString& folder) {
  QDirIterator all(folder, QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot, QDirIterator::Subdirectories);
  while (all.hasNext()) {
    const QString path = all.next();
    struct stat seen = {};
    if (::lstat(QFile::encodeName(path).constData(), &seen) != 0 || (seen.st_mode & 0077U) != 0) {
      return complain(path.toStdString() + " is open to others");
    }
    for (const char* half_made : {".unfinished", ".part", ".restored"}) {
      if (path.endsWith(QLatin1String(half_made))) {
        return complain(path.toStdString() + " was left behind");
      }
    }
  }
  return 0;
}

}  // namespace

int main(int count, char** words) {
  const bool is_long = qEnvironmentVariableIsSet("SHIMWRIGHT_LONG");
  const std::chrono::seconds long_enough(is_long ? 3600 : count > 1 ? std::atoi(words[1]) : 25);
  const std::chrono::seconds longest_turn(count > 2 ? std::atoi(words[2]) : 5);
  const std::uint64_t seed = seed_of_run();
  const std::string about = "SHIMWRIGHT_SEED=" + std::to_string(seed);
  std::printf("%s, %lld s\n", about.c_str(), static_cast<long long>(long_enough.count()));
  std::fflush(stdout);
  qInstallMessageHandler(&hear);
  // As open as a mask can be: what the program makes is for its owner alone all the same.
  ::umask(0);
  cli::keep_to_owner();
  QStandardPaths::setTestModeEnabled(true);
  QApplication application(count, words);
  QApplication::setQuitOnLastWindowClosed(false);
  const QTemporaryDir folder;
  lay_files(folder.filePath(QStringLiteral("files")));
  // What is typed as the name of a file lands here.
  QDir::setCurrent(folder.path());
  auto fonts = print::load_fonts();
  if (!fonts) {
    return complain(fonts.error().in_english());
  }
  int result = 1;
  {
    test::Watch watch(about, longest_turn);
    test::RestlessUser user(folder.path(), seed, long_enough, watch, *std::move(fonts));
    QObject::connect(&user, &test::RestlessUser::done, &application, &QApplication::quit, Qt::QueuedConnection);
    user.begin();
    QApplication::exec();
    std::printf("%lld actions, %d windows, longest turn %lld ms\n", static_cast<long long>(watch.count()),
                user.windows_opened(), static_cast<long long>(watch.longest_turn().count()));
    result = check_stores(user.places(), folder.path()) + check_files(folder.path()) + (warnings == 0 ? 0 : 1);
    if (result != 0) {
      watch.tell();
    }
  }
  return result;
}
