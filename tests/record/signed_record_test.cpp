#include "shimwright/record/signed_record.h"

#include <random>

#include <catch2/catch.hpp>

#include "sealed_sample.h"

using namespace shimwright;
using namespace shimwright::record;
using namespace shimwright::record_test;

namespace {

/// Nothing where the file is whole and signed by keys that are known.
std::string fault_of(const std::string& file) {
  const auto read = read_signed_record(file);
  if (!read) {
    return read.error().code;
  }
  const auto whole = check_signed_record(*read);
  return whole ? std::string() : whole.error().place;
}

}  // namespace

TEST_CASE("a signed record comes back whole from its file") {
  const SignedRecord sealed = sealed_sample();
  const auto whole = check_signed_record(sealed);
  INFO((whole ? std::string() : whole.error().place));
  REQUIRE(whole);
  const std::string file = signed_record_json(sealed);
  const auto read = read_signed_record(file);
  REQUIRE(read);
  CHECK(read->statement == sealed.statement);
  CHECK(read->entries == sealed.entries);
  CHECK(read->addenda == sealed.addenda);
  CHECK(read->record == sealed.record);
  CHECK(fault_of(file).empty());
}

TEST_CASE("each byte of a file counts: flipped in any of its bits, left out or doubled, it is found") {
  const std::string file = signed_record_json(sealed_sample());
  std::mt19937 seeded(20261127);
  const auto at_most = static_cast<unsigned>(file.size() - 1);
  std::size_t changes = 0;
  const auto try_at = [&](std::size_t at, unsigned bit) {
    std::string changed = file;
    changed[at] = static_cast<char>(static_cast<unsigned char>(changed[at]) ^ (1U << bit));
    CHECK_FALSE(fault_of(changed).empty());
    ++changes;
  };
  for (int draw = 0; draw < 1500; ++draw) {
    try_at(std::uniform_int_distribution<unsigned>(0, at_most)(seeded),
           std::uniform_int_distribution<unsigned>(0, 7)(seeded));
  }
  const std::size_t signatures = file.find("\"signatures\"");
  REQUIRE(signatures != std::string::npos);
  for (std::size_t at = signatures; at < signatures + 275; ++at) {
    try_at(at, 0);
  }
  for (std::size_t at = file.size() - 60; at < file.size(); ++at) {
    CHECK_FALSE(fault_of(std::string(file).erase(at, 1)).empty());
    CHECK_FALSE(fault_of(std::string(file).insert(at, 1, ' ')).empty());
  }
  CHECK(changes > 1700);
}

TEST_CASE("who changes a part and makes all that needs no key fit is found at that part") {
  const SignedRecord whole = sealed_sample();
  const auto place = [](const SignedRecord& changed) {
    const auto checked = check_signed_record(changed);
    return checked ? std::string() : checked.error().place;
  };
  SignedRecord changed = whole;
  changed.record.replace(changed.record.find("\"decimals\":2"), 12, "\"decimals\":3");
  CHECK(place(changed) == "record");
  changed.statement.record_sha256 = sha256_hex(changed.record);
  CHECK(place(changed) == "signature 1");

  changed = whole;
  changed.signatures[1] = changed.signatures[0];
  CHECK(place(changed) == "signature 2");
  changed.signatures.pop_back();
  CHECK(place(changed) == "statement");

  changed = whole;
  changed.entries[3].body += " ";
  CHECK(place(changed) == "entry 4");
  for (std::size_t at = 3; at < changed.entries.size(); ++at) {  // the chain made anew
    changed.entries[at].previous_hash = changed.entries[at - 1].hash;
    changed.entries[at].hash = entry_hash(changed.statement.job, changed.entries[at]);
  }
  CHECK(place(changed) == "entry " + std::to_string(whole.statement.entries));

  changed = whole;
  changed.addenda[0].statement.text = "0.2 l of oil topped up";
  CHECK(place(changed) == "addendum 1");
  changed.entries.back() = entry_of(changed.addenda[0].statement);
  CHECK(place(changed) == "addendum 1");

  changed = whole;
  changed.addenda.clear();
  CHECK(place(changed) == "entry " + std::to_string(whole.entries.size()));
  changed = whole;
  changed.entries.pop_back();
  CHECK(place(changed) == "entry " + std::to_string(whole.entries.size() - 1));
  changed = whole;
  changed.code = seal_code({}, technicians_key());
  CHECK(place(changed) == "code");
  changed = whole;
  changed.personal["another"] = {"text", "salt"};
  CHECK(place(changed) == "personal text");
}

TEST_CASE("an erased personal text leaves the seal whole, a changed one does not") {
  SignedRecord sealed = sealed_sample();
  REQUIRE_FALSE(sealed.personal.empty());
  sealed.personal.begin()->second.text += "!";
  CHECK_FALSE(check_signed_record(sealed));
  sealed.personal.clear();
  CHECK(check_signed_record(sealed));
}

TEST_CASE("a key is known until the day it is no longer valid") {
  const SignedRecord sealed = sealed_sample();
  const std::string technician = technicians_key().public_key();
  const std::string checker = checkers_key().public_key();
  CHECK(check_keys(sealed, {{technician, {}}, {checker, {}}}));
  CHECK(check_keys(sealed, {{technician, "2026-11-25"}, {checker, {}}}));
  for (const std::vector<KnownKey>& keys :
       {std::vector<KnownKey>{}, {{technician, {}}}, {{checker, {}}}, {{technician, "2026-11-24"}, {checker, {}}}}) {
    const auto known = check_keys(sealed, keys);
    REQUIRE_FALSE(known);
    CHECK(known.error().code == "unknown_key");
  }
}

TEST_CASE("a file that says the same in other bytes is told as changed") {
  const std::string whole = signed_record_json(sealed_sample());
  REQUIRE(read_signed_record(whole));
  for (const std::string& other : {whole.substr(0, whole.size() - 1), whole + " ", "{ " + whole.substr(1)}) {
    const auto read = read_signed_record(other);
    REQUIRE_FALSE(read);
    CHECK(read.error().code == "file_changed");
  }
}

TEST_CASE("what is no signed record is refused") {
  for (const char* bad : {"", "null", "[]", "{", "{\"format\":\"shimwright.record\"}"}) {
    const auto read = read_signed_record(bad);
    REQUIRE_FALSE(read);
    CHECK(read.error().code == "not_signed_record");
  }
  const auto newer = read_signed_record(R"({"format":"shimwright.signed-record","min_reader":2})");
  REQUIRE_FALSE(newer);
  CHECK(newer.error().code == "newer_format");
  CHECK_FALSE(check_signed_record(SignedRecord{}));
  for (const char* odd : {R"({"format":"shimwright.signed-record","entries":{"a":1},"signatures":7,"personal":[1]})",
                          R"({"format":"shimwright.signed-record","statement":[],"addenda":[1,null]})"}) {
    CHECK_FALSE(read_signed_record(odd));
  }
}

TEST_CASE("two signatures of one key or one person are no seal of two") {
  const auto signed_by_one = [](bool same_key, bool same_person) {
    SignedRecord sealed = sealed_sample();
    SealSigner& second = sealed.statement.signers.back();
    if (same_key) {
      second.public_key = sealed.statement.signers.front().public_key;
    }
    if (same_person) {
      second.person = sealed.statement.signers.front().person;
    }
    const std::string bytes = bytes_of(sealed.statement);
    sealed.signatures = {technicians_key().sign(bytes),
                         same_key ? technicians_key().sign(bytes) : checkers_key().sign(bytes)};
    return check_signed_record(sealed);
  };
  for (const auto& [key, person] : {std::pair(true, false), std::pair(false, true)}) {
    const auto whole = signed_by_one(key, person);
    REQUIRE_FALSE(whole);
    CHECK(whole.error().message.in_english().find("one person or one key") != std::string::npos);
  }
}
