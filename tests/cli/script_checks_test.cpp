#include "script_checks.h"

#include <catch2/catch.hpp>

#include <QTemporaryDir>

#include "sheets.h"

using namespace shimwright;

namespace {

cli::Script script() {
  cli::Script made;
  made.people = {{"MK", "Mara Kestrel"}};
  made.commands.resize(1);
  made.commands[0].by = "MK";
  made.commands[0].command = job::Note{std::nullopt, "hello"};
  return made;
}

std::string refused_names(const cli::Script& each) {
  const auto checked = cli::check_names(each);
  return checked ? "taken" : checked.error().code + " " + checked.error().place;
}

struct Shipped {
  sheet::JobSheet job_sheet = *sheet::read_job_sheet(*cli::shipped_job_sheet("dry-pack-renewal"));
  sheet::SpecSheet spec = *sheet::read_spec_sheet(*cli::shipped_spec_sheet("D7-3"));
  QTemporaryDir folder;

  std::string refused(const cli::Script& each) const {
    const auto checked = cli::check_against(each, job_sheet, spec, folder.path().toStdString());
    return checked ? "taken" : checked.error().code + " " + checked.error().place;
  }
};

cli::Script with(const job::Command& command) {
  cli::Script made = script();
  made.commands.push_back({std::nullopt, "MK", true, command, std::nullopt});
  return made;
}

}  // namespace

TEST_CASE("a script names everybody and everything once, and has something to do") {
  CHECK(refused_names(script()) == "taken");
  cli::Script each = script();
  each.commands.clear();
  CHECK(refused_names(each) == "nothing_to_do /commands");
  each = script();
  each.people.push_back({"MK", "Another"});
  CHECK(refused_names(each) == "named_twice /people/1/initials");
  each = script();
  each.instruments.resize(2);
  CHECK(refused_names(each) == "named_twice /instruments/1/name");
  each = script();
  each.trays = {{"large", {}}, {"small", {}}, {"large", {}}};
  CHECK(refused_names(each) == "named_twice /trays/2/name");
  each = script();
  each.commands[0].by = "RT";
  CHECK(refused_names(each) == "unknown_person /commands/0/by");
  CHECK(refused_names(with(job::EnterPeak{"press-peak", {"peak", "1", "wrench"}})) == "unknown_instrument /commands/1");
}

TEST_CASE("a script fits its sheets and its folder") {
  const Shipped shipped;
  CHECK(shipped.refused(script()) == "taken");
  CHECK(shipped.refused(with(job::DoStep{"no-such-step"})) == "unknown_step /commands/1/step");
  CHECK(shipped.refused(with(job::Note{"no-such-step", "hello"})) == "unknown_step /commands/1/step");
  CHECK(shipped.refused(with(job::AddPhoto{"received-photos", "nowhere.jpg", "", 0, ""})) ==
        "photo_unreadable /commands/1/file");
  job::OpenJob open;
  open.language = "xx";
  CHECK(shipped.refused(with(open)) == "unknown_language /commands/1/language");
  cli::Script each = script();
  each.trays = {{"large D6", {}}};
  CHECK(shipped.refused(each) == "unknown_tray /trays/0/name");
  each = with(job::DoStep{"no-such-step"});
  each.commands[1].expect_accepted = false;
  CHECK(shipped.refused(each) == "taken");
}
