// shimwright_pictures FOLDER [part of a name, "" for all] [language]
#define CATCH_CONFIG_RUNNER
#include <QApplication>
#include <QDir>
#include <QStandardPaths>
#include <catch2/catch.hpp>
#include <cstdio>
#include <string>
#include <vector>

#include "shimwright/shell/languages.h"

int main(int count, char** raw_words) {
  if (count < 2) {
    std::fprintf(stderr, "shimwright_pictures FOLDER [part of a name, \"\" for all] [language]\n");
    return 2;
  }
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  QStandardPaths::setTestModeEnabled(true);
  QApplication application(count, raw_words);
  // A picture is the same each time.
  QApplication::setCursorFlashTime(0);
  const std::vector<std::string> words(raw_words + 1, raw_words + count);
  const QDir folder(QDir::current().absoluteFilePath(QString::fromStdString(words[0])));
  if (!folder.mkpath(QStringLiteral("."))) {
    std::fprintf(stderr, "The folder %s cannot be made.\n", words[0].c_str());
    return 2;
  }
  const std::string part = words.size() > 1 ? words[1] : std::string();
  const shimwright::shell::Spoken spoken(QString::fromStdString(words.size() > 2 ? words[2] : "en"));
  application.setProperty("folder", folder.path());
  application.setProperty("part", QString::fromStdString(part));
  Catch::Session session;
  if (!part.empty()) {
    // The name of a case holds the names of its pictures.
    session.configData().testsOrTags.push_back("*" + part + "*");
  }
  return session.run();
}
