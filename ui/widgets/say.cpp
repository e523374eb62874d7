#include "shimwright/widgets/say.h"

#include <QCoreApplication>
#include <QDateTime>

#include "shimwright/quantity/typed_number.h"

namespace shimwright::widgets {

namespace {

/// The layers' names are the contexts their sentences are translated in.
QString translated(const std::string& pattern) {
  for (const char* context :
       {"job", "shell", "shim", "sheet", "vehicle", "quantity", "store", "print", "record", "json", "cli", "bench"}) {
    QString found = QCoreApplication::translate(context, pattern.c_str());
    if (found != QString::fromStdString(pattern)) {
      return found;
    }
  }
  return QString::fromStdString(pattern);
}

}  // namespace

QString say(const Message& message) {
  return QString::fromStdString(Message{translated(message.text).toStdString(), message.arguments}.in_english());
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
  return QDateTime::fromMSecsSinceEpoch(at_ms).toString(QStringLiteral("d MMM yyyy, HH:mm"));
}

}  // namespace shimwright::widgets
