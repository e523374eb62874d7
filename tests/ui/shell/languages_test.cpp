#include "shimwright/shell/languages.h"

#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("English is always there, and what lies in the folder beside it") {
  const QTemporaryDir folder;
  CHECK(shell::languages(folder.path()).size() == 1);
  QFile file(folder.filePath("shimwright_de.qm"));
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.close();
  const auto found = shell::languages(folder.path());
  REQUIRE(found.size() == 2);
  CHECK(found[0].name == "English");
  CHECK(found[1].code == "de");
  CHECK(found[1].name == "Deutsch");
}

TEST_CASE("English needs no translator, and a missing language leaves English") {
  CHECK(shell::speak("en") == nullptr);
  CHECK(shell::speak("xx") == nullptr);
}

TEST_CASE("each language that is offered can be spoken") {
  for (const shell::Language& each : shell::languages()) {
    INFO(each.code.toStdString());
    CHECK((each.code == "en" || shell::speak(each.code) != nullptr));
  }
}
