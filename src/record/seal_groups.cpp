#include <array>
#include <vector>

#include "shimwright/record/seal_code.h"
#include "sodium_bytes.h"

namespace shimwright::record {

namespace {

constexpr std::string_view symbols = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::size_t data_symbols = 19;
constexpr unsigned bits = 5;

/// The field of 32 elements: with its powers as weights no single wrong symbol and no swap of two goes unseen.
unsigned times_two(unsigned element) {
  constexpr unsigned polynomial = 0x25;  // x^5 + x^2 + 1
  const unsigned doubled = element << 1U;
  return (doubled & 0x20U) != 0 ? doubled ^ polynomial : doubled;
}

/// 0 for groups whose last symbol checks the others.
unsigned remainder(const std::vector<unsigned>& elements) {
  unsigned sum = 0;
  for (const unsigned element : elements) {
    sum = times_two(sum) ^ element;
  }
  return sum;
}

std::string in_groups(const std::vector<unsigned>& elements) {
  std::string text;
  for (std::size_t at = 0; at < elements.size(); ++at) {
    text += at > 0 && at % 4 == 0 ? "-" : "";
    text += symbols[elements[at]];
  }
  return text;
}

char as_meant(char typed) {
  const char capital = typed >= 'a' && typed <= 'z' ? static_cast<char>(typed - 'a' + 'A') : typed;
  if (capital == 'O') {
    return '0';
  }
  return capital == 'I' || capital == 'L' ? '1' : capital;
}

}  // namespace

std::string seal_groups(std::string_view digest) {
  std::array<unsigned char, 32> bytes{};
  if (!from_hexadecimal(digest, bytes)) {
    return {};
  }
  std::vector<unsigned> elements;
  unsigned held = 0;
  unsigned count = 0;
  for (const unsigned char byte : bytes) {
    held = (held << 8U) | byte;
    count += 8;
    while (count >= bits && elements.size() < data_symbols) {
      count -= bits;
      elements.push_back((held >> count) & 0x1FU);
    }
    if (elements.size() == data_symbols) {
      break;
    }
    held &= (1U << (count % bits)) - 1U;
  }
  elements.push_back(0);
  elements.back() = remainder(elements);
  return in_groups(elements);
}

Result<std::string> read_seal_groups(std::string_view typed) {
  std::vector<unsigned> elements;
  bool known = true;
  for (const char each : typed) {
    if (each == ' ' || each == '-') {
      continue;
    }
    const auto at = symbols.find(as_meant(each));
    known = known && at != std::string_view::npos;
    elements.push_back(static_cast<unsigned>(at));
  }
  if (!known || elements.size() != data_symbols + 1 || remainder(elements) != 0) {
    return refuse("bad_seal_groups", "seal",
                  SHIMWRIGHT_TEXT("record", "This is no seal as it is printed: compare it symbol by symbol."));
  }
  return in_groups(elements);
}

}  // namespace shimwright::record
