#include <algorithm>
#include <cstdlib>
#include <functional>
#include <future>
#include <iostream>
#include <memory>
#include <string_view>
#include <vector>

#include <QAbstractButton>
#include <QApplication>
#include <QProcess>
#include <QRegularExpression>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include <fmt/format.h>

#include "shimwright/bench/job_page.h"
#include "shimwright/bench/surroundings.h"
#include "shimwright/shell/early_fonts.h"
#include "shimwright/shell/program.h"
#include "shimwright/shell/stores.h"
#include "shimwright/widgets/style.h"
#include "timing.h"
#include "workshop.h"

namespace {

using namespace shimwright;
using bench_timing::median;
using bench_timing::milliseconds;

constexpr double frame_ms = 1000.0 / 60;

[[noreturn]] void give_up(const std::string& sentence) {
  std::cerr << sentence << '\n';
  std::exit(2);
}

/// Ends the process once the window has been painted, or the first job on it: what is measured is what a person waits
/// for.
class LeaveWhenPainted : public QObject {
 public:
  explicit LeaveWhenPainted(bool jobs_too) : jobs_too_(jobs_too) {}

  bool eventFilter(QObject* watched, QEvent* event) override {
    const auto* widget = qobject_cast<QWidget*>(watched);
    if (event->type() == QEvent::Paint && widget != nullptr) {
      painted_ = painted_ || (jobs_too_ ? widget->objectName().startsWith("button-take-up") : widget->isWindow());
    }
    if (painted_ && event->type() != QEvent::Paint) {
      std::_Exit(0);
    }
    return false;
  }

 private:
  bool jobs_too_;
  bool painted_ = false;
};

shell::Equipment equipment(shell::EarlyFonts& fonts) {
  shell::Equipment equipment;
  equipment.clock = [] { return cli::moment_now(); };
  equipment.places = {"/nowhere/own.shimwright", "/nowhere/demo.shimwright"};
  equipment.choose_folder = [](QWidget*, const QString&) { return QString(); };
  equipment.choose_photo = equipment.choose_folder;
  equipment.after = bench::real_surroundings().after;
  equipment.speak = [](const QString&) {};
  equipment.dress = [&fonts](widgets::Scheme scheme) {
    if (auto dressed = fonts.dress(*qApp, scheme); !dressed) {
      give_up(dressed.error().in_english());
    }
  };
  equipment.sound = [] {};
  equipment.pages = shell::page_table();
  return equipment;
}

/// The program over a store, with settings of its own.
struct Ours {
  Ours(const std::string& store, shell::EarlyFonts& early)
      : fonts(early), settings(std::make_unique<QSettings>(folder.filePath("s.ini"), QSettings::IniFormat)) {
    program = std::make_unique<shell::Program>(settings, equipment(fonts));
    shell::StartWords words;
    words.store = store;
    program->start(words);
    if (program->main_window() == nullptr) {
      give_up("the store did not open: " + store);
    }
  }

  QTemporaryDir folder;
  shell::EarlyFonts& fonts;
  shell::Settings settings;
  std::unique_ptr<shell::Program> program;
};

int show_empty() {
  QWidget window;
  window.resize(1366, 768);
  window.show();
  return QApplication::exec();
}

int show_ours(const std::string& store, shell::EarlyFonts& fonts) {
  const Ours ours(store, fonts);
  return QApplication::exec();
}

/// From the wish for another step to all of it on the screen.
int change_steps(const std::string& store, int repeats, shell::EarlyFonts& fonts) {
  const Ours ours(store, fonts);
  shell::MainWindow* window = ours.program->main_window();
  QList<QAbstractButton*> take_up;
  if (!QTest::qWaitFor([&] {
        take_up = window->findChildren<QAbstractButton*>(QRegularExpression("button-take-up-.*"));
        return !take_up.isEmpty();
      })) {
    give_up("the store holds no job in work");
  }
  take_up.front()->click();
  auto* page = window->findChild<bench::JobPage*>();
  std::vector<double> times;
  const std::vector<const char*> steps{"odometer", "large-gauge-fit", "lower-float", "press-peak", "received-photos"};
  for (int repeat = 0; repeat < repeats * static_cast<int>(steps.size()); ++repeat) {
    const char* step = steps[static_cast<std::size_t>(repeat) % steps.size()];
    times.push_back(milliseconds([&] {
      page->show_step(step);
      QCoreApplication::processEvents();
      window->repaint();
      QCoreApplication::processEvents();
    }));
  }
  std::sort(times.begin(), times.end());
  std::cout << fmt::format("{:24} {:10.1f} ms median, {:.1f} ms worst: {:.1f} and {:.1f} frames of 60 a second\n",
                           "a step change", median(times), times.back(), median(times) / frame_ms,
                           times.back() / frame_ms);
  return 0;
}

double time_of(const QStringList& words) {
  return milliseconds([&] {
    QProcess child;
    child.setProcessChannelMode(QProcess::ForwardedChannels);
    child.start(QCoreApplication::applicationFilePath(), words);
    if (!child.waitForFinished(60000) || child.exitCode() != 0) {
      give_up("the measured window did not come up");
    }
  });
}

void say_first(const char* what, const std::vector<double>& ours, const std::vector<double>& empty) {
  std::cout << fmt::format("{:24} {:10.1f} ms, an empty one {:.1f} ms: {:.2f} times\n", what, median(ours),
                           median(empty), median(ours) / median(empty));
}

/// In turn, so that they meet the machine in the same mood.
void measure_first_window(const QString& store, int repeats) {
  std::vector<double> ours;
  std::vector<double> with_jobs;
  std::vector<double> empty;
  for (int repeat = 0; repeat <= repeats; ++repeat) {
    const double empty_time = time_of({"--empty"});
    const double our_time = time_of({"--ours", store});
    const double jobs_time = time_of({"--jobs", store});
    if (repeat > 0) {  // the first reads the libraries from the disk
      empty.push_back(empty_time);
      ours.push_back(our_time);
      with_jobs.push_back(jobs_time);
    }
  }
  say_first("first window", ours, empty);
  say_first("with the first jobs", with_jobs, empty);
}

bool begins_ours(std::string_view word) {
  return word == "--ours" || word == "--jobs" || word == "--steps";
}

}  // namespace

/// `window_bench [repeats [store]]`: from the start of the program to its painted window and to the first jobs on it,
/// beside an empty window of the toolkit in a process of its own; and what a change of step takes. Without a store on a
/// demonstration workshop of a few jobs. Median times.
int main(int argument_count, char** arguments) {
  std::future<void> fonts_being_read;  // as the program begins
  if (argument_count > 1 && begins_ours(arguments[1])) {
    fonts_being_read = shell::read_fonts_early();
  }
  QApplication application(argument_count, arguments);
  const QStringList words = QCoreApplication::arguments();
  LeaveWhenPainted leave(words.value(1) == "--jobs");
  if (words.value(1) == "--empty") {
    application.installEventFilter(&leave);
    return show_empty();
  }
  if (fonts_being_read.valid()) {
    shell::EarlyFonts fonts(std::move(fonts_being_read));
    if (words.value(1) == "--steps") {
      return change_steps(words.value(2).toStdString(), words.value(3).toInt(), fonts);
    }
    application.installEventFilter(&leave);
    return show_ours(words.value(2).toStdString(), fonts);
  }
  const int repeats = argument_count > 1 ? std::max(1, words.at(1).toInt()) : 20;
  const QTemporaryDir folder;
  QString store = words.value(2);
  if (store.isEmpty()) {
    store = folder.filePath("workshop.shimwright");
    if (auto made = shell::make_demo_workshop(store.toStdString(), cli::moment_now()); !made) {
      give_up(made.error().in_english());
    }
  }
  measure_first_window(store, repeats);
  static_cast<void>(time_of({"--steps", store, QString::number(repeats)}));
  return 0;
}
