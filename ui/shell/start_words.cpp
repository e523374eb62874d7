#include "shimwright/shell/start_words.h"

#include "arguments.h"

namespace shimwright::shell {

Result<StartWords> read_start_words(const std::vector<std::string>& words) {
  auto arguments = cli::read_arguments(words, {0, 0, {"store"}, {}, {"demo", "look", "help", "version"}});
  if (!arguments) {
    return tl::make_unexpected(arguments.error());
  }
  StartWords start;
  const auto store = arguments->options.find("store");
  if (store != arguments->options.end()) {
    start.store = store->second;
  }
  start.demo = arguments->flags.count("demo") != 0;
  start.look = arguments->flags.count("look") != 0;
  start.help = arguments->flags.count("help") != 0;
  start.version = arguments->flags.count("version") != 0;
  if (start.demo && !start.store.empty()) {
    return tl::make_unexpected(Error{
        "demo_and_store", "--demo",
        Message{SHIMWRIGHT_TEXT("shell", "--demo has a store of its own: leave out --demo, or leave out --store."),
                {}}});
  }
  return start;
}

std::string start_help() {
  return "shimwright [--store FILE | --demo] [--look]\n"
         "\n"
         "  --store FILE  the workshop's store; else the one in this person's data folder\n"
         "  --demo        the demonstration workshop, made where there is none yet; it never mixes with one's own\n"
         "  --look        open it for looking only, whoever else works in it\n"
         "  --version     say which version this is\n"
         "\n"
         "Shipped limits are demonstration values: the vehicle maker's service information goes first.";
}

}  // namespace shimwright::shell
