#include <utility>

#include "arguments.h"
#include "commands.h"
#include "shimwright/store/seal.h"
#include "shimwright/store/signing.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

Exit whole_or_not(const Result<void>& whole) {
  say(whole ? "whole and ours" : whole.error().in_english());
  return whole ? Exit::done : Exit::off;
}

Result<std::vector<record::KnownKey>> keys_in(const Arguments& arguments) {
  if (const auto file = arguments.options.find("key"); file != arguments.options.end()) {
    auto text = read_file(file->second);
    if (!text) {
      return tl::make_unexpected(text.error());
    }
    std::vector<record::KnownKey> keys;
    for (std::size_t at = text->find("-----BEGIN"); at != std::string::npos; at = text->find("-----BEGIN", at + 1)) {
      keys.push_back({record::public_key_in(std::string_view(*text).substr(at)), {}, {}});
    }
    return keys;
  }
  if (const auto file = arguments.options.find("store"); file != arguments.options.end()) {
    auto store = open_to_look(file->second);
    if (!store) {
      return tl::make_unexpected(store.error());
    }
    return store::known_keys(**store);
  }
  return std::vector<record::KnownKey>{};
}

Exit verify_file(const Arguments& arguments) {
  auto keys = keys_in(arguments);
  if (!keys) {
    return failed(keys.error());
  }
  auto text = read_file(arguments.positional.front());
  if (!text) {
    return failed(text.error());
  }
  const auto read = record::read_signed_record(*text);
  if (!read) {
    return whole_or_not(tl::make_unexpected(read.error()));
  }
  const auto whole = record::check_signed_record(*read);
  return whole_or_not(whole ? record::check_keys(*read, *keys) : whole);
}

Exit verify_in_store(const Arguments& arguments) {
  auto store = open_to_look(arguments.options.at("store"));
  if (!store) {
    return failed(store.error());
  }
  auto job = job_named(**store, arguments.options.at("job"));
  if (!job) {
    return failed(job.error());
  }
  return whole_or_not(store::verify_job(**store, *job));
}

}  // namespace

Exit run_verify(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {0, 1, {"store", "job", "key"}, {}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  const bool in_store = arguments->options.count("store") + arguments->options.count("job") == 2;
  if (arguments->positional.empty() != in_store) {
    return refused(Error{
        "wrong_count", "", {SHIMWRIGHT_TEXT("cli", "Name a signed file, or a store and a job: see its --help."), {}}});
  }
  return in_store ? verify_in_store(*arguments) : verify_file(*arguments);
}

}  // namespace shimwright::cli
