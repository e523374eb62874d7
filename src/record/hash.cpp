#include "shimwright/record/hash.h"

#include <array>
#include <optional>
#include <type_traits>
#include <utility>
#include <variant>

#include <sodium.h>

#include "shimwright/job/codec.h"

namespace shimwright::record {

namespace {

using Digest = std::array<unsigned char, crypto_hash_sha256_BYTES>;

std::string in_hexadecimal(const Digest& digest) {
  constexpr std::string_view digits = "0123456789abcdef";
  std::string text;
  text.reserve(digest.size() * 2);
  for (const unsigned char byte : digest) {
    text += digits[byte >> 4U];
    text += digits[byte & 0x0FU];
  }
  return text;
}

void append(crypto_hash_sha256_state& state, std::string_view bytes) {
  // The library takes unsigned bytes; text is the same bytes.
  crypto_hash_sha256_update(&state, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
}

/// A length before each part keeps `ab` + `c` apart from `a` + `bc`.
class PartHasher {
 public:
  explicit PartHasher(std::string_view domain) {
    crypto_hash_sha256_init(&state_);
    part(domain);
  }

  void part(std::string_view bytes) {
    std::array<char, 8> length{};
    auto rest = static_cast<std::uint64_t>(bytes.size());
    for (auto place = length.rbegin(); place != length.rend(); ++place) {
      *place = static_cast<char>(rest & 0xFFU);
      rest >>= 8U;
    }
    append(state_, std::string_view(length.data(), length.size()));
    append(state_, bytes);
  }

  void number(std::int64_t value) { part(std::to_string(value)); }

  [[nodiscard]] std::string finish() {
    Digest digest{};
    crypto_hash_sha256_final(&state_, digest.data());
    return in_hexadecimal(digest);
  }

 private:
  crypto_hash_sha256_state state_{};
};

void blank(std::optional<job::PrivateReference>& reference) {
  if (reference) {
    *reference = job::PrivateReference{};
  }
}

void blank(std::optional<job::InstrumentUsed>& instrument) {
  if (instrument) {
    instrument->id.clear();
  }
}

void blank(job::Reading& reading) {
  blank(reading.instrument);
}

std::string name_in(const std::map<std::string, std::string>& names, const std::string& person) {
  const auto found = names.find(person);
  return found == names.end() ? std::string() : found->second;
}

/// Takes out of a body what another replay would have drawn anew.
class Blanking {
 public:
  explicit Blanking(const std::map<std::string, std::string>& names) : names_(&names) {}

  void operator()(job::Opened& body) const {
    blank(body.plate);
    blank(body.customer_reference);
    blank(body.complaint);
  }
  void operator()(job::Read& body) const {
    for (job::Reading& reading : body.readings) {
      blank(reading);
    }
  }
  void operator()(job::PeakRead& body) const { blank(body.reading); }
  void operator()(job::DepthsRead& body) const { blank(body.instrument); }
  void operator()(job::FloatRun& body) const { blank(body.instrument); }
  void operator()(job::TeachInTried& body) const {
    for (job::AttemptValue& value : body.values) {
      if (value.after) {
        blank(*value.after);
      }
    }
  }
  void operator()(job::HandedOver& body) const { body.to = name_in(*names_, body.to); }
  void operator()(job::Sealed& body) const {
    body.digest.clear();
    for (std::string& signer : body.signers) {
      signer = name_in(*names_, signer);
    }
  }
  template <class Body>
  void operator()(Body& /*body*/) const {}

 private:
  const std::map<std::string, std::string>* names_;
};

std::string place_of(std::int64_t seq) {
  return "entry " + std::to_string(seq);
}

Result<void> check_link(std::string_view job, const StoredEntry& entry, std::int64_t expected_seq,
                        const std::string& previous_hash) {
  if (entry.seq != expected_seq) {
    return refuse("chain_gap", place_of(expected_seq),
                  SHIMWRIGHT_TEXT("record", "Entry {0} is missing; entry {1} stands in its place."),
                  {std::to_string(expected_seq), std::to_string(entry.seq)});
  }
  if (entry.previous_hash != previous_hash) {
    return refuse("chain_broken", place_of(entry.seq),
                  SHIMWRIGHT_TEXT("record",
                                  "This entry does not follow the one before it; one of the two was "
                                  "changed after it was written."));
  }
  if (entry.hash != entry_hash(job, entry)) {
    return refuse("entry_changed", place_of(entry.seq),
                  SHIMWRIGHT_TEXT("record", "This entry was changed after it was written."));
  }
  return {};
}

}  // namespace

std::string sha256_hex(std::string_view bytes) {
  crypto_hash_sha256_state state{};
  crypto_hash_sha256_init(&state);
  append(state, bytes);
  Digest digest{};
  crypto_hash_sha256_final(&state, digest.data());
  return in_hexadecimal(digest);
}

std::string private_digest(std::string_view salt, std::string_view text) {
  return sha256_hex(std::string(salt).append(text));
}

std::string entry_hash(std::string_view job, const StoredEntry& entry) {
  PartHasher hasher("shimwright.entry.1");
  hasher.part(job);
  hasher.number(entry.seq);
  hasher.part(entry.previous_hash);
  hasher.number(entry.moment.at_ms);
  hasher.number(entry.moment.offset_min);
  hasher.number(entry.moment.clock_went_back ? 1 : 0);
  hasher.part(entry.person);
  hasher.part(entry.kind);
  hasher.number(entry.kind_version);
  hasher.part(entry.body);
  return hasher.finish();
}

StoredEntry chained(std::string_view job, const job::Entry& entry, std::string previous_hash) {
  job::EncodedBody encoded = job::encode(entry.body);
  StoredEntry stored;
  stored.seq = entry.seq;
  stored.moment = entry.moment;
  stored.person = entry.person;
  stored.kind = std::move(encoded.kind);
  stored.kind_version = encoded.kind_version;
  stored.body = std::move(encoded.bytes);
  stored.previous_hash = std::move(previous_hash);
  stored.hash = entry_hash(job, stored);
  return stored;
}

Result<job::Entry> decoded(const StoredEntry& stored) {
  auto body = job::decode(stored.kind, stored.kind_version, stored.body);
  if (!body) {
    return tl::make_unexpected(std::move(body.error()));
  }
  return job::Entry{stored.seq, stored.moment, stored.person, std::move(*body)};
}

Result<void> check_chain(std::string_view job, const std::vector<StoredEntry>& entries) {
  std::string previous_hash;
  std::int64_t expected_seq = 1;
  for (const StoredEntry& entry : entries) {
    if (auto checked = check_link(job, entry, expected_seq, previous_hash); !checked) {
      return checked;
    }
    previous_hash = entry.hash;
    ++expected_seq;
  }
  return {};
}

std::string fold_hash(const std::vector<job::Entry>& entries, const std::map<std::string, std::string>& person_names) {
  PartHasher hasher("shimwright.fold.1");
  for (const job::Entry& entry : entries) {
    job::EntryBody body = entry.body;
    std::visit(Blanking(person_names), body);
    const job::EncodedBody encoded = job::encode(body);
    hasher.number(entry.seq);
    hasher.part(name_in(person_names, entry.person));
    hasher.part(encoded.kind);
    hasher.number(encoded.kind_version);
    hasher.part(encoded.bytes);
  }
  return hasher.finish();
}

}  // namespace shimwright::record
