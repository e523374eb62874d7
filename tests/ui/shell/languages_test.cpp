#include "shimwright/shell/languages.h"

#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

/// `Photo` in context `shell` is `Foto`, as the translation tools wrote it.
QByteArray one_word() {
  return QByteArray::fromHex(
      "3cb86418caef9c95cd211cbf60a1bddda700000002646542000000080056f6af00000000690000002703000000080046"
      "006f0074006f0800000000060000000550686f746f07000000057368656c6c0188000000020101");
}

void write(const QString& path, const QByteArray& content) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(content);
}

}  // namespace

TEST_CASE("English is always there, and what lies in the folder beside it") {
  const QTemporaryDir folder;
  CHECK(shell::languages(folder.path()).size() == 1);
  write(folder.filePath("shimwright_de.qm"), one_word());
  write(folder.filePath("shimwright_fr.qm"), {});
  const auto found = shell::languages(folder.path());
  REQUIRE(found.size() == 2);
  CHECK(found[0].name == "English");
  CHECK(found[1].code == "de");
  CHECK(found[1].name == "Deutsch");
  const auto german = shell::speak("de", folder.path());
  REQUIRE(german != nullptr);
  CHECK(QCoreApplication::translate("shell", "Photo") == "Foto");
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
