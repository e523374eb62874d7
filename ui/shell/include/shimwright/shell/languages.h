#pragma once

#include <memory>
#include <vector>

#include <QLocale>
#include <QString>
#include <QStringList>
#include <QTranslator>

namespace shimwright::shell {

struct Language {
  QString code;  ///< `en`, `de`
  QString name;  ///< in itself: `English`, `Deutsch`
};

/// English, and what else is built in below `folder`: files `shimwright_<code>.qm`.
[[nodiscard]] std::vector<Language> languages(const QString& folder = QStringLiteral(":/shimwright/translations"));

/// The chosen language where the program has it; else the first of those wanted, `de-AT`, that it has; else English.
[[nodiscard]] QString language_to_speak(const QString& chosen,
                                        const QStringList& wanted = QLocale::system().uiLanguages(),
                                        const QString& folder = QStringLiteral(":/shimwright/translations"));

/// The window speaks a language as long as this lives: its own sentences, those of the toolkit where its translations
/// are installed, the names of the months, and the texts of the sheets. English for what is not there. Then it is as
/// before.
class Spoken {
 public:
  explicit Spoken(const QString& code, const QString& folder = QStringLiteral(":/shimwright/translations"));
  Spoken(const Spoken&) = delete;
  Spoken& operator=(const Spoken&) = delete;
  ~Spoken();

 private:
  QLocale before_;
  std::vector<std::unique_ptr<QTranslator>> translators_;
};

/// Speaks one language at a time; what is made afterwards is in the language that was asked for last.
class Speaker {
 public:
  void speak(const QString& code);

 private:
  QString code_;
  std::unique_ptr<Spoken> spoken_;
};

}  // namespace shimwright::shell
