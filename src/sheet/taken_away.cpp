#include "shimwright/sheet/taken_away.h"

#include <algorithm>

#include "shimwright/sheet/names.h"
#include "text_reader.h"

namespace shimwright::sheet {

namespace {

/// In every language that was there: whoever reads German is warned by the German words.
bool says_the_same(const Text& before, const Text& after) {
  return std::all_of(before.by_language.begin(), before.by_language.end(), [&after](const auto& said) {
    const auto now = after.by_language.find(said.first);
    return now != after.by_language.end() && now->second == said.second;
  });
}

bool has_caution(const Step& step, const Caution& caution) {
  return std::any_of(step.cautions.begin(), step.cautions.end(), [&caution](const Caution& each) {
    return says_the_same(caution.hazard, each.hazard) && says_the_same(caution.precaution, each.precaution);
  });
}

bool is_about(const TakenAway& one, const TakenAway& other) {
  return one.step == other.step && one.guard == other.guard && one.text == other.text;
}

}  // namespace

std::string_view name_of(Guard guard) {
  return guard == Guard::caution ? "caution" : "hold_point";
}

std::vector<TakenAway> taken_away(const JobSheet& before, const JobSheet& after) {
  std::vector<TakenAway> lost;
  for (const Step* step : before.steps()) {
    const Step* now = after.find(step->id);
    for (const Caution& caution : step->cautions) {
      if (now == nullptr || !has_caution(*now, caution)) {
        lost.push_back({step->id, Guard::caution, caution.hazard.in_english(), ""});
      }
    }
    if (step->hold_point && (now == nullptr || !now->hold_point)) {
      lost.push_back({step->id, Guard::hold_point, step->title.in_english(), ""});
    }
  }
  return lost;
}

Result<std::vector<TakenAway>> taken_away_for(const JobSheet& before, const JobSheet& after,
                                              const std::vector<TakenAway>& reasons) {
  return with_reasons(taken_away(before, after), reasons);
}

Result<std::vector<TakenAway>> with_reasons(std::vector<TakenAway> lost, const std::vector<TakenAway>& reasons) {
  for (TakenAway& each : lost) {
    const auto given = std::find_if(reasons.begin(), reasons.end(),
                                    [&each](const TakenAway& reason) { return is_about(reason, each); });
    if (given == reasons.end() || is_blank(given->reason)) {
      return refuse("no_reason", each.step,
                    SHIMWRIGHT_TEXT("sheet", "“{0}” was taken away; put it back, or say why it may go."), {each.text});
    }
    if (auto checked = check_line(given->reason, each.step, longest_line); !checked) {
      return tl::make_unexpected(std::move(checked.error()));
    }
    each.reason = given->reason;
  }
  return lost;
}

}  // namespace shimwright::sheet
