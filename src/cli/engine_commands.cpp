#include <QDate>
#include <nlohmann/json.hpp>

#include "arguments.h"
#include "commands.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/shim/advise.h"
#include "shimwright/vehicle/vehicle_number.h"

namespace shimwright::cli {

namespace {

/// All words are one text: a typed number may hold a space, and begin with a minus; it may stand behind `--`.
std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t at = !words.empty() && words.front() == "--" ? 1 : 0; at < words.size(); ++at) {
    text += (text.empty() ? "" : " ") + words[at];
  }
  return text;
}

std::string one_line(const nlohmann::json& value) {
  return value.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

}  // namespace

Exit run_advise(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {0, 1, {}, {}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto text = read_file(arguments->positional.empty() ? "-" : arguments->positional.front());
  if (!text) {
    return refused(text.error());
  }
  auto advise_case = shim::read_case(*text);
  if (!advise_case) {
    // The contract wants the pointer first even where it is the empty one.
    complain(advise_case.error().place + ": " + advise_case.error().message.in_english());
    return Exit::refused;
  }
  say(shim::write_answer(shim::advise(*advise_case)));
  return Exit::done;
}

Exit run_reading(const std::vector<std::string>& words) {
  auto number = quantity::read_number(joined(words), quantity::Unit::millimetre);
  if (!number) {
    complain(number.error().code);
    return Exit::refused;
  }
  const nlohmann::ordered_json answer{
      {"um", number->base}, {"decimals", number->decimals}, {"unit", std::string(quantity::symbol_of(number->unit))}};
  say(answer.dump());
  return Exit::done;
}

Exit run_vin(const std::vector<std::string>& words) {
  const auto number = vehicle::read_vehicle_number(joined(words), QDate::currentDate().year());
  if (!number) {
    say(one_line(vehicle::to_json(number.error())));
    return Exit::refused;
  }
  say(one_line(vehicle::to_json(*number)));
  return Exit::done;
}

}  // namespace shimwright::cli
