#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <iostream>
#include <memory>
#include <string>
#include <vector>

#include <QApplication>
#include <QFileInfo>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include <nlohmann/json.hpp>

#include "shimwright/bench/surroundings.h"
#include "shimwright/print/fonts.h"
#include "shimwright/shell/program.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/check.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/store/job_record.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/style.h"
#include "timing.h"
#include "workshop.h"

namespace {

using namespace shimwright;
using bench_timing::milliseconds;
using Json = nlohmann::ordered_json;

constexpr int repeats = 15;

template <class Content>
Content needed(Result<Content> result) {
  if (!result) {
    std::cerr << result.error().in_english() << '\n';
    std::exit(2);
  }
  return std::move(*result);
}

double median(const std::function<void(int)>& call) {
  std::vector<double> times;
  for (int repeat = 0; repeat < repeats; ++repeat) {
    times.push_back(milliseconds([&] { call(repeat); }));
  }
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

std::unique_ptr<store::Store> opened(const std::string& path) {
  return needed(store::Store::open(path, {store::Mode::read_write, "load", cli::moment_now().at_ms}));
}

/// The most memory this program ever had, in MiB.
double most_memory() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);) {
    if (line.rfind("VmHWM:", 0) == 0) {
      return std::stod(line.substr(6)) / 1024;
    }
  }
  return 0;
}

/// What a person waits for without seeing it as such.
void measure_store(const std::string& path, Json& times) {
  times["open_ms"] = median([&](int) { static_cast<void>(opened(path)); });
  const auto store = opened(path);
  const std::vector<store::JobSummary> latest = needed(store->jobs(200));
  if (latest.empty()) {
    std::cerr << "the store holds no job\n";
    std::exit(2);
  }
  const auto one = [&](int at) -> const store::JobSummary& {
    return latest[static_cast<std::size_t>(at) * 7 % latest.size()];
  };
  times["open_jobs_ms"] = median([&](int) { static_cast<void>(needed(store->open_jobs(50))); });
  times["search_end_ms"] = median([&](int at) {
    const std::string& vehicle = one(at).vehicle_key;
    static_cast<void>(needed(store->search(vehicle.substr(vehicle.size() - std::min<std::size_t>(vehicle.size(), 6)))));
  });
  times["search_wrong_ms"] = median([&](int at) {
    std::string vehicle = one(at).vehicle_key;
    vehicle[vehicle.size() / 2] = vehicle[vehicle.size() / 2] == '7' ? '8' : '7';
    static_cast<void>(needed(store->search(vehicle)));
  });
  times["search_two_ms"] = median([&](int) { static_cast<void>(needed(store->search("41"))); });
  times["jobs_of_vehicle_ms"] =
      median([&](int at) { static_cast<void>(needed(store->jobs_of_vehicle(one(at).vehicle_key))); });
  times["record_ms"] = median([&](int at) { static_cast<void>(needed(store::record_of(*store, one(at).id))); });
  const auto open = needed(store->open_jobs(1));
  if (!open.empty()) {
    auto hand = needed(store::JobInHand::load(*store, open.front().id));
    const auto people = needed(store->registers().persons());
    const store::By by{people.front().id, cli::moment_now()};
    const auto context = needed(hand.context(by));
    times["context_ms"] = median([&](int) { static_cast<void>(needed(hand.context(by))); });
    times["entry_ms"] = median([&](int at) {
      static_cast<void>(needed(hand.execute(job::Note{std::nullopt, "note " + std::to_string(at)}, context)));
    });
  }
}

shell::Equipment equipment(const print::Fonts& fonts) {
  shell::Equipment equipment;
  equipment.clock = [] { return cli::moment_now(); };
  equipment.places = {"/nowhere/own.shimwright", "/nowhere/demo.shimwright"};
  equipment.choose_folder = [](QWidget*, const QString&) { return QString(); };
  equipment.choose_photo = equipment.choose_folder;
  equipment.after = bench::real_surroundings().after;
  equipment.speak = [](const QString&) {};
  equipment.dress = [&fonts](widgets::Scheme scheme) { widgets::dress(*qApp, scheme, fonts); };
  equipment.sound = [] {};
  equipment.pages = shell::page_table();
  return equipment;
}

double page_time(shell::MainWindow& window, shell::PageName page, const std::string& about) {
  return milliseconds([&] {
    window.go(page, about);
    QCoreApplication::processEvents();
    window.repaint();
    QCoreApplication::processEvents();
  });
}

/// From page to page, as a day goes; how much memory that took in all.
void measure_window(const std::string& path, Json& times) {
  const std::string latest = needed(opened(path)->jobs(1)).front().id;
  const print::Fonts fonts = needed(print::load_fonts());
  const QTemporaryDir folder;
  shell::Settings settings(std::make_unique<QSettings>(folder.filePath("s.ini"), QSettings::IniFormat));
  widgets::dress(*qApp, settings.scheme(), fonts);
  shell::Program program(settings, equipment(fonts));
  shell::StartWords words;
  words.store = path;
  times["window_ms"] = milliseconds([&] {
    program.start(words);
    if (program.main_window() == nullptr ||
        !QTest::qWaitFor([&] { return program.main_window()->page().has_value(); }, 120000)) {
      std::cerr << "the window did not come up\n";
      std::exit(2);
    }
    program.main_window()->repaint();
  });
  shell::MainWindow& window = *program.main_window();
  window.resize(1366, 768);
  times["past_jobs_page_ms"] = page_time(window, shell::PageName::past_jobs, "417");
  times["record_page_ms"] = page_time(window, shell::PageName::record, latest);
  times["workshop_page_ms"] = page_time(window, shell::PageName::workshop, "");
  times["home_page_ms"] = page_time(window, shell::PageName::home, "");
  times["memory_mib"] = most_memory();
}

/// What goes on in the background, or is asked for.
void measure_whole(const std::string& path, Json& times) {
  const std::string out = path + ".backup";
  times["backup_ms"] = milliseconds([&] { static_cast<void>(needed(store::back_up(path, out))); });
  const auto store = opened(path);
  times["check_ms"] = milliseconds([&] {
    const auto report = needed(store::check(*store));
    times["jobs"] = report.jobs;
    times["entries"] = report.entries;
    if (!report.in_order()) {
      std::cerr << "the store is not in order\n";
      std::exit(2);
    }
  });
  times["size_mib"] = static_cast<double>(QFileInfo(QString::fromStdString(path)).size()) / 1048576;
}

}  // namespace

/// `load_bench STORE store|window|whole`: what takes how long on a store of many jobs, as a line of JSON. Median times
/// in milliseconds, single ones for what takes long. `load.py` beside this makes the stores, the table and the plot.
int main(int argument_count, char** arguments) {
  QApplication application(argument_count, arguments);
  const QStringList words = QCoreApplication::arguments();
  if (words.size() != 3) {
    std::cerr << "load_bench STORE store|window|whole\n";
    return 2;
  }
  const std::string path = words.at(1).toStdString();
  Json times = Json::object();
  if (words.at(2) == "store") {
    measure_store(path, times);
  } else if (words.at(2) == "window") {
    measure_window(path, times);
  } else {
    measure_whole(path, times);
  }
  std::cout << times.dump() << '\n';
  return 0;
}
