#pragma once

#include <string>
#include <vector>

#include "shimwright/quantity/error.h"

namespace shimwright::shell {

/// What the program was started with.
struct StartWords {
  std::string store;  ///< blank: the one in this person's data folder
  bool look = false;
  bool help = false;
  bool version = false;
  bool demo = false;  ///< the demonstration workshop
};

/// Codes: those of cli::read_arguments; `demo_and_store`.
[[nodiscard]] Result<StartWords> read_start_words(const std::vector<std::string>& words);

[[nodiscard]] std::string start_help();

}  // namespace shimwright::shell
