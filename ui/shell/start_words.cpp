#include "shimwright/shell/start_words.h"

#include "arguments.h"

namespace shimwright::shell {

Result<StartWords> read_start_words(const std::vector<std::string>& words) {
  auto arguments = cli::read_arguments(words, {0, 0, {"store"}, {}, {"look", "help", "version"}});
  if (!arguments) {
    return tl::make_unexpected(arguments.error());
  }
  StartWords start;
  const auto store = arguments->options.find("store");
  if (store != arguments->options.end()) {
    start.store = store->second;
  }
  start.look = arguments->flags.count("look") != 0;
  start.help = arguments->flags.count("help") != 0;
  start.version = arguments->flags.count("version") != 0;
  return start;
}

std::string start_help() {
  return "shimwright [--store FILE] [--look]\n"
         "\n"
         "  --store FILE  the workshop's store; else the one in this person's data folder\n"
         "  --look        open it for looking only, whoever else works in it\n"
         "  --version     say which version this is\n"
         "\n"
         "Shipped limits are demonstration values: the vehicle maker's service information goes first.";
}

}  // namespace shimwright::shell
