#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "shimwright/quantity/error.h"

namespace shimwright::cli {

/// The words of one call: what stands alone, `--name VALUE` and `--name`.
struct Arguments {
  std::vector<std::string> positional;
  std::map<std::string, std::string> options;  ///< without the dashes
  std::set<std::string> flags;
};

/// What a command takes.
struct ArgumentForm {
  std::size_t least_positional = 0;
  std::size_t most_positional = 0;
  std::set<std::string> options;
  std::set<std::string> required_options;
  std::set<std::string> flags;
};

/// Codes of refusal: `unknown_option`, `repeated_option`, `value_missing`, `option_missing`, `wrong_count`. After `--`
/// every word stands alone; so does a word that begins with a dash and a digit or mark, as a typed number may.
[[nodiscard]] Result<Arguments> read_arguments(const std::vector<std::string>& words, const ArgumentForm& form);

}  // namespace shimwright::cli
