#include <QGuiApplication>
#include <memory>
#include <string>
#include <vector>

#include "commands.h"
#include "owner_only.h"

namespace {

using shimwright::cli::CommandEntry;

void say_help() {
  shimwright::cli::say("shimwright-cli: the bench companion without its window\n");
  for (const CommandEntry& each : shimwright::cli::commands()) {
    shimwright::cli::say("  shimwright-cli " + std::string(each.usage));
  }
  shimwright::cli::say(
      "\nshimwright-cli COMMAND --help tells more. Exit status: 0 done; 1 done, but something is not as it should be;\n"
      "2 refused, nothing was changed. Shipped limits are demonstration values: the vehicle maker's service "
      "information\n"
      "goes first.");
}

const CommandEntry* command_named(const std::string& name) {
  for (const CommandEntry& each : shimwright::cli::commands()) {
    if (each.name == name) {
      return &each;
    }
  }
  return nullptr;
}

/// What the toolkit says of a machine without a session is nothing a person here can act on: one refusal is one line.
void pass_on_message(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtFatalMsg || !text.startsWith(QLatin1String("QStandardPaths: XDG_RUNTIME_DIR"))) {
    shimwright::cli::complain(text.toStdString());
  }
}

/// Fonts need a graphical application, which asks for no screen here.
std::unique_ptr<QCoreApplication> application(bool draws, int& count, char** words) {
  if (draws) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    return std::make_unique<QGuiApplication>(count, words);
  }
  return std::make_unique<QCoreApplication>(count, words);
}

}  // namespace

int main(int count, char** raw_words) {
  shimwright::cli::keep_to_owner();
  const std::vector<std::string> words(raw_words + 1, raw_words + count);
  if (words.empty() || words.front() == "--help" || words.front() == "-h" || words.front() == "help") {
    say_help();
    return words.empty() ? 2 : 0;
  }
  if (words.front() == "--version") {
    shimwright::cli::say("shimwright-cli " SHIMWRIGHT_VERSION);
    return 0;
  }
  const CommandEntry* command = command_named(words.front());
  if (command == nullptr) {
    shimwright::cli::complain(words.front() + ": There is no such command: see --help.");
    return 2;
  }
  if (words.size() == 2 && (words[1] == "--help" || words[1] == "-h")) {
    shimwright::cli::say("shimwright-cli " + std::string(command->usage) + "\n\n" + std::string(command->help));
    return 0;
  }
  qInstallMessageHandler(pass_on_message);
  const auto running = application(command->draws, count, raw_words);
  return static_cast<int>(command->run({words.begin() + 1, words.end()}));
}
