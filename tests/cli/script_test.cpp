#include "script.h"

#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

const std::string good = R"({"format":"shimwright.script","version":1,"min_reader":1,"title":"t","workshop":"w",
  "address":"a","sheet":"dry-pack-renewal","spec":"D7-2","people":[{"initials":"MK","name":"Mara Kestrel"}],
  "instruments":[{"name":"dial 2","kind":"dial_gauge","resolution":"0,01","permissible_error":"0.01","turn":"1.00"}],
  "trays":[{"name":"large D7","shims":[{"id":"1.65","thickness":"1,652","u_um":2,"count":1}]}],
  "commands":[{"command":"note","by":"MK","text":"hello"}]})";

std::string code_without(const std::string& part, const std::string& instead) {
  std::string text = good;
  text.replace(text.find(part), part.size(), instead);
  const auto script = cli::read_script(text);
  return script ? "taken" : script.error().code;
}

std::string place_without(const std::string& part, const std::string& instead) {
  std::string text = good;
  const auto at = text.find(part);
  REQUIRE(at != std::string::npos);
  text.replace(at, part.size(), instead);
  const auto script = cli::read_script(text);
  return script ? "taken" : script.error().place;
}

}  // namespace

TEST_CASE("a script is read whole") {
  const auto script = cli::read_script(good);
  REQUIRE(script);
  CHECK(script->people.front().name == "Mara Kestrel");
  CHECK(script->instruments.front().resolution == 10);
  CHECK(script->instruments.front().turn == quantity::micrometres(1000));
  CHECK(script->trays.front().shims.front().thickness == quantity::micrometres(1652));
  CHECK(script->trays.front().shims.front().u_mm == Approx(0.002));
  CHECK(script->commands.size() == 1);
}

TEST_CASE("a fault in a script is named by its place") {
  CHECK(place_without("shimwright.script", "another") == "/format");
  CHECK(place_without(R"("min_reader":1)", R"("min_reader":2)") == "/min_reader");
  CHECK(place_without(R"("initials":"MK")", R"("initials":3)") == "/people/0/initials");
  CHECK(place_without("0,01", "0,0001") == "/instruments/0/resolution");
  CHECK(place_without("dial_gauge", "hammer") == "/instruments/0/kind");
  CHECK(place_without(R"("u_um":2)", R"("u_um":0)") == "/trays/0/shims/0/u_um");
  std::string shims;
  for (int each = 0; each < 201; ++each) {
    const std::string size = "1." + std::to_string(100 + each);
    shims += (each == 0 ? "" : ",") + (R"({"id":")" + size + R"(","thickness":")" + size + R"(","u_um":2})");
  }
  CHECK(place_without(R"({"id":"1.65","thickness":"1,652","u_um":2,"count":1})", shims) == "/trays/0/shims");
  CHECK(place_without(R"({"id":"1.65","thickness":"1,652","u_um":2,"count":1})", "") == "/trays/0/shims");
  CHECK(place_without("hello", "he\\u0000llo") == "/commands/0/text");
  CHECK(code_without(R"({"id":"1.65","thickness":"1,652","u_um":2,"count":1})", "") == "nothing_there");
  CHECK(code_without("hello", "he\\u0000llo") == "bad_text");
  CHECK(place_without(R"("by":"MK")", R"("by":"RT")") == "/commands/0/by");
  CHECK(place_without(R"({"command":"note","by":"MK","text":"hello"})",
                      R"({"command":"peak","by":"MK","step":"s","text":"1","instrument":"wrench"})") == "/commands/0");
  CHECK(place_without(R"({"command":"note","by":"MK","text":"hello"})",
                      R"({"command":"hand_over","by":"MK","to":"RT"})") == "/commands/0/to");
}
