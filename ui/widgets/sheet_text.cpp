#include "shimwright/widgets/sheet_text.h"

#include <QLocale>
#include <algorithm>
#include <variant>
#include <vector>

#include "shimwright/widgets/say.h"

namespace shimwright::widgets {

namespace {

std::string in_window(const sheet::Text& text) {
  return text.in(QLocale().name().section(QLatin1Char('_'), 0, 0).toStdString());
}

using Titles = std::vector<const sheet::Text*>;

void add_channels(Titles& titles, const sheet::StepBody& body) {
  const auto add = [&titles](const sheet::Channel& channel) { titles.push_back(&channel.title); };
  if (const auto* read = std::get_if<sheet::ReadStep>(&body)) {
    std::for_each(read->channels.begin(), read->channels.end(), add);
  } else if (const auto* teach_in = std::get_if<sheet::TeachInStep>(&body)) {
    std::for_each(teach_in->channels.begin(), teach_in->channels.end(), add);
  } else if (const auto* peak = std::get_if<sheet::PeakStep>(&body)) {
    add(peak->channel);
  }
}

Titles titles_of(const job::Sheets& sheets) {
  Titles titles;
  for (const sheet::Step* step : sheets.job->steps()) {
    titles.push_back(&step->title);
    add_channels(titles, step->body);
  }
  for (const sheet::PartItem& part : sheets.spec->parts) {
    titles.push_back(&part.title);
  }
  return titles;
}

/// Only whole titles: a word that somebody typed is left as it is.
QString with_titles(const QString& argument, const Titles& titles) {
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
  const Titles titles = titles_of(sheets);
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
