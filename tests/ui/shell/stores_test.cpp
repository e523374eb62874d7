#include "shimwright/shell/stores.h"

#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "shimwright/store/registers.h"

using namespace shimwright;

TEST_CASE("the own store and the demonstration lie in folders of their own") {
  const shell::StorePlaces places = shell::places_of_this_person();
  CHECK(places.own.front() == '/');
  CHECK(places.demo.find("/demo/") != std::string::npos);
  CHECK(places.own.find("/demo/") == std::string::npos);
}

TEST_CASE("a workshop is begun with sheets and its first person, and may be begun again after a refusal") {
  const QTemporaryDir folder;
  auto store = store::Store::open(folder.filePath("s.shimwright").toStdString(), {store::Mode::read_write, "", 1});
  REQUIRE(store);
  store::IdSource ids;
  const job::Moment now{1795770000000, 0, false};
  const shell::Beginning beginning{"Own Workshop", "1 Lane", "Ada Bench", "AB"};
  REQUIRE(shell::begin_workshop(**store, beginning, ids, now));
  REQUIRE(shell::begin_workshop(**store, beginning, ids, now));
  store::Registers& registers = (*store)->registers();
  CHECK(registers.persons()->size() == 1);
  CHECK(registers.job_sheets()->size() == 1);
  CHECK(registers.spec_sheets()->size() == 2);
  const auto workshop = registers.workshop();
  REQUIRE(workshop);
  REQUIRE(*workshop);
  CHECK((**workshop).name == "Own Workshop");
  CHECK_FALSE(shell::is_demo_workshop(**store));
  const shell::Beginning another{"", "", "Rui Tavares", "RT"};
  REQUIRE(shell::begin_workshop(**store, another, ids, now));
  CHECK((**registers.workshop()).name == "Own Workshop");
  CHECK(registers.persons()->size() == 2);
}
