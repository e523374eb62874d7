#include <string_view>
#include <utility>

#include <fmt/format.h>

#include "arguments.h"
#include "commands.h"
#include "shimwright/store/scanned_code.h"
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

/// A key from a file is bound to nobody here: whose signature it proved the statement alone says.
void tell_signers(const record::SignedRecord& file) {
  for (const record::SealSigner& each : file.statement.signers) {
    say(fmt::format("{} {}: key {}", each.role, each.name, each.public_key));
  }
  for (const record::SignedAddendum& each : file.addenda) {
    const record::SealSigner& signer = each.statement.signer;
    say(fmt::format("{} {}: key {}", signer.role, signer.name, signer.public_key));
  }
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
  auto whole = record::check_signed_record(*read);
  whole = whole ? record::check_keys(*read, *keys) : whole;
  if (const auto file = arguments.options.find("store"); whole && file != arguments.options.end()) {
    auto store = open_to_look(file->second);
    if (!store) {
      return failed(store.error());
    }
    whole = store::same_as_here(**store, *read);
  }
  const Exit exit = whole_or_not(whole);
  if (whole && arguments.options.count("key") > 0) {
    tell_signers(*read);
  }
  return exit;
}

std::string side_text(std::string_view side, const record::VitalSide& value) {
  const std::string worst = record::worst_float_text(value);
  return fmt::format("{} {}{}", side, value.shim.empty() ? "none" : value.shim, worst.empty() ? "" : " at " + worst);
}

/// What the code says, to compare with the paper it stands on.
Exit told(const store::ScannedCode& scanned) {
  std::string_view standing = "whole and ours";
  if (scanned.key == store::KeyStanding::unknown) {
    standing = "whole, but signed with a key that is not known here";
  } else if (scanned.key == store::KeyStanding::ended) {
    standing = "whole, but signed with a key that had ended, or of which no day can be told";
  }
  const record::VitalValues& values = scanned.values;
  say(fmt::format("{}: vehicle {}, job {}, {}, {}, seal {}", standing, values.vehicle, values.number,
                  side_text("lower", values.lower), side_text("upper", values.upper),
                  record::seal_groups(values.digest)));
  return scanned.key == store::KeyStanding::ours ? Exit::done : Exit::off;
}

Exit verify_code(const Arguments& arguments) {
  auto store = open_to_look(arguments.options.at("store"));
  if (!store) {
    return failed(store.error());
  }
  const auto scanned = store::read_scanned_code(**store, arguments.options.at("code"));
  return scanned ? told(*scanned) : whole_or_not(tl::make_unexpected(scanned.error()));
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
  auto arguments = read_arguments(words, {0, 1, {"store", "job", "key", "code"}, {}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  const auto given = [&](const char* option) { return arguments->options.count(option) > 0; };
  const bool file =
      !arguments->positional.empty() && !given("job") && !given("code") && !(given("key") && given("store"));
  const bool in_store = arguments->positional.empty() && given("store") && !given("key");
  if (file) {
    return verify_file(*arguments);
  }
  if (in_store && given("code") != given("job")) {
    return given("code") ? verify_code(*arguments) : verify_in_store(*arguments);
  }
  return refused(
      Error{"wrong_count",
            "",
            {SHIMWRIGHT_TEXT("cli", "Name a signed file, or a store and a job or a code: see its --help."), {}}});
}

}  // namespace shimwright::cli
