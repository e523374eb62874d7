#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/sheet/draft.h"
#include "shimwright/sheet/taken_away.h"

/// Which field of a form a fault of the file belongs to.
namespace shimwright::workshop {

/// The file may have a fault at a row where the form has it at the row's name.
[[nodiscard]] bool stands_at(const Error& fault, const std::string& place);
[[nodiscard]] bool lies_in(const Error& fault, const sheet::DraftSection& section);
/// The row or part that was added last at that place; blank for none.
[[nodiscard]] std::string last_row_of(const sheet::DraftSection& section, const std::string& place);
/// The part of that id.
[[nodiscard]] std::optional<std::size_t> part_named(const std::vector<sheet::DraftSection>& all, const std::string& id);
/// The last of the parts that are rows of that list.
[[nodiscard]] std::optional<std::size_t> last_part_below(const std::vector<sheet::DraftSection>& all,
                                                         const std::string& list);
/// `/stages/3` of what stands in that stage, and of the stage itself; blank for what is in none.
[[nodiscard]] std::string stage_place(const std::string& place);
/// The title of the stage a step stands in; nothing for what is no step.
[[nodiscard]] std::optional<Message> stage_of_step(const std::vector<sheet::DraftSection>& all,
                                                   const std::string& step);
/// A field for each reason, its place `reason_place` and the number of the loss.
[[nodiscard]] sheet::DraftSection section_of_reasons(const std::vector<sheet::TakenAway>& reasons);
inline const std::string reason_place = "#reason/";
/// Whether that field decides which other fields there are.
[[nodiscard]] bool changes_the_form(const std::string& place);

}  // namespace shimwright::workshop
