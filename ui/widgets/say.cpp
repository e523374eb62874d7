#include "shimwright/widgets/say.h"

#include <QCoreApplication>

#include "shimwright/quantity/typed_number.h"
#include "shimwright/widgets/units.h"

namespace shimwright::widgets {

namespace {

/// The layers' names are the contexts their sentences are translated in.
QString translated(const std::string& pattern) {
  for (const char* context : {"job", "shell", "shim", "sheet", "vehicle", "quantity", "store", "print", "record", "json", "cli", "bench"}) {
    QString found = QCoreApplication::translate(context, pattern.c_str());
    if (found != QString::fromStdString(pattern)) {
      return found;
    }
  }
  return QString::fromStdString(pattern);
}

}  // namespace

QString say(const Message& message) {
  return qt(in_units_shown(plain(translated(message.text)), message.arguments).in_english());
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

}  // namespace shimwright::widgets
