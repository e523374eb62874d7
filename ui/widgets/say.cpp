#include "shimwright/widgets/say.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>

#include "shimwright/quantity/typed_number.h"
#include "shimwright/widgets/units.h"

namespace shimwright::widgets {

namespace {

/// Where the sentences of the layers are translated: the layers' names.
constexpr const char* layers[] = {"job",   "shell", "shim",   "sheet", "vehicle", "quantity",
                                  "store", "print", "record", "json",  "cli",     "bench"};
/// And the words that are filled into them: `large bearing`. What a person typed is none of them and passes as it is.
constexpr const char* words = "word";

std::string in_context(const char* context, const std::string& text) {
  return QCoreApplication::translate(context, text.c_str()).toStdString();
}

std::string translated(const std::string& pattern) {
  for (const char* layer : layers) {
    std::string found = in_context(layer, pattern);
    if (found != pattern) {
      return found;
    }
  }
  return in_context(words, pattern);
}

}  // namespace

QString say(const Message& message) {
  std::vector<std::string> arguments(message.arguments.size());
  std::transform(message.arguments.begin(), message.arguments.end(), arguments.begin(),
                 [](const std::string& argument) { return in_context(words, argument); });
  return qt(in_units_shown(translated(message.text), arguments).in_english());
}

QString say(const Error& error) {
  return say(error.message);
}

QString qt(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

std::string plain(const QString& text) {
  return text.toStdString();
}

QString number_text(std::string_view digits) {
  return QString::fromStdString(quantity::with_true_minus(std::string(digits)));
}

QString day_and_time(std::int64_t at_ms) {
  return QLocale().toString(QDateTime::fromMSecsSinceEpoch(at_ms),
                            QCoreApplication::translate("widgets", "d MMM yyyy, hh:mm"));
}

}  // namespace shimwright::widgets
