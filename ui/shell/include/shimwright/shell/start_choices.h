#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "shimwright/quantity/units_shown.h"
#include "shimwright/record/page.h"
#include "shimwright/shell/choice_row.h"

/// What is asked at the first start and in the settings: language, units, paper. The names are those of the buttons.
namespace shimwright::shell {

/// `language-en` …
[[nodiscard]] std::vector<ChoiceRow::Choice> language_choices();
[[nodiscard]] std::vector<ChoiceRow::Choice> length_choices();
[[nodiscard]] std::vector<ChoiceRow::Choice> torque_choices();
[[nodiscard]] std::vector<ChoiceRow::Choice> paper_choices();

struct UnitChoice {
  QString length;
  QString torque;
};
[[nodiscard]] UnitChoice choice_of(const quantity::UnitsShown& units);
[[nodiscard]] QString choice_of(record::PaperSize paper);
/// The units with what was chosen; the same where the name is of something else.
[[nodiscard]] quantity::UnitsShown with_choice(quantity::UnitsShown units, const QString& name);
[[nodiscard]] std::optional<record::PaperSize> paper_named(const QString& name);

}  // namespace shimwright::shell
