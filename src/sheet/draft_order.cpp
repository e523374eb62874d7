// Where the rows of a draft stand, and where they may go.
#include <map>
#include <utility>
#include <vector>

#include "draft_json.h"

namespace shimwright::sheet {

namespace {

constexpr std::size_t most_steps = 100;

/// A step that names another one.
struct Reference {
  const DraftJson* step;
  std::string to;
  bool to_comes_after;  ///< else before
};

/// In which order the steps of a sheet stand.
struct StepOrder {
  std::map<std::string, std::size_t> positions;
  std::vector<Reference> references;
  bool ends_signed = false;

  [[nodiscard]] bool keeps(const Reference& reference) const {
    const auto from = positions.find(shown_text(value_at(*reference.step, "/id")));
    const auto to = positions.find(reference.to);
    return from != positions.end() && to != positions.end() &&
           (reference.to_comes_after ? to->second > from->second : to->second < from->second);
  }
};

const DraftJson& rows_at(const DraftJson& body, const std::string& place) {
  static const DraftJson none = DraftJson::array();
  const DraftJson* const rows = value_at(body, place);
  return rows != nullptr && rows->is_array() ? *rows : none;
}

void add_references(StepOrder& order, const DraftJson& step) {
  if (const std::string until = shown_text(value_at(step, "/unproven_until")); !until.empty()) {
    order.references.push_back({&step, until, true});
  }
  for (const DraftJson& channel : rows_at(step, "/channels")) {
    if (const std::string equal = shown_text(value_at(channel, "/equals/step")); !equal.empty()) {
      order.references.push_back({&step, equal, false});
    }
  }
}

/// The body must outlive it.
StepOrder order_of(const DraftJson& body) {
  StepOrder order;
  for (const DraftJson& stage : rows_at(body, "/stages")) {
    for (const DraftJson& step : rows_at(stage, "/steps")) {
      order.positions.emplace(shown_text(value_at(step, "/id")), order.positions.size());
      order.ends_signed = shown_text(value_at(step, "/kind")) == "sign";
      add_references(order, step);
    }
  }
  return order;
}

std::string words_for(const DraftJson& step) {
  const std::string title = shown_text(value_at(step, "/title/en"));
  return title.empty() ? shown_text(value_at(step, "/id")) : title;
}

std::string words_for_id(const DraftJson& body, const std::string& id) {
  for (const DraftJson& stage : rows_at(body, "/stages")) {
    for (const DraftJson& step : rows_at(stage, "/steps")) {
      if (shown_text(value_at(step, "/id")) == id) {
        return words_for(step);
      }
    }
  }
  return id;
}

/// What was in order before has to be so after; what was not is no hindrance to putting it right.
Result<void> check_order(const DraftJson& before, const DraftJson& after, const std::string& place) {
  const StepOrder were = order_of(before);
  const StepOrder are = order_of(after);
  for (const Reference& each : were.references) {
    if (!were.keeps(each) || are.keeps(each)) {
      continue;
    }
    return refuse("wrong_order", place,
                  each.to_comes_after
                      ? SHIMWRIGHT_TEXT("sheet",
                                        "“{0}” is unproven until “{1}”, so it has to come before it; move the other of "
                                        "the two first, or change what it says.")
                      : SHIMWRIGHT_TEXT("sheet",
                                        "“{0}” has to equal a reading of “{1}”, so it has to come after it; move the "
                                        "other of the two first, or change what it says."),
                  {words_for(*each.step), words_for_id(before, each.to)});
  }
  if (were.ends_signed && !are.ends_signed) {
    return refuse(
        "no_signature", place,
        SHIMWRIGHT_TEXT("sheet", "The signature closes the job, so it has to be the last step; leave it at the end."));
  }
  return {};
}

std::size_t number_of(const std::string& row) {
  return static_cast<std::size_t>(std::stoul(last_of(row)));
}

std::string row_of_list(const std::string& list, std::size_t at) {
  return list + "/" + std::to_string(at);
}

/// The stage before or after that of a step; blank where there is none, or the row is no step of a stage.
std::string next_stage(const DraftJson& body, const std::string& step, int by) {
  const std::string stage = parent_of(parent_of(step));
  if (last_of(parent_of(step)) != "steps" || parent_of(stage) != "/stages" || (by < 0 && number_of(stage) == 0)) {
    return "";
  }
  std::string other = row_of_list("/stages", by < 0 ? number_of(stage) - 1 : number_of(stage) + 1);
  const DraftJson* const there = value_at(body, other);
  return there != nullptr && there->is_object() ? other : std::string();
}

/// Up: to the end of the stage before. Down: to the beginning of the next.
Result<std::string> carried_over(DraftJson& body, const std::string& step, const std::string& stage, int by) {
  DraftJson& from = *value_at(body, parent_of(step));
  if (from.size() == 1) {
    return refuse("too_few", step,
                  SHIMWRIGHT_TEXT("sheet",
                                  "A stage has one step at least, and “{0}” is the only one here; add another step to "
                                  "this stage first."),
                  {words_for(from[0])});
  }
  DraftJson& to = (*value_at(body, stage))["steps"];
  to = to.is_array() ? std::move(to) : DraftJson::array();
  if (to.size() >= most_steps) {
    return refuse("too_many", step,
                  SHIMWRIGHT_TEXT("sheet",
                                  "A stage has at most {0} steps, and that one has as many already; take one "
                                  "out of it first."),
                  {std::to_string(most_steps)});
  }
  DraftJson moving = std::move(from[number_of(step)]);
  from.erase(number_of(step));
  const std::size_t at = by < 0 ? to.size() : 0;
  to.insert(to.begin() + static_cast<std::ptrdiff_t>(at), std::move(moving));
  return row_of_list(stage + "/steps", at);
}

}  // namespace

Result<MovedRow> moved(const SheetDraft& draft, const std::string& place, int by) {
  const DraftJson before = body_of(draft);
  DraftJson body = before;
  DraftJson* const list = value_at(body, parent_of(place));
  if (list == nullptr || !list->is_array() || value_at(body, place) == nullptr) {
    return MovedRow{draft, place};
  }
  const auto to = static_cast<std::int64_t>(number_of(place)) + by;
  std::string now;
  if (to >= 0 && to < static_cast<std::int64_t>(list->size())) {
    std::swap((*list)[number_of(place)], (*list)[static_cast<std::size_t>(to)]);
    now = row_of_list(parent_of(place), static_cast<std::size_t>(to));
  } else if (const std::string stage = next_stage(body, place, by); !stage.empty()) {
    auto carried = carried_over(body, place, stage, by);
    if (!carried) {
      return tl::make_unexpected(std::move(carried.error()));
    }
    now = std::move(*carried);
  } else {
    return MovedRow{draft, place};
  }
  if (auto kept = check_order(before, body, place); !kept) {
    return tl::make_unexpected(std::move(kept.error()));
  }
  return MovedRow{draft_of(draft.kind, body), std::move(now)};
}

}  // namespace shimwright::sheet
