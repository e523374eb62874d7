#include "shimwright/shell/start_choices.h"

#include <QCoreApplication>

#include "shimwright/shell/languages.h"

namespace shimwright::shell {

namespace {

struct StartChoices {
  Q_DECLARE_TR_FUNCTIONS(shell)
};

}  // namespace

std::vector<ChoiceRow::Choice> language_choices() {
  std::vector<ChoiceRow::Choice> choices;
  for (const Language& each : languages()) {
    choices.push_back({QStringLiteral("language-") + each.code, each.name});
  }
  return choices;
}

std::vector<ChoiceRow::Choice> length_choices() {
  return {{QStringLiteral("length-mm"), StartChoices::tr("mm")},
          {QStringLiteral("length-in"), StartChoices::tr("inch")}};
}

std::vector<ChoiceRow::Choice> torque_choices() {
  return {{QStringLiteral("torque-nm"), StartChoices::tr("N·m")},
          {QStringLiteral("torque-lbf-ft"), StartChoices::tr("lbf·ft")}};
}

std::vector<ChoiceRow::Choice> paper_choices() {
  return {{QStringLiteral("paper-a4"), StartChoices::tr("A4")},
          {QStringLiteral("paper-letter"), StartChoices::tr("Letter")}};
}

UnitChoice choice_of(const quantity::UnitsShown& units) {
  return {units.length == quantity::Unit::inch ? QStringLiteral("length-in") : QStringLiteral("length-mm"),
          units.torque == quantity::Unit::pound_foot ? QStringLiteral("torque-lbf-ft") : QStringLiteral("torque-nm")};
}

QString choice_of(record::PaperSize paper) {
  return paper == record::PaperSize::letter ? QStringLiteral("paper-letter") : QStringLiteral("paper-a4");
}

quantity::UnitsShown with_choice(quantity::UnitsShown units, const QString& name) {
  if (name.startsWith(QLatin1String("length-"))) {
    units.length = name == QLatin1String("length-in") ? quantity::Unit::inch : quantity::Unit::millimetre;
  } else if (name.startsWith(QLatin1String("torque-"))) {
    units.torque = name == QLatin1String("torque-lbf-ft") ? quantity::Unit::pound_foot : quantity::Unit::newton_metre;
  }
  return units;
}

std::optional<record::PaperSize> paper_named(const QString& name) {
  for (const record::PaperSize paper : {record::PaperSize::a4, record::PaperSize::letter}) {
    if (choice_of(paper) == name) {
      return paper;
    }
  }
  return std::nullopt;
}

}  // namespace shimwright::shell
