#include "step_reader.h"

#include <utility>

#include "fields.h"
#include "step_body_reader.h"

namespace shimwright::sheet {

namespace {

constexpr std::size_t most_cautions = 10;

Result<Caution> read_caution(const json::Value& value, const std::string& place) {
  Fields fields = Fields::open(value, place, {"hazard", "precaution"});
  Caution caution;
  caution.hazard = fields.text("hazard");
  caution.precaution = fields.text("precaution");
  return fields.finish(std::move(caution));
}

Fields open_step(const json::Value& value, const std::string& place) {
  return Fields::open(value, place, {"id", "kind", "title"},
                      {"text", "cautions", "hold_point", "side", "again", "unproven_until", "may_be_not_required",
                       "only_for", "role", "shows",
                       // Of the kinds; read_step_body refuses those of another kind.
                       "choices", "channels", "channel", "attempts_limit", "parts", "least", "as_found", "signer"});
}

}  // namespace

Result<Step> read_step(const json::Value& value, const std::string& place) {
  Fields fields = open_step(value, place);
  Step step;
  step.id = fields.id("id");
  const std::string kind = fields.string("kind");
  step.title = fields.text("title");
  step.text = fields.text("text");
  if (fields.has("cautions")) {
    step.cautions = fields.list("cautions", 1, most_cautions, read_caution);
  }
  step.hold_point = fields.optional_flag("hold_point");
  step.side = fields.optional_word("side", side_words);
  if (const auto again = fields.optional_word("again", again_words)) {
    step.again = *again;
  }
  if (fields.has("unproven_until")) {
    step.unproven_until = fields.id("unproven_until");
  }
  step.may_be_not_required = fields.optional_flag("may_be_not_required");
  step.only_for = fields.optional_word("only_for", method_words);
  step.role = fields.optional_word("role", role_words);
  if (const auto shows = fields.optional_word("shows", drawing_words)) {
    step.shows = *shows;
  }
  step.body = read_step_body(fields, kind);
  return fields.finish(std::move(step));
}

}  // namespace shimwright::sheet
