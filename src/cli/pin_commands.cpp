#include "arguments.h"
#include "commands.h"
#include "pin_input.h"
#include "shimwright/store/signing.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

/// What one call does, of the ways that exclude each other.
enum class PinWay { set, change, forgotten, end, show };

Result<PinWay> pin_way(const Arguments& arguments) {
  const bool end = arguments.options.count("end") != 0;
  if (arguments.flags.size() + (end ? 1U : 0U) > 1 || end != (arguments.options.count("from") != 0)) {
    return refuse("wrong_count", "pin",
                  SHIMWRIGHT_TEXT("cli", "One thing at a time, and an end needs its day: see its --help."));
  }
  if (end) {
    return PinWay::end;
  }
  const std::string way = arguments.flags.empty() ? std::string() : *arguments.flags.begin();
  return way == "key"         ? PinWay::show
         : way == "change"    ? PinWay::change
         : way == "forgotten" ? PinWay::forgotten
                              : PinWay::set;
}

/// A key as it is shown: as PEM, or the name of a file that holds it, or its 64 hexadecimal digits.
Result<std::string> key_given(const std::string& given) {
  if (given.size() == 64 && given.find_first_not_of("0123456789abcdef") == std::string::npos) {
    return given;
  }
  auto text = read_file(given);
  if (!text) {
    return text;
  }
  return record::public_key_in(*text);
}

Result<void> done_with_pin(PinWay way, Signing& by_whom, const store::By& by) {
  auto input = PinInput::open();
  if (!input) {
    return tl::make_unexpected(input.error());
  }
  const record::Pin first = input->next();
  if (way == PinWay::change) {
    return store::change_pin(*by_whom.store, by_whom.person, first, input->next(), by);
  }
  return way == PinWay::forgotten ? store::forget_pin(*by_whom.store, by_whom.person, first, by)
                                  : store::set_pin(*by_whom.store, by_whom.person, first, by);
}

Result<void> ended(const Arguments& arguments, Signing& by_whom, const store::By& by) {
  auto key = key_given(arguments.options.at("end"));
  return key ? store::end_key(*by_whom.store, *key, arguments.options.at("from"), by)
             : tl::make_unexpected(key.error());
}

Exit show_keys(const Signing& by_whom) {
  auto keys = store::signing_keys(*by_whom.store);
  if (!keys) {
    return failed(keys.error());
  }
  for (const store::PersonsKey& each : *keys) {
    if (each.person == by_whom.person) {
      std::string pem = record::pem_of(each.public_key);
      pem.pop_back();
      say(pem);
    }
  }
  return Exit::done;
}

}  // namespace

Exit run_pin(const std::vector<std::string>& words) {
  auto arguments = read_arguments(
      words, {0, 0, {"store", "person", "end", "from"}, {"store", "person"}, {"change", "forgotten", "key"}});
  auto way = arguments ? pin_way(*arguments) : tl::make_unexpected(arguments.error());
  if (!way) {
    return refused(way.error());
  }
  auto by_whom = signing(*arguments);
  if (!by_whom) {
    return refused(by_whom.error());
  }
  const store::By by{by_whom->person, moment_now()};
  const Result<void> done = *way == PinWay::show  ? Result<void>()
                            : *way == PinWay::end ? ended(*arguments, *by_whom, by)
                                                  : done_with_pin(*way, *by_whom, by);
  return done ? show_keys(*by_whom) : refused(done.error());
}

}  // namespace shimwright::cli
