#include <QApplication>
#include <QFileDialog>
#include <QSettings>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "owner_only.h"
#include "shimwright/bench/surroundings.h"
#include "shimwright/shell/early_fonts.h"
#include "shimwright/shell/icon.h"
#include "shimwright/shell/languages.h"
#include "shimwright/shell/program.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "workshop.h"

namespace {

namespace shell = shimwright::shell;

int complain(const std::string& sentence) {
  std::fprintf(stderr, "%s\n", sentence.c_str());
  return 2;
}

std::vector<std::string> words_after_name(const QStringList& all) {
  std::vector<std::string> words;
  for (const QString& each : all.mid(1)) {
    words.push_back(each.toStdString());
  }
  return words;
}

/// What needs no window is said without one.
bool asks_only(int count, char** raw_words) {
  const std::vector<std::string> words(raw_words + 1, raw_words + count);
  const auto start = shell::read_start_words(words);
  if (start && start->help) {
    std::printf("%s\n", shell::start_help().c_str());
    return true;
  }
  if (start && start->version) {
    std::printf("shimwright %s\n", SHIMWRIGHT_VERSION);
    return true;
  }
  return false;
}

/// The toolkit aborts where it finds no screen; here that is an answer like any other.
bool has_no_screen(int count, char** raw_words) {
  const std::vector<std::string> words(raw_words + 1, raw_words + count);
  const bool platform_said =
      qEnvironmentVariableIsSet("QT_QPA_PLATFORM") || std::find(words.begin(), words.end(), "-platform") != words.end();
  return !platform_said && qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY");
}

/// Without its own type the program says so and goes; the window that was about to be made never shows a number in
/// another.
void dress(QApplication& application, shell::EarlyFonts& fonts, shimwright::widgets::Scheme scheme) {
  if (auto dressed = fonts.dress(application, scheme); !dressed) {
    std::exit(complain(dressed.error().in_english()));
  }
}

shell::Equipment equipment_for(QApplication& application, shell::EarlyFonts& fonts, shell::Speaker& speaker) {
  shell::Equipment equipment;
  equipment.clock = [] { return shimwright::cli::moment_now(); };
  equipment.places = shell::places_of_this_person();
  equipment.choose_folder = [](QWidget* over, const QString& from) {
    return QFileDialog::getExistingDirectory(over, QString(), from);
  };
  equipment.choose_photo = [](QWidget* over, const QString& folder) {
    return QFileDialog::getOpenFileName(over, QString(), folder,
                                        QCoreApplication::translate("shell", "Photos (*.jpg *.jpeg *.png)"));
  };
  equipment.after = shimwright::bench::real_surroundings().after;
  equipment.dress = [&application, &fonts](shimwright::widgets::Scheme scheme) { dress(application, fonts, scheme); };
  equipment.speak = [&speaker](const QString& language) { speaker.speak(language); };
  equipment.sound = [] { QApplication::beep(); };
  equipment.pages = shell::page_table();
  return equipment;
}

int run(QApplication& application, shell::Settings& settings, shell::EarlyFonts& fonts) {
  const auto start = shell::read_start_words(words_after_name(QApplication::arguments()));
  if (!start) {
    return complain(start.error().in_english());
  }
  shell::Speaker speaker;
  speaker.speak(shell::language_to_speak(settings.language()));
  QApplication::setWindowIcon(shell::program_icon());
  // Between two windows there is a moment with none.
  QApplication::setQuitOnLastWindowClosed(false);
  shell::Program program(settings, equipment_for(application, fonts, speaker));
  QObject::connect(&program, &shell::Program::finished, &application, &QApplication::quit, Qt::QueuedConnection);
  program.start(*start);
  return QApplication::exec();
}

}  // namespace

int main(int count, char** raw_words) {
  shimwright::cli::keep_to_owner();
  if (asks_only(count, raw_words)) {
    return 0;
  }
  if (has_no_screen(count, raw_words)) {
    return complain("There is no screen to open a window on: start it in a session with one, or use shimwright-cli.");
  }
  QCoreApplication::setOrganizationName(QStringLiteral("Shimwright"));
  QCoreApplication::setApplicationName(QStringLiteral("Shimwright"));
  QGuiApplication::setDesktopFileName(QStringLiteral("shimwright"));
  shell::Settings settings(std::make_unique<QSettings>());
  if (settings.size_percent() != 100 && !qEnvironmentVariableIsSet("QT_SCALE_FACTOR")) {
    // Read once, when the application is made.
    qputenv("QT_SCALE_FACTOR", QByteArray::number(settings.size_percent() / 100.0, 'f', 2));
  }
  auto fonts_being_read = shell::read_fonts_early();
  QApplication application(count, raw_words);
  shell::EarlyFonts fonts(std::move(fonts_being_read));
  return run(application, settings, fonts);
}
