#include "shimwright/widgets/sheet_text.h"

#include <QLocale>
#include <utility>
#include <vector>

#include "shimwright/widgets/say.h"

namespace shimwright::widgets {

namespace {

std::string in_window(const sheet::Text& text) {
  return text.in(QLocale().name().section(QLatin1Char('_'), 0, 0).toStdString());
}

std::vector<const sheet::Text*> titles_of(const job::Sheets& sheets) {
  std::vector<const sheet::Text*> titles;
  for (const sheet::Step* step : sheets.job->steps()) {
    titles.push_back(&step->title);
  }
  for (const sheet::PartItem& part : sheets.spec->parts) {
    titles.push_back(&part.title);
  }
  return titles;
}

/// Only whole titles: a word that somebody typed is left as it is.
QString with_titles(const QString& argument, const std::vector<const sheet::Text*>& titles) {
  QString said = argument;
  for (const sheet::Text* title : titles) {
    const QString english = qt(title->in_english());
    const QString here = qt(in_window(*title));
    if (argument == english) {
      return here;
    }
    said.replace(QStringLiteral("“%1”").arg(english), QStringLiteral("“%1”").arg(here));
  }
  return said;
}

}  // namespace

QString say(const sheet::Text& text) {
  return qt(in_window(text));
}

QString say(const Message& message, const job::Sheets& sheets) {
  const auto titles = titles_of(sheets);
  Message said = message;
  for (std::string& argument : said.arguments) {
    argument = plain(with_titles(qt(argument), titles));
  }
  return say(said);
}

QString say(const Error& error, const job::Sheets& sheets) {
  return say(error.message, sheets);
}

}  // namespace shimwright::widgets
