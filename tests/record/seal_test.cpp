#include "shimwright/record/seal.h"

#include <catch2/catch.hpp>

#include "sealed_sample.h"

using namespace shimwright;
using namespace shimwright::record;
using namespace shimwright::record_test;

TEST_CASE("a statement comes back from its bytes, and any changed byte is another statement or none") {
  const SignedRecord sealed = sealed_sample();
  const std::string bytes = bytes_of(sealed.statement);
  REQUIRE(read_seal_statement(bytes));
  CHECK(*read_seal_statement(bytes) == sealed.statement);
  for (std::size_t at = 0; at < bytes.size(); ++at) {
    std::string changed = bytes;
    changed[at] = static_cast<char>(changed[at] ^ 1);
    const auto read = read_seal_statement(changed);
    CHECK((!read || digest_of(*read) != digest_of(sealed.statement)));
  }
  for (const char* bad : {"", "{}", "[]", "null", "{\"format\":\"shimwright.seal\"}"}) {
    const auto read = read_seal_statement(bad);
    REQUIRE_FALSE(read);
    CHECK(read.error().code == "bad_statement");
    CHECK_FALSE(read_addendum_statement(bad));
  }
  const AddendumStatement& addendum = sealed.addenda.front().statement;
  REQUIRE(read_addendum_statement(bytes_of(addendum)));
  CHECK(*read_addendum_statement(bytes_of(addendum)) == addendum);
  CHECK_FALSE(read_addendum_statement(bytes));
}

TEST_CASE("the entry of a seal follows from what was signed") {
  const SignedRecord sealed = sealed_sample();
  const StoredEntry entry = entry_of(sealed.statement);
  CHECK(entry.kind == "sealed");
  CHECK(entry.seq == sealed.statement.entries + 1);
  CHECK(entry.previous_hash == sealed.statement.last_hash);
  CHECK(entry.person == sealed.statement.signers.front().person);
  const StoredEntry added = entry_of(sealed.addenda.front().statement);
  CHECK(added.kind == "addendum_added");
  CHECK(added.previous_hash == entry.hash);
}
