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
}

TEST_CASE("a language is spoken as long as it is held, with its months") {
  const QTemporaryDir folder;
  write(folder.filePath("shimwright_de.qm"), one_word());
  const QLocale before;
  {
    const shell::Spoken german("de", folder.path());
    CHECK(QCoreApplication::translate("shell", "Photo") == "Foto");
    CHECK(QLocale().language() == QLocale::German);
  }
  CHECK(QCoreApplication::translate("shell", "Photo") == "Photo");
  CHECK(QLocale() == before);
}

TEST_CASE("a missing language is English, whatever the numbers and months were before") {
  const QTemporaryDir folder;
  const QLocale before;
  QLocale::setDefault(QLocale(QStringLiteral("fr_FR")));
  for (const char* code : {"en", "xx", "de"}) {
    const shell::Spoken spoken(QLatin1String(code), folder.path());
    CHECK(QLocale().language() == QLocale::English);
  }
  QLocale::setDefault(before);
}

TEST_CASE("what was chosen is spoken, else what the system wants and the program has, else English") {
  const QTemporaryDir folder;
  write(folder.filePath("shimwright_de.qm"), one_word());
  const auto spoken = [&](const char* chosen, const QStringList& wanted) {
    return shell::language_to_speak(QLatin1String(chosen), wanted, folder.path());
  };
  CHECK(spoken("en", {"de-DE", "de"}) == "en");
  CHECK(spoken("de", {"en"}) == "de");
  CHECK(spoken("", {"fr-CH", "fr", "de-CH", "en"}) == "de");
  CHECK(spoken("", {"C"}) == "en");
  CHECK(spoken("fr", {"de"}) == "de");
  CHECK(spoken("", {}) == "en");
}

TEST_CASE("one language is spoken at a time, and the one before is gone") {
  const QLocale before;
  {
    shell::Speaker speaker;
    for (const char* code : {"de", "fr", "fr", "en", "de"}) {
      speaker.speak(QLatin1String(code));
      CHECK(QLocale().name().startsWith(QLatin1String(code)));
      const QString word = QCoreApplication::translate("shimwright::shell::TopBar", "Bench");
      const shell::Spoken alone{QString::fromLatin1(code)};
      CHECK(word == QCoreApplication::translate("shimwright::shell::TopBar", "Bench"));
    }
  }
  CHECK(QLocale() == before);
}

TEST_CASE("German and French are offered, and each language that is offered is spoken") {
  std::vector<QString> codes;
  for (const shell::Language& each : shell::languages()) {
    codes.push_back(each.code);
    const shell::Spoken spoken(each.code);
    CHECK(QLocale().name().startsWith(each.code));
    const QString bench = QCoreApplication::translate("shimwright::shell::TopBar", "Bench");
    CHECK((bench == "Bench") == (each.code == "en"));
  }
  CHECK(codes == std::vector<QString>{"en", "de", "fr"});
}
