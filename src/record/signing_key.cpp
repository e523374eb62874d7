#include "shimwright/record/signing_key.h"

#include <algorithm>
#include <utility>

#include "sodium_bytes.h"

namespace shimwright::record {

namespace {

constexpr std::size_t seed_size = crypto_sign_SEEDBYTES;
constexpr std::string_view pem_head = "-----BEGIN PUBLIC KEY-----\n";
constexpr std::string_view pem_foot = "\n-----END PUBLIC KEY-----\n";
/// What RFC 8410 puts before the 32 bytes of an Ed25519 key.
constexpr std::array<unsigned char, 12> pem_prefix = {0x30, 0x2a, 0x30, 0x05, 0x06, 0x03,
                                                      0x2b, 0x65, 0x70, 0x03, 0x21, 0x00};

/// Bytes that are wiped when they go.
template <std::size_t size>
struct Wiped {
  std::array<unsigned char, size> bytes{};
  Wiped() = default;
  Wiped(const Wiped&) = delete;
  Wiped& operator=(const Wiped&) = delete;
  ~Wiped() { sodium_memzero(bytes.data(), size); }
};
using KeyUnderPin = Wiped<crypto_secretbox_KEYBYTES>;
using Salt = std::array<unsigned char, crypto_pwhash_SALTBYTES>;
using Nonce = std::array<unsigned char, crypto_secretbox_NONCEBYTES>;
using SealedSeed = std::array<unsigned char, seed_size + crypto_secretbox_MACBYTES>;

Result<void> derive(KeyUnderPin& key, const Pin& pin, const Salt& salt, const PinCost& cost) {
  const std::string_view text = pin.text();
  if (crypto_pwhash(key.bytes.data(), key.bytes.size(), text.data(), text.size(), salt.data(), cost.passes,
                    static_cast<std::size_t>(cost.memory_bytes), crypto_pwhash_ALG_ARGON2ID13) != 0) {
    return refuse("no_memory", "pin",
                  SHIMWRIGHT_TEXT("record", "There is too little memory to look at the PIN: close other programs."));
  }
  return {};
}

tl::unexpected<Error> damaged() {
  return refuse("key_damaged", "pin",
                SHIMWRIGHT_TEXT("record", "The key of this person is damaged: check the store, or make a new key."));
}

}  // namespace

Pin Pin::taken_from(std::string& typed) {
  Pin pin;
  pin.text_ = typed;
  sodium_memzero(typed.data(), typed.size());
  typed.clear();
  return pin;
}

// A short text that is moved may stay where it was: copied, then wiped.
// NOLINTNEXTLINE(performance-move-constructor-init)
Pin::Pin(Pin&& other) noexcept : text_(other.text_) {
  sodium_memzero(other.text_.data(), other.text_.size());
  other.text_.clear();
}

Pin::~Pin() {
  sodium_memzero(text_.data(), text_.size());
}

Result<void> check_pin(const Pin& pin) {
  constexpr std::size_t least = 4;
  constexpr std::size_t most = 12;
  const std::string_view text = pin.text();
  if (text.size() < least || text.size() > most || text.find_first_not_of("0123456789") != std::string_view::npos) {
    return refuse("bad_pin", "pin", SHIMWRIGHT_TEXT("record", "A PIN has 4 to 12 digits and nothing else."));
  }
  return {};
}

SecretKey::~SecretKey() {
  if (bytes_) {
    sodium_memzero(bytes_->data(), bytes_->size());
  }
}

std::string SecretKey::public_key() const {
  return hexadecimal(bytes_->data() + seed_size, crypto_sign_PUBLICKEYBYTES);
}

std::string SecretKey::sign(std::string_view bytes) const {
  std::array<unsigned char, crypto_sign_BYTES> signature{};
  crypto_sign_detached(signature.data(), nullptr, unsigned_bytes(bytes), bytes.size(), bytes_->data());
  return hexadecimal(signature.data(), signature.size());
}

SecretKey new_key(const Chance& chance) {
  Wiped<seed_size> seed;
  chance(seed.bytes);
  auto bytes = std::make_unique<SecretKey::Bytes>();
  std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> public_key{};
  crypto_sign_seed_keypair(public_key.data(), bytes->data(), seed.bytes.data());
  return SecretKey(std::move(bytes));
}

Result<SealedKey> sealed_with(const SecretKey& key, const Pin& pin, const PinCost& cost, const Chance& chance) {
  if (auto good = check_pin(pin); !good) {
    return tl::make_unexpected(good.error());
  }
  Salt salt{};
  chance(salt);
  Nonce nonce{};
  chance(nonce);
  KeyUnderPin under;
  if (auto derived = derive(under, pin, salt, cost); !derived) {
    return tl::make_unexpected(derived.error());
  }
  SealedSeed box{};
  crypto_secretbox_easy(box.data(), key.bytes_->data(), seed_size, nonce.data(), under.bytes.data());
  return SealedKey{key.public_key(), hexadecimal(salt.data(), salt.size()), hexadecimal(nonce.data(), nonce.size()),
                   hexadecimal(box.data(), box.size()), cost};
}

Result<SecretKey> open_key(const SealedKey& key, const Pin& pin) {
  Salt salt{};
  Nonce nonce{};
  SealedSeed box{};
  if (!from_hexadecimal(key.salt, salt) || !from_hexadecimal(key.nonce, nonce) || !from_hexadecimal(key.box, box)) {
    return damaged();
  }
  KeyUnderPin under;
  if (auto derived = derive(under, pin, salt, key.cost); !derived) {
    return tl::make_unexpected(derived.error());
  }
  Wiped<seed_size> seed;
  if (crypto_secretbox_open_easy(seed.bytes.data(), box.data(), box.size(), nonce.data(), under.bytes.data()) != 0) {
    return refuse("wrong_pin", "pin", SHIMWRIGHT_TEXT("record", "This is not the PIN of this person: type it again."));
  }
  auto opened = new_key([&seed](std::span<std::uint8_t> bytes) {
    for (std::size_t at = 0; at < bytes.size(); ++at) {
      bytes[at] = seed.bytes.at(at);
    }
  });
  if (opened.public_key() != key.public_key) {
    return damaged();
  }
  return opened;
}

bool signature_holds(std::string_view public_key, std::string_view bytes, std::string_view signature) {
  std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> key{};
  std::array<unsigned char, crypto_sign_BYTES> given{};
  return from_hexadecimal(public_key, key) && from_hexadecimal(signature, given) &&
         crypto_sign_verify_detached(given.data(), unsigned_bytes(bytes), bytes.size(), key.data()) == 0;
}

std::string pem_of(std::string_view public_key) {
  std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> key{};
  if (!from_hexadecimal(public_key, key)) {
    return {};
  }
  std::array<unsigned char, pem_prefix.size() + crypto_sign_PUBLICKEYBYTES> whole{};
  std::copy(key.begin(), key.end(), std::copy(pem_prefix.begin(), pem_prefix.end(), whole.begin()));
  std::string base64(sodium_base64_encoded_len(whole.size(), sodium_base64_VARIANT_ORIGINAL), '\0');
  sodium_bin2base64(base64.data(), base64.size(), whole.data(), whole.size(), sodium_base64_VARIANT_ORIGINAL);
  base64.pop_back();
  return std::string(pem_head).append(base64).append(pem_foot);
}

std::string public_key_in(std::string_view pem) {
  const auto begin = pem.find(pem_head);
  const auto end = pem.find("-----END");
  if (begin == std::string_view::npos || end == std::string_view::npos || end < begin + pem_head.size()) {
    return {};
  }
  const std::string_view base64 = pem.substr(begin + pem_head.size(), end - begin - pem_head.size());
  std::array<unsigned char, pem_prefix.size() + crypto_sign_PUBLICKEYBYTES> whole{};
  std::size_t count = 0;
  if (sodium_base642bin(whole.data(), whole.size(), base64.data(), base64.size(), "\r\n ", &count, nullptr,
                        sodium_base64_VARIANT_ORIGINAL) != 0 ||
      count != whole.size() || !std::equal(pem_prefix.begin(), pem_prefix.end(), whole.begin())) {
    return {};
  }
  return hexadecimal(whole.data() + pem_prefix.size(), crypto_sign_PUBLICKEYBYTES);
}

}  // namespace shimwright::record
