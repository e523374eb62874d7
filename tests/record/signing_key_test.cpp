#include "shimwright/record/signing_key.h"

#include <set>

#include <catch2/catch.hpp>

#include "seal_bench.h"

using namespace shimwright;
using namespace shimwright::record;
using namespace shimwright::record_test;

TEST_CASE("a key signs only under its PIN") {
  const SecretKey key = new_key(counted_chance());
  auto sealed = sealed_with(key, pin("4711"), cheap, counted_chance());
  REQUIRE(sealed);
  const auto opened = open_key(*sealed, pin("4711"));
  REQUIRE(opened);
  CHECK(opened->public_key() == key.public_key());
  CHECK(opened->sign("what is there") == key.sign("what is there"));
  const auto wrong = open_key(*sealed, pin("4712"));
  REQUIRE_FALSE(wrong);
  CHECK(wrong.error().code == "wrong_pin");
  CHECK(wrong.error().in_english().find("4712") == std::string::npos);
}

TEST_CASE("the real cost works once as shipped") {
  CHECK(PinCost{}.memory_bytes == 268435456);
  CHECK(PinCost{}.passes == 3);
  const SecretKey key = new_key(counted_chance());
  const auto sealed = sealed_with(key, pin("123456"), PinCost{}, counted_chance());
  REQUIRE(sealed);
  CHECK(open_key(*sealed, pin("123456")));
}

TEST_CASE("a cost the machine cannot pay is refused and not a crash") {
  const auto refused = sealed_with(new_key(counted_chance()), pin("4711"), PinCost{0, 1}, counted_chance());
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == "no_memory");
}

TEST_CASE("a PIN has four to twelve digits") {
  for (const char* good : {"0000", "4711", "123456789012"}) {
    CHECK(check_pin(pin(good)));
  }
  for (const char* bad : {"", "471", "1234567890123", "47a1", " 4711", "４７１１"}) {
    const auto refused = check_pin(pin(bad));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "bad_pin");
  }
}

TEST_CASE("the same PIN twice leaves nothing alike") {
  const SecretKey key = new_key(counted_chance());
  const Chance chance = counted_chance();
  const auto one = sealed_with(key, pin("4711"), cheap, chance);
  const auto two = sealed_with(key, pin("4711"), cheap, chance);
  REQUIRE(one);
  REQUIRE(two);
  CHECK(one->public_key == two->public_key);
  CHECK(one->salt != two->salt);
  CHECK(one->box != two->box);
}

TEST_CASE("a sealed key holds neither seed nor PIN, and any change of it is found") {
  const SecretKey key = new_key(counted_chance());
  const auto sealed = sealed_with(key, pin("4711"), cheap, counted_chance());
  REQUIRE(sealed);
  CHECK(sealed->box.find("000102030405060708090a0b0c0d0e0f") == std::string::npos);  // the seed of counted chance
  for (std::string SealedKey::*member :
       {&SealedKey::public_key, &SealedKey::salt, &SealedKey::nonce, &SealedKey::box}) {
    for (std::size_t at = 0; at < ((*sealed).*member).size(); ++at) {
      SealedKey changed = *sealed;
      char& digit = (changed.*member)[at];
      digit = digit == '0' ? '1' : '0';
      CHECK_FALSE(open_key(changed, pin("4711")));
    }
    SealedKey changed = *sealed;
    (changed.*member).pop_back();
    const auto refused = open_key(changed, pin("4711"));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "key_damaged");
  }
}

TEST_CASE("a typed PIN does not stay where it was typed") {
  std::string typed = "4711";
  const char* bytes = typed.data();
  Pin taken = Pin::taken_from(typed);
  CHECK(typed.empty());
  CHECK(std::string(bytes, 4) == std::string(4, '\0'));
  const Pin moved = std::move(taken);
  CHECK(moved.text() == "4711");
}

TEST_CASE("a signature is of one key over one text") {
  const SecretKey key = new_key(counted_chance());
  const std::string signature = key.sign("text");
  CHECK(signature_holds(key.public_key(), "text", signature));
  CHECK_FALSE(signature_holds(key.public_key(), "texT", signature));
  CHECK_FALSE(signature_holds(std::string(64, '1'), "text", signature));
  CHECK_FALSE(signature_holds("", "text", signature));
  CHECK_FALSE(signature_holds(key.public_key(), "text", ""));
  for (std::size_t at = 0; at < signature.size(); ++at) {
    std::string changed = signature;
    changed[at] = changed[at] == '0' ? '1' : '0';
    CHECK_FALSE(signature_holds(key.public_key(), "text", changed));
  }
}

TEST_CASE("RFC 8032, test 2: the key and the signature are those of the standard") {
  const auto seed = [](std::span<std::uint8_t> bytes) {
    const std::string hex = "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb";
    for (std::size_t at = 0; at < bytes.size(); ++at) {
      bytes[at] = static_cast<std::uint8_t>(std::stoi(hex.substr(2 * at, 2), nullptr, 16));
    }
  };
  const SecretKey key = new_key(seed);
  CHECK(key.public_key() == "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c");
  CHECK(key.sign("r") ==
        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302a"
        "eeb0"
        "0d291612bb0c00");
}

TEST_CASE("a public key goes out as PEM and comes back") {
  const std::string key = new_key(counted_chance()).public_key();
  const std::string pem = pem_of(key);
  CHECK(public_key_in(pem) == key);
  CHECK(pem_of("no key").empty());
  for (const std::string& other : {std::string(), std::string("-----END"), pem.substr(0, 40), pem.substr(30),
                                   std::string("-----BEGIN PUBLIC KEY-----\nAAAA\n-----END PUBLIC KEY-----\n")}) {
    CHECK(public_key_in(other).empty());
  }
}
