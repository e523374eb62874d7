#include "shimwright/record/seal_code.h"

#include <charconv>
#include <cstdlib>
#include <vector>

#include "base45.h"
#include "sodium_bytes.h"
#include "wording.h"

namespace shimwright::record {

namespace {

constexpr std::string_view prefix = "SW1:";
constexpr std::string_view domain = "shimwright.code.1\n";
constexpr std::size_t key_size = crypto_sign_PUBLICKEYBYTES;
constexpr std::size_t signature_size = crypto_sign_BYTES;

std::int64_t from_middle(std::int64_t float_um, const FloatLimits& limits) {
  return std::abs(2 * float_um - limits.least.count() - limits.most.count());
}

VitalSide side_of(const Record& record, Side side) {
  VitalSide vital;
  vital.shim = shim_fitted(record, side);
  for (const FloatSeries& series : record.floats) {
    if (series.side != side || series.as_found || !series.latest || !series.judged) {
      continue;
    }
    for (const std::int64_t each : series.judged->spot_floats) {
      if (!vital.worst_um || from_middle(each, series.limits) > from_middle(*vital.worst_um, series.limits)) {
        vital.worst_um = each;
      }
    }
  }
  return vital;
}

std::string line_of(const VitalSide& side) {
  return side.shim + "/" + (side.worst_um ? std::to_string(*side.worst_um) : std::string());
}

/// What is signed: one value to a line, none of which may hold a line feed.
std::string text_of(const VitalValues& values) {
  return values.vehicle + "\n" + values.number + "\n" + line_of(values.lower) + "\n" + line_of(values.upper) + "\n" +
         values.digest;
}

VitalSide side_in(const std::string& line) {
  const auto mark = line.rfind('/');
  if (mark == std::string::npos) {
    return {line, std::nullopt};
  }
  VitalSide side{line.substr(0, mark), std::nullopt};
  std::int64_t worst = 0;
  const char* const end = line.data() + line.size();
  const auto read = std::from_chars(line.data() + mark + 1, end, worst);
  if (read.ec == std::errc() && read.ptr == end) {
    side.worst_um = worst;
  }
  return side;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines(1);
  for (const char each : text) {
    if (each == '\n') {
      lines.emplace_back();
    } else {
      lines.back() += each;
    }
  }
  return lines;
}

std::string one_line(std::string text) {
  for (char& each : text) {
    each = each == '\n' ? ' ' : each;
  }
  return text;
}

std::string bytes_in(std::string_view hex) {
  std::string bytes;
  for (std::size_t at = 0; at + 1 < hex.size(); at += 2) {
    unsigned byte = 0;
    std::from_chars(hex.data() + at, hex.data() + at + 2, byte, 16);
    bytes += static_cast<char>(byte);
  }
  return bytes;
}

}  // namespace

std::string worst_float_text(const VitalSide& side) {
  return side.worst_um ? millimetre_digits(*side.worst_um) + " mm" : std::string();
}

VitalValues vital_values(const Record& record, std::string digest) {
  return {record.vehicle.key, one_line(record.job.number), side_of(record, Side::lower), side_of(record, Side::upper),
          std::move(digest)};
}

std::string seal_code(const VitalValues& values, const SecretKey& key) {
  const std::string text = text_of(values);
  const std::string signature = key.sign(std::string(domain).append(text));
  return std::string(prefix).append(base45(bytes_in(key.public_key()) + bytes_in(signature) + text));
}

Result<SealCode> read_seal_code(std::string_view payload) {
  if (payload.substr(0, prefix.size()) != prefix) {
    return refuse("not_seal_code", "code",
                  SHIMWRIGHT_TEXT("record", "This is no code of a sealed record of this program."));
  }
  const auto bytes = from_base45(payload.substr(prefix.size()));
  const bool long_enough = bytes && bytes->size() > key_size + signature_size;
  const std::string text = long_enough ? bytes->substr(key_size + signature_size) : std::string();
  const std::vector<std::string> lines = lines_of(text);
  constexpr std::size_t line_count = 5;
  if (!long_enough || lines.size() != line_count) {
    return refuse("changed", "code", SHIMWRIGHT_TEXT("record", "This code is not as it was printed: it was changed."));
  }
  const std::string key = hexadecimal(unsigned_bytes(*bytes), key_size);
  const std::string signature = hexadecimal(unsigned_bytes(*bytes) + key_size, signature_size);
  if (!signature_holds(key, std::string(domain).append(text), signature)) {
    return refuse("changed", "code", SHIMWRIGHT_TEXT("record", "This code is not as it was printed: it was changed."));
  }
  return SealCode{{lines[0], lines[1], side_in(lines[2]), side_in(lines[3]), lines[4]}, key};
}

}  // namespace shimwright::record
