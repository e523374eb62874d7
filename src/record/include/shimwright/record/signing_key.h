#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <memory>
#include <span>
#include <string>
#include <string_view>

#include "shimwright/quantity/error.h"

/// The key a person signs with. It is Ed25519 (RFC 8032); what opens it is a PIN.
namespace shimwright::record {

/// Fills the bytes with chance.
using Chance = std::function<void(std::span<std::uint8_t>)>;

/// A PIN as it was typed. Its bytes are wiped when it goes, and those of the text it was taken from at once.
class Pin {
 public:
  [[nodiscard]] static Pin taken_from(std::string& typed);
  ~Pin();
  Pin(Pin&& other) noexcept;
  Pin(const Pin&) = delete;
  Pin& operator=(const Pin&) = delete;
  Pin& operator=(Pin&&) = delete;

  [[nodiscard]] std::string_view text() const { return text_; }

 private:
  Pin() = default;
  std::string text_;
};

/// Whether it may be a PIN: 4 to 12 digits. Code: `bad_pin`.
[[nodiscard]] Result<void> check_pin(const Pin& pin);

/// What trying one PIN costs (Argon2id); kept beside each key, so that it can be raised later.
struct PinCost {
  std::uint64_t passes = 3;
  std::uint64_t memory_bytes = std::uint64_t{256} * 1024 * 1024;
  friend bool operator==(const PinCost&, const PinCost&) = default;
};

/// A key as it lies in the store. All but `cost` in hexadecimal; without the PIN nothing secret is in it.
struct SealedKey {
  std::string public_key;  ///< 32 bytes
  std::string salt;        ///< 16 bytes, of Argon2id
  std::string nonce;       ///< 24 bytes
  std::string box;         ///< the seed under XSalsa20-Poly1305
  PinCost cost;
  friend bool operator==(const SealedKey&, const SealedKey&) = default;
};

/// An open key. It lives as short as can be, and its bytes are wiped when it goes.
class SecretKey {
 public:
  ~SecretKey();
  SecretKey(SecretKey&&) noexcept = default;
  SecretKey& operator=(SecretKey&&) = delete;
  SecretKey(const SecretKey&) = delete;
  SecretKey& operator=(const SecretKey&) = delete;

  [[nodiscard]] std::string public_key() const;
  /// 64 bytes in hexadecimal, always the same for the same bytes.
  [[nodiscard]] std::string sign(std::string_view bytes) const;

 private:
  using Bytes = std::array<unsigned char, 64>;  ///< seed, then public key
  explicit SecretKey(std::unique_ptr<Bytes> bytes) : bytes_(std::move(bytes)) {}
  friend Result<SecretKey> open_key(const SealedKey& key, const Pin& pin);
  friend Result<SealedKey> sealed_with(const SecretKey& key, const Pin& pin, const PinCost& cost, const Chance& chance);
  friend SecretKey new_key(const Chance& chance);

  std::unique_ptr<Bytes> bytes_;
};

[[nodiscard]] SecretKey new_key(const Chance& chance);
/// Puts a key under a PIN, be it its first or another one. Codes: `bad_pin`, `no_memory`.
[[nodiscard]] Result<SealedKey> sealed_with(const SecretKey& key, const Pin& pin, const PinCost& cost,
                                            const Chance& chance);
/// Codes: `wrong_pin`, `key_damaged` (no key of ours is in it), `no_memory` (the cost asks for more than there is).
[[nodiscard]] Result<SecretKey> open_key(const SealedKey& key, const Pin& pin);

/// Whether the signature is of that key over these bytes; false too for what is no key or no signature.
[[nodiscard]] bool signature_holds(std::string_view public_key, std::string_view bytes, std::string_view signature);

/// The public key as other tools read it (RFC 8410).
[[nodiscard]] std::string pem_of(std::string_view public_key);
/// The way back; empty where the text is no such key.
[[nodiscard]] std::string public_key_in(std::string_view pem);

}  // namespace shimwright::record
