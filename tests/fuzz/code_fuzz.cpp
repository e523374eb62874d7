#include <algorithm>
#include <span>
#include <string>
#include <vector>

#include "base45.h"
#include "fuzz_target.h"
#include "shimwright/record/seal_code.h"

namespace record = shimwright::record;
using shimwright::fuzz::require;

namespace {

/// The same key in every run, or what was found could not be played again.
const record::SecretKey& key() {
  static const record::SecretKey made =
      record::new_key([](std::span<std::uint8_t> bytes) { std::fill(bytes.begin(), bytes.end(), std::uint8_t{7}); });
  return made;
}

/// What a camera or a reader of codes gives.
void try_scanned(std::string_view text) {
  const auto code = record::read_seal_code(text);
  if (!code) {
    require(code.error().code == "not_seal_code" || code.error().code == "changed", "a refusal has its code");
    require(code.error().in_english().find('\n') == std::string::npos, "a refusal is one line");
    return;
  }
  require(code->public_key.size() == 64, "a code that is taken names its key");
}

std::string line(std::string_view& rest) {
  const auto end = std::min(rest.find('\n'), rest.size());
  const std::string first(rest.substr(0, end));
  rest.remove_prefix(std::min(end + 1, rest.size()));
  return first;
}

/// Well signed, but of odd values: signed by anybody, a code can say anything.
void try_signed(std::string_view rest) {
  record::VitalValues values;
  values.vehicle = line(rest);
  values.number = line(rest);
  values.lower.shim = line(rest);
  values.upper.shim = line(rest);
  values.digest = line(rest);
  values.upper.worst_um = static_cast<std::int64_t>(rest.size());
  const auto read = record::read_seal_code(record::seal_code(values, key()));
  require(read.has_value(), "what was signed is read");
  require(read->values == values, "what was signed is read as the same values");
}

void try_text_forms(std::string_view text) {
  require(record::from_base45(record::base45(text)) == std::string(text), "bytes come back from their characters");
  if (const auto bytes = record::from_base45(text)) {
    require(record::base45(*bytes) == text, "characters that are taken are those of their bytes");
  }
  if (const auto groups = record::read_seal_groups(text)) {
    require(record::read_seal_groups(*groups) == groups, "a seal as it is written is read as itself");
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto text = shimwright::fuzz::text_of(data, size);
  try_scanned(text);
  try_signed(text);
  try_text_forms(text);
  return 0;
}
