#include "shimwright/widgets/units.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QVariant>
#include <cmath>
#include <string_view>

#include "shimwright/widgets/say.h"

namespace shimwright::widgets {

namespace {

constexpr const char* length_property = "shimwright-length-unit";
constexpr const char* torque_property = "shimwright-torque-unit";

quantity::Unit unit_in(const char* property, quantity::Unit otherwise) {
  const QCoreApplication* const application = QCoreApplication::instance();
  const std::string symbol = application == nullptr ? std::string() : plain(application->property(property).toString());
  const auto unit = quantity::unit_with_symbol(symbol);
  return unit && quantity::dimension_of(*unit) == quantity::dimension_of(otherwise) ? *unit : otherwise;
}

bool ends_with(std::string_view text, std::string_view end) {
  return text.size() > end.size() && text.substr(text.size() - end.size()) == end;
}

/// A number of mm in the unit shown; what is no number stays.
std::string length_argument(const std::string& argument) {
  const auto number = quantity::read_number(argument, quantity::Unit::millimetre);
  return number ? plain(digits_shown(*number)) : argument;
}

/// `13.5 N·m`, `0.20 mm`: an argument that brings its unit along.
std::string argument_with_unit(const std::string& argument) {
  for (const quantity::Unit unit : {quantity::Unit::millimetre, quantity::Unit::newton_metre}) {
    if (ends_with(argument, std::string(" ").append(quantity::symbol_of(unit)))) {
      const auto number = quantity::read_number(argument, unit);
      return number ? plain(number_shown(*number)) : argument;
    }
  }
  return argument;
}

}  // namespace

quantity::UnitsShown units_shown() {
  return {unit_in(length_property, quantity::Unit::millimetre), unit_in(torque_property, quantity::Unit::newton_metre)};
}

void show_in(const quantity::UnitsShown& units) {
  QCoreApplication* const application = QCoreApplication::instance();
  application->setProperty(length_property, qt(quantity::symbol_of(units.length)));
  application->setProperty(torque_property, qt(quantity::symbol_of(units.torque)));
}

quantity::Unit unit_shown(quantity::Unit unit) {
  return quantity::unit_shown(unit, units_shown());
}

QString symbol_shown(quantity::Unit unit) {
  // A small l beside digits is read as one more.
  return unit == quantity::Unit::litre ? QStringLiteral("L") : qt(quantity::symbol_of(unit));
}

QString number_with_unit(const quantity::TypedNumber& number) {
  QString text = qt(quantity::printed_text_of(number));
  const QString symbol = qt(quantity::symbol_of(number.unit));
  text.chop(symbol.size());
  return text + symbol_shown(number.unit);
}

QString number_shown(const quantity::TypedNumber& number) {
  return number_with_unit(quantity::number_in(number, unit_shown(number.unit)));
}

QString digits_shown(const quantity::TypedNumber& number) {
  return number_text(quantity::digits_of(quantity::number_in(number, unit_shown(number.unit))));
}

QString amount_shown(std::int64_t base, quantity::Unit unit) {
  const quantity::Unit shown = unit_shown(unit);
  if (shown == unit) {
    return number_text(quantity::shortest_text(base, unit));
  }
  return number_shown({base, quantity::most_decimals(unit), unit});
}

QString length_shown(double millimetres, int decimals) {
  const quantity::Unit unit = unit_shown(quantity::Unit::millimetre);
  // A mean is finer than what can be typed; a nought behind whole micrometres would be invented.
  const bool finer = decimals > quantity::most_decimals(unit);
  if (unit == quantity::Unit::millimetre && !finer) {
    const quantity::Length whole(std::llround(millimetres * 1000.0));
    return number_text(quantity::millimetre_text(whole, decimals));
  }
  const double shown = millimetres / millimetres_of_unit_shown();
  // Adding nothing turns a zero with a sign into a plain one.
  return number_text(plain(QString::number(shown + 0.0, 'f', quantity::decimals_shown(decimals, unit))));
}

QString uncertainty_shown(double millimetres, int decimals) {
  const double step = std::pow(10.0, -quantity::decimals_shown(decimals, unit_shown(quantity::Unit::millimetre))) *
                      millimetres_of_unit_shown();
  constexpr double of_reckoning = 1e-6;  // 0.003 in steps of 0.001 are three
  return length_shown(std::ceil(millimetres / step - of_reckoning) * step, decimals);
}

QString length_symbol() {
  return qt(quantity::symbol_of(unit_shown(quantity::Unit::millimetre)));
}

QString with_length_unit(const QString& sentence) {
  static const QRegularExpression unit(QStringLiteral("\\bmm\\b"));
  return QString(sentence).replace(unit, length_symbol());
}

double millimetres_of_unit_shown() {
  return unit_shown(quantity::Unit::millimetre) == quantity::Unit::inch ? 25.4 : 1.0;
}

QString kept_together(const QString& text) {
  static const QRegularExpression before_unit(
      QStringLiteral("(?<=[0-9]) (?=(?:mm|in|thou|N·m|lbf·ft|kg|g|°C|°|mV|V|l|L|ml|bar|kPa|%|km|mi|h|min)(?!\\w))"),
      QRegularExpression::UseUnicodePropertiesOption);
  static const QString no_break(QChar(0x00A0));
  QString kept = text;
  kept.replace(QStringLiteral(" \u00b1 "), no_break + QChar(0x00B1) + no_break);
  return kept.replace(before_unit, no_break);
}

Message in_units_shown(const std::string& pattern, const std::vector<std::string>& arguments) {
  Message shown{pattern, arguments};
  if (units_shown() == quantity::UnitsShown()) {
    return shown;
  }
  for (std::string& each : shown.arguments) {
    each = argument_with_unit(each);
  }
  if (unit_shown(quantity::Unit::millimetre) == quantity::Unit::millimetre) {
    return shown;
  }
  // `{0} mm`, `{0} to {1} mm`, `{1} ± {2} mm`.
  static const QRegularExpression lengths(QStringLiteral("\\{(\\d)\\}(?: \\S{1,3} \\{(\\d)\\})? mm\\b"));
  QString text = qt(pattern);
  auto found = lengths.globalMatch(qt(pattern));
  while (found.hasNext()) {
    const QRegularExpressionMatch match = found.next();
    for (const int group : {1, 2}) {
      const auto index = match.captured(group).toUInt();
      if (!match.captured(group).isEmpty() && index < arguments.size()) {
        shown.arguments[index] = length_argument(arguments[index]);
      }
    }
    QString said = match.captured();
    said.replace(said.size() - 2, 2, length_symbol());
    text.replace(match.captured(), said);
  }
  shown.text = plain(text);
  return shown;
}

}  // namespace shimwright::widgets
