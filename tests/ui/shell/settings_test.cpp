#include "shimwright/shell/settings.h"

#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;

TEST_CASE("settings are there at the next start") {
  const QTemporaryDir folder;
  const QString file = folder.filePath("settings.ini");
  {
    shell::Settings settings(test::settings_file(file));
    CHECK(settings.language().isEmpty());
    settings.set_scheme(widgets::Scheme::dark);
    settings.set_size_percent(150);
    settings.set_language("de");
    settings.use_store("/store/one.shimwright");
    settings.set_camera_folder("/camera");
    settings.set_tone(true);
    settings.set_last_backup({1234, "/there"});
  }
  shell::Settings settings(test::settings_file(file));
  settings.use_store("/store/one.shimwright");
  CHECK(settings.scheme() == widgets::Scheme::dark);
  CHECK(settings.size_percent() == 150);
  CHECK(settings.language() == "de");
  CHECK(settings.camera_folder() == "/camera");
  CHECK(settings.tone());
  REQUIRE(settings.last_backup());
  CHECK(settings.last_backup()->at_ms == 1234);
}

TEST_CASE("each store has its own person, folders and backup") {
  const QTemporaryDir folder;
  shell::Settings settings(test::settings_file(folder.filePath("settings.ini")));
  settings.use_store("/store/one.shimwright");
  settings.set_person("id", "Mara Kestrel");
  settings.set_last_backup({1234, "/there"});
  settings.use_store("/other/two.shimwright");
  CHECK(settings.person().isEmpty());
  CHECK_FALSE(settings.last_backup());
  CHECK(settings.backup_folder() == "/other/backups");
  CHECK_FALSE(settings.tone());
}

TEST_CASE("a size nobody offers is none") {
  const QTemporaryDir folder;
  shell::Settings settings(test::settings_file(folder.filePath("settings.ini")));
  CHECK(settings.size_percent() == 100);
  settings.set_size_percent(133);
  CHECK(settings.size_percent() == 100);
}

TEST_CASE("units and paper are there at the next start; without a choice they are mm, N·m and the country's") {
  const QTemporaryDir folder;
  const QString file = folder.filePath("settings.ini");
  {
    shell::Settings settings(test::settings_file(file));
    CHECK(settings.units() == quantity::UnitsShown());
    settings.set_units({quantity::Unit::inch, quantity::Unit::pound_foot});
    settings.set_paper(record::PaperSize::letter);
  }
  shell::Settings settings(test::settings_file(file));
  CHECK(settings.units() == quantity::UnitsShown{quantity::Unit::inch, quantity::Unit::pound_foot});
  CHECK(settings.paper() == record::PaperSize::letter);
  settings.set_units({});
  settings.set_paper(record::PaperSize::a4);
  CHECK(settings.units() == quantity::UnitsShown());
  CHECK(settings.paper() == record::PaperSize::a4);
}
