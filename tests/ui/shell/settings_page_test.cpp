#include "shimwright/shell/settings_page.h"

#include <QFileInfo>
#include <QLabel>
#include <QSignalSpy>
#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;
using test::named;

namespace {

struct SettingsBench {
  test::UiBench bench;
  shell::Settings settings{test::settings_file(bench.file("settings.ini"))};
  shell::Equipment equipment = test::plain_equipment(bench.file("data"));
  std::unique_ptr<shell::SettingsPage> page;

  SettingsBench() {
    settings.use_store(bench.store().path());
    page = std::make_unique<shell::SettingsPage>(bench.workbench(), settings, equipment);
    page->show();
  }
};

}  // namespace

TEST_CASE("each setting is kept at once") {
  SettingsBench it;
  QSignalSpy scheme(it.page.get(), &shell::SettingsPage::scheme_changed);
  test::press(*it.page, "button-dark");
  CHECK(it.settings.scheme() == widgets::Scheme::dark);
  CHECK(scheme.count() == 1);
  CHECK_FALSE(named(*it.page, "next-start")->isVisible());
  test::press(*it.page, "button-size-150");
  CHECK(it.settings.size_percent() == 150);
  CHECK(named(*it.page, "next-start")->isVisible());
  QSignalSpy tone(it.page.get(), &shell::SettingsPage::tone_changed);
  CHECK(named<QPushButton>(*it.page, "button-tone-off")->isChecked());
  test::press(*it.page, "button-tone-on");
  CHECK(it.settings.tone());
  CHECK(tone.count() == 1);
  test::press(*it.page, "button-language-en");
  CHECK(it.settings.language() == "en");
}

TEST_CASE("the language chosen is marked, each can be chosen, and the window can come up anew for it") {
  SettingsBench it;
  for (const std::string code : {"de", "fr", "en"}) {
    const std::string button = "button-language-" + code;
    test::press(*it.page, button.c_str());
    CHECK(it.settings.language().toStdString() == code);
    CHECK(named(*it.page, "renewal")->isVisible());
    CHECK_FALSE(named(*it.page, "next-start")->isVisible());
    const shell::SettingsPage again(it.bench.workbench(), it.settings, it.equipment);
    CHECK(named<QPushButton>(again, button.c_str())->isChecked());
  }
}

TEST_CASE("folders are chosen in the dialog that was handed in") {
  SettingsBench it;
  test::press(*it.page, "button-camera-folder");
  CHECK(it.settings.camera_folder() == it.bench.file("data/chosen"));
  CHECK(named<QLabel>(*it.page, "camera-folder")->text().endsWith("chosen"));
  it.equipment.choose_folder = [](QWidget*, const QString&) { return QString(); };
  const QString before = it.settings.backup_folder();
  test::press(*it.page, "button-backup-folder");
  CHECK(it.settings.backup_folder() == before);
}

TEST_CASE("the last backup is told, and another store can be opened") {
  SettingsBench it;
  CHECK(named<QLabel>(*it.page, "backup-told")->text() == "No verified backup yet.");
  it.settings.set_last_backup({1795770000000, "/there"});
  it.page->refresh();
  CHECK(named<QLabel>(*it.page, "backup-told")->text().contains("2026-11-2"));
  QSignalSpy backup(it.page.get(), &shell::SettingsPage::backup_wanted);
  test::press(*it.page, "button-back-up-now");
  CHECK(backup.count() == 1);
  QSignalSpy store(it.page.get(), &shell::SettingsPage::store_wanted);
  test::press(*it.page, "button-other-store");
  REQUIRE(store.count() == 1);
  CHECK(store.at(0).at(0).toString().toStdString() == it.equipment.places.demo);
}

TEST_CASE("units and paper are kept at once and hold from the next window") {
  SettingsBench it;
  CHECK(named<QPushButton>(*it.page, "button-length-mm")->isChecked());
  test::press(*it.page, "button-length-in");
  CHECK(it.settings.units() == quantity::UnitsShown{quantity::Unit::inch, quantity::Unit::newton_metre});
  CHECK(named(*it.page, "renewal")->isVisible());
  QSignalSpy renewal(it.page.get(), &shell::SettingsPage::renewal_wanted);
  test::press(*it.page, "button-renew-window");
  CHECK(renewal.count() == 1);
  test::press(*it.page, "button-torque-lbf-ft");
  CHECK(it.settings.units() == quantity::UnitsShown{quantity::Unit::inch, quantity::Unit::pound_foot});
  test::press(*it.page, "button-paper-letter");
  CHECK(it.settings.paper() == record::PaperSize::letter);
  it.page->refresh();
  CHECK(named<QPushButton>(*it.page, "button-length-in")->isChecked());
  CHECK(named<QPushButton>(*it.page, "button-torque-lbf-ft")->isChecked());
  CHECK(named<QPushButton>(*it.page, "button-paper-letter")->isChecked());
}

TEST_CASE("the demonstration is deleted after a second word, and can be left") {
  SettingsBench it;
  CHECK_FALSE(named(*it.page, "button-delete-demo")->isVisible());
  REQUIRE(shell::make_demo_workshop(it.equipment.places.demo, {1795770000000, 0, false}));
  it.page->refresh();
  test::press(*it.page, "button-delete-demo");
  CHECK(named(*it.page, "button-delete-demo-yes")->isVisible());
  test::press(*it.page, "button-delete-demo-no");
  CHECK(QFileInfo::exists(QString::fromStdString(it.equipment.places.demo)));
  test::press(*it.page, "button-delete-demo");
  test::press(*it.page, "button-delete-demo-yes");
  CHECK_FALSE(QFileInfo::exists(QString::fromStdString(it.equipment.places.demo)));
  CHECK(named<QLabel>(*it.page, "demo-deleted")->text().startsWith("The demonstration is deleted"));
  CHECK_FALSE(named(*it.page, "button-delete-demo")->isVisible());
}
