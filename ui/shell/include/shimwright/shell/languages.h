#pragma once

#include <memory>
#include <vector>

#include <QString>
#include <QTranslator>

namespace shimwright::shell {

struct Language {
  QString code;  ///< `en`, `de`
  QString name;  ///< in itself: `English`, `Deutsch`
};

/// English, and what else is built in below `folder`: files `shimwright_<code>.qm`.
[[nodiscard]] std::vector<Language> languages(const QString& folder = QStringLiteral(":/shimwright/translations"));

/// Puts the window into that language; nothing for English and for what is not there. It is spoken as long as the
/// translator lives.
[[nodiscard]] std::unique_ptr<QTranslator> speak(const QString& code,
                                                 const QString& folder = QStringLiteral(":/shimwright/translations"));

}  // namespace shimwright::shell
