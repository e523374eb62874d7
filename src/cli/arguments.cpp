#include "arguments.h"

namespace shimwright::cli {

namespace {

Result<void> take_option(Arguments& taken, const ArgumentForm& form, const std::vector<std::string>& words,
                         std::size_t& at) {
  const std::string name = words[at].substr(2);
  if (taken.options.count(name) + taken.flags.count(name) != 0) {
    return refuse("repeated_option", words[at], SHIMWRIGHT_TEXT("cli", "This option is given twice: give it once."));
  }
  if (form.flags.count(name) != 0) {
    taken.flags.insert(name);
    return {};
  }
  if (form.options.count(name) == 0) {
    return refuse("unknown_option", words[at],
                  SHIMWRIGHT_TEXT("cli", "This command has no such option: see its --help."));
  }
  if (at + 1 >= words.size()) {
    return refuse("value_missing", words[at], SHIMWRIGHT_TEXT("cli", "This option needs a value after it."));
  }
  taken.options[name] = words[++at];
  return {};
}

}  // namespace

Result<Arguments> read_arguments(const std::vector<std::string>& words, const ArgumentForm& form) {
  Arguments taken;
  bool only_positional = false;
  for (std::size_t at = 0; at < words.size(); ++at) {
    const std::string& word = words[at];
    if (!only_positional && word == "--") {
      only_positional = true;
    } else if (!only_positional && word.size() > 2 && word.compare(0, 2, "--") == 0) {
      if (auto option = take_option(taken, form, words, at); !option) {
        return tl::make_unexpected(option.error());
      }
    } else {
      taken.positional.push_back(word);
    }
  }
  if (taken.positional.size() < form.least_positional || taken.positional.size() > form.most_positional) {
    return refuse("wrong_count", "",
                  SHIMWRIGHT_TEXT("cli", "This command takes another number of words: see its --help."));
  }
  for (const std::string& name : form.required_options) {
    if (taken.options.count(name) == 0) {
      return refuse("option_missing", "--" + name,
                    SHIMWRIGHT_TEXT("cli", "This command needs this option: see its --help."));
    }
  }
  return taken;
}

}  // namespace shimwright::cli
