#include "shimwright/shell/languages.h"

#include <QCoreApplication>
#include <QDir>
#include <QLocale>
#include <utility>

namespace shimwright::shell {

namespace {

/// A file nobody has translated anything in yet is no language to offer.
bool says_something(const QString& file) {
  QTranslator translator;
  return translator.load(file) && !translator.isEmpty();
}

}  // namespace

std::vector<Language> languages(const QString& folder) {
  std::vector<Language> found{{QStringLiteral("en"), QStringLiteral("English")}};
  const QStringList files = QDir(folder).entryList({QStringLiteral("shimwright_*.qm")}, QDir::Files, QDir::Name);
  for (const QString& file : files) {
    const QString code = file.mid(11).chopped(3);
    if (code != QLatin1String("en") && says_something(folder + QLatin1Char('/') + file)) {
      QString name = QLocale(code).nativeLanguageName();
      if (!name.isEmpty()) {
        name[0] = name.at(0).toUpper();
      }
      found.push_back({code, name.isEmpty() ? code : name});
    }
  }
  return found;
}

std::unique_ptr<QTranslator> speak(const QString& code, const QString& folder) {
  auto translator = std::make_unique<QTranslator>();
  if (code == QLatin1String("en") ||
      !translator->load(folder + QStringLiteral("/shimwright_") + code + QStringLiteral(".qm"))) {
    return nullptr;
  }
  QCoreApplication::installTranslator(translator.get());
  return translator;
}

}  // namespace shimwright::shell
