#include "codec_reader.h"

#include <catch2/catch.hpp>

#include "shimwright/job/codec.h"

namespace shimwright::job {

namespace {

struct Wrong {
  const char* kind;
  const char* bytes;
  const char* place;
};

const Wrong wrong_bodies[] = {
    {"noted", R"([])", ""},
    {"noted", R"("a")", ""},
    {"noted", R"({})", "/text"},
    {"noted", R"({"text":null})", "/text"},
    {"noted", R"({"text":1})", "/text"},
    {"noted", R"({"step":null,"text":""})", "/step"},
    {"noted", R"({"text":"","text":""})", "/text"},
    {"noted", R"({"text":"","mood":"good"})", "/mood"},
    {"done", R"({"step":"a"})", "/assembly"},
    {"done", R"({"assembly":1.0,"step":"a"})", "/assembly"},
    {"done", R"({"assembly":1e0,"step":"a"})", "/assembly"},
    {"done", R"({"assembly":"1","step":"a"})", "/assembly"},
    {"done", R"({"assembly":3000000000,"step":"a"})", "/assembly"},
    {"withdrawn", R"({"entry":9007199254740992,"reason":""})", "/entry"},
    {"withdrawn", R"({"entry":99999999999999999999,"reason":""})", "/entry"},
    {"checked", R"({"assembly":1,"finding":"","in_order":1,"step":"a"})", "/in_order"},
    {"shim_tried", R"({"assembly":1,"fit":"firm","shim":"a","side":"lower","step":"a"})", "/fit"},
    {"shim_tried", R"({"assembly":1,"fit":"snug","shim":"a","side":"left","step":"a"})", "/side"},
    {"taken_up", R"({"unproven":"a"})", "/unproven"},
    {"taken_up", R"({"unproven":["a",2]})", "/unproven/1"},
    {"assembly_begun", R"({"assembly":2,"reason":"","sides":["upper","both"]})", "/sides/1"},
    {"parts_fitted", R"({"assembly":1,"parts":[{"batch":"","number":"","part":"a","quantity":1,"x":1}],"step":"a"})",
     "/parts/0/x"},
    {"written", R"({"assembly":1,"questions":[{"code":"a","message":{"text":""}}],"step":"a","text":""})",
     "/questions/0/message/arguments"},
};

}  // namespace

TEST_CASE("a stored body of another shape is refused at its place") {
  for (const Wrong& wrong : wrong_bodies) {
    INFO(wrong.bytes);
    const auto read = decode(wrong.kind, 1, wrong.bytes);
    REQUIRE_FALSE(read);
    CHECK(read.error().code == "bad_body");
    CHECK(read.error().place == wrong.place);
    CHECK(read.error().message.text.find("check the store") != std::string::npos);
  }
}

TEST_CASE("a body that was filled before holds only what was read") {
  Noted noted{"step", "text"};
  const auto value = json::parse(R"({"text":"new"})");
  REQUIRE(value);
  CHECK_FALSE(FieldReader::read(*value, "", noted));
  CHECK(noted == Noted{{}, "new"});
}

}  // namespace shimwright::job
