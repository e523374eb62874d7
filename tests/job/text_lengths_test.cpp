#include "shimwright/job/text_lengths.h"

#include <catch2/catch.hpp>

namespace shimwright::job::test {

namespace {

/// So many characters, each of more than one byte.
std::string characters(std::size_t count) {
  std::string text;
  for (std::size_t done = 0; done < count; ++done) {
    text += "ä";
  }
  return text;
}

PrivateText personal(const std::string& text) {
  return {"", "", text, ""};
}

OpenJob opening(const std::string& line, const std::string& text) {
  OpenJob open;
  open.plate = personal(line);
  open.complaint = personal(text);
  return open;
}

/// Every command that carries what somebody types, with a line of this length and a text of that.
std::vector<Command> commands(std::size_t line_length, std::size_t text_length) {
  const std::string line = characters(line_length);
  const std::string text = characters(text_length);
  OpenJob numbered;
  numbered.number = line;
  OpenJob referred;
  referred.customer_reference = personal(line);
  OpenJob reasoned;
  reasoned.chassis_reason = text;
  return {opening(line, ""),
          opening("", text),
          numbered,
          referred,
          reasoned,
          CheckStep{"s", false, text},
          ChooseAnswer{"s", line},
          EnterReadings{"s", {{"c", line, ""}}},
          EnterPeak{"s", {"c", line, ""}},
          FitParts{"s", {PartFitted{"p", line, 1, ""}}},
          FitParts{"s", {PartFitted{"p", "", 1, line}}},
          AddPhoto{"s", "", "", 0, line},
          WriteText{"s", text},
          TryShim{"s", line, Fit::tight},
          EnterDepths{"s", {"1", line}, "", "", ""},
          EnterDepths{"s", {}, line, "", ""},
          EnterDepths{"s", {}, "", line, ""},
          EnterFloatRun{"s", 1, line, "", "", ""},
          EnterFloatRun{"s", 1, "", line, "", ""},
          EnterFloatRun{"s", 1, "", "", line, ""},
          Confirm{"s", "dry", text},
          ChooseShim{"s", line, ""},
          ChooseShim{"s", "", text},
          TryTeachIn{"s", false, {{"c", line, ""}}, "", ""},
          TryTeachIn{"s", false, {}, line, ""},
          TryTeachIn{"s", false, {}, "", text},
          Deviate{"s", text},
          SayNotRequired{"s", text},
          Withdraw{1, text},
          Note{std::nullopt, text},
          Park{line, ""},
          HandOver{"", text},
          BeginAssembly{{}, text},
          AddAddendum{text, ""},
          AddAddendum{"", text}};
}

}  // namespace

TEST_CASE("texts of the longest kind are kept, counted in characters and not in bytes") {
  for (const Command& command : commands(longest_line, longest_text)) {
    INFO("command " << command.index());
    CHECK(check_text_lengths(command));
  }
}

TEST_CASE("one character more is refused and its place is told: text_too_long") {
  for (const Command& command : commands(longest_line + 1, longest_text + 1)) {
    INFO("command " << command.index());
    const auto checked = check_text_lengths(command);
    REQUIRE_FALSE(checked);
    CHECK(checked.error().code == "text_too_long");
    CHECK_FALSE(checked.error().place.empty());
  }
}

TEST_CASE("what names something is one line: control_character") {
  for (const char* number : {"12\n3", "\t12", "12\r", "1\x7f"}) {
    OpenJob open;
    open.number = number;
    const auto checked = check_text_lengths(open);
    REQUIRE_FALSE(checked);
    CHECK(checked.error().code == "control_character");
    CHECK(checked.error().place == "number");
  }
  CHECK(check_text_lengths(opening("Müller/7", "when hot\nin third gear")));
  CHECK(check_text_lengths(WriteText{"s", "two\nlines"}));
}

TEST_CASE("the first text that is too long is the one that is told") {
  const auto checked = check_text_lengths(opening(characters(201), characters(4001)));
  REQUIRE_FALSE(checked);
  CHECK(checked.error().place == "plate");
  CHECK(checked.error().in_english().find("201 characters") != std::string::npos);
}

}  // namespace shimwright::job::test
