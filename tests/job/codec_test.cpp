#include "shimwright/job/codec.h"

#include <fstream>
#include <set>
#include <sstream>

#include <catch2/catch.hpp>

#include "random_entry.h"
#include "sample_entries.h"

namespace shimwright::job {

namespace {

std::string golden(const std::string& name) {
  std::ifstream file(std::string(SHIMWRIGHT_SOURCE_DIR "/tests/job/golden/") + name, std::ios::binary);
  REQUIRE(file);
  std::ostringstream content;
  content << file.rdbuf();
  return content.str();
}

void check_golden(const EntryBody& body, const std::string& file) {
  const EncodedBody encoded = encode(body);
  INFO(file);
  CHECK(encoded.bytes == golden(file));
  const auto read = decode(encoded.kind, encoded.kind_version, golden(file));
  REQUIRE(read);
  CHECK(*read == body);
}

}  // namespace

TEST_CASE("every kind reads back what it wrote") {
  for (std::size_t kind = 0; kind < std::variant_size_v<EntryBody>; ++kind) {
    CHECK(rc::check([kind] {
      const EntryBody body = *rc::gen::exec([kind] { return test::body_of(kind); });
      RC_ASSERT(body.index() == kind);
      const EncodedBody encoded = encode(body);
      RC_ASSERT(!encoded.bytes.empty());
      const auto read = decode(encoded.kind, encoded.kind_version, encoded.bytes);
      RC_ASSERT(read.has_value());
      RC_ASSERT(*read == body);
    }));
  }
}

TEST_CASE("what only version 2 can say is written as version 2, and each version says it itself") {
  const std::string old_bytes = golden("float_run.json");
  const std::string new_bytes = golden("float_run.version-2.json");
  CHECK(encode(*decode("float_run", 1, old_bytes)).kind_version == 1);
  CHECK(encode(*decode("float_run", 2, new_bytes)).kind_version == 2);
  CHECK(decode("float_run", 1, new_bytes).error().code == "bad_body");
  CHECK(decode("float_run", 2, old_bytes).error().code == "bad_body");
  CHECK(decode("float_run", 3, new_bytes).error().code == "unknown_kind");
  CHECK(decode("float_run", 0, old_bytes).error().code == "unknown_kind");
  CHECK(decode("noted", 2, golden("noted.json")).error().code == "unknown_kind");
}

TEST_CASE("an entry of before folds to a body without what was not kept then") {
  const auto run = decode("float_run", 1, golden("float_run.json"));
  REQUIRE(run);
  CHECK_FALSE(std::get<FloatRun>(*run).instrument->repeatability);
  CHECK_FALSE(std::get<FloatRun>(*run).instrument->calibrated_on);
}

TEST_CASE("the stored bytes of each kind never change") {
  std::set<std::string_view> kinds;
  for (const EntryBody& body : test::sample_bodies()) {
    kinds.insert(kind_of(body));
    check_golden(body, std::string(kind_of(body)) + ".json");
  }
  CHECK(kinds.size() == std::variant_size_v<EntryBody>);
  for (const EntryBody& body : test::bare_bodies()) {
    check_golden(body, std::string(kind_of(body)) + ".bare.json");
  }
  for (const EntryBody& body : test::second_bodies()) {
    check_golden(body, std::string(kind_of(body)) + ".version-2.json");
    CHECK(encode(body).kind_version == 2);
  }
}

TEST_CASE("an uncertainty is kept to the nanometre") {
  const EncodedBody encoded = encode(
      ShimChosen{{"s", 1}, Side::upper, "2.00", quantity::Length(2000), 0.0012345678, ChosenBy::person, {}, "", {}});
  CHECK(encoded.bytes.find(R"("u_nm":1235)") != std::string::npos);
  const auto read = decode("shim_chosen", 1, encoded.bytes);
  REQUIRE(read);
  CHECK(std::get<ShimChosen>(*read).u_mm == 0.001235);
}

TEST_CASE("what has no value is left out, and an empty text is not nothing") {
  const std::string bytes = encode(Noted{{}, ""}).bytes;
  CHECK(bytes == R"({"text":""})");
  const auto read = decode("noted", 1, R"({"step":"","text":""})");
  REQUIRE(read);
  CHECK(std::get<Noted>(*read).step == std::optional<std::string>(""));
}

TEST_CASE("a text that is not UTF-8 gives no bytes") {
  CHECK(encode(Noted{{}, "\xff"}).bytes.empty());
}

TEST_CASE("a kind or version of a newer program is named as that") {
  for (const auto& [kind, version] : {std::pair{"noted", 2}, {"noted", 0}, {"sung", 1}, {"", 1}}) {
    const auto read = decode(kind, version, R"({"text":"a"})");
    REQUIRE_FALSE(read);
    CHECK(read.error().code == "unknown_kind");
    CHECK(read.error().in_english().find("newer program") != std::string::npos);
  }
}

TEST_CASE("bytes that are no JSON are refused") {
  for (const char* bytes : {"", "{", "noted", R"({"text":"a"} {})"}) {
    const auto read = decode("noted", 1, bytes);
    REQUIRE_FALSE(read);
    CHECK(read.error().code == "bad_body");
    CHECK(read.error().place.empty());
  }
}

}  // namespace shimwright::job
