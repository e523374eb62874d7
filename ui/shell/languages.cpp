#include "shimwright/shell/languages.h"

#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>
#include <algorithm>
#include <utility>

namespace shimwright::shell {

namespace {

/// A file nobody has translated anything in yet is no language to offer.
bool says_something(const QString& file) {
  QTranslator translator;
  return translator.load(file) && !translator.isEmpty();
}

QString file_name(const QString& code) {
  return QStringLiteral("shimwright_") + code + QStringLiteral(".qm");
}

/// With the habits of the person's own country where it is spoken there.
QLocale locale_of(const QString& code) {
  const QLocale own = QLocale::system();
  const QLocale of_language(code);
  return own.language() == of_language.language() ? own : of_language;
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

QString language_to_speak(const QString& chosen, const QStringList& wanted, const QString& folder) {
  const std::vector<Language> there = languages(folder);
  for (const QString& each : QStringList(chosen) + wanted) {
    QString code = each.section(QLatin1Char('-'), 0, 0);
    if (std::any_of(there.begin(), there.end(), [&](const Language& one) { return one.code == code; })) {
      return code;
    }
  }
  return QStringLiteral("en");
}

Spoken::Spoken(const QString& code, const QString& folder) {
  auto own = std::make_unique<QTranslator>();
  const bool there = code != QLatin1String("en") && own->load(file_name(code), folder);
  QLocale::setDefault(locale_of(there ? code : QStringLiteral("en")));
  if (!there) {
    return;
  }
  auto toolkit = std::make_unique<QTranslator>();
  if (toolkit->load(QStringLiteral("qtbase_") + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
    translators_.push_back(std::move(toolkit));
  }
  translators_.push_back(std::move(own));
  for (const auto& each : translators_) {
    QCoreApplication::installTranslator(each.get());
  }
}

Spoken::~Spoken() {
  QLocale::setDefault(before_);
}

void Speaker::speak(const QString& code) {
  if (code == code_) {
    return;
  }
  code_ = code;
  spoken_.reset();  // before the next: each puts back what was there before it
  spoken_ = std::make_unique<Spoken>(code);
}

}  // namespace shimwright::shell
