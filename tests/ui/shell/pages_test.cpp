#include <QStackedWidget>
#include <catch2/catch.hpp>
#include <set>

#include "shell_bench.h"

using namespace shimwright;

TEST_CASE("every place has its page") {
  test::UiBench bench;
  bench.go_to("odometer");
  shell::Settings settings(test::settings_file(bench.file("settings.ini")));
  settings.use_store(bench.store().path());
  shell::PageLinks links;
  links.home = links.job_opened = links.back = links.heading_changed = [] {};
  links.new_job = links.take_up = links.open_record = [](const std::string&) {};
  links.search = [](const QString&) {};
  links.refused = [](const Error&) {};
  links.backed_up = [](const shell::LastBackup&) {};
  QStackedWidget stack;
  const shell::Equipment equipment = test::plain_equipment(bench.file("data"));
  const shell::PageHouse house{&bench.workbench(), &settings, &equipment, links, &stack};
  std::set<shell::PageName> names;
  for (const shell::PageFactory& each : shell::page_table()) {
    const shell::PluggedPage page = each.make(house);
    REQUIRE(page.widget != nullptr);
    stack.addWidget(page.widget);
    names.insert(each.name);
    if (each.name == shell::PageName::job) {
      page.come(bench.workbench().job_id());
      REQUIRE(page.heading);
      CHECK(page.heading().job.contains("2041"));
      CHECK(page.heading().demonstration);
    }
  }
  CHECK(names.size() == 7);
}
