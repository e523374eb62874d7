#include "bench_window.h"

#include <QLabel>
#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>
#include <variant>

#include "come_up.h"
#include "shimwright/past/record_view.h"
#include "shimwright/widgets/say.h"

namespace shimwright::test {

BenchWindow::BenchWindow(const std::string& script, const QString& place)
    : rig_(script, place), settings_(std::make_unique<QSettings>(rig_.file("settings.ini"), QSettings::IniFormat)) {
  settings_.use_store(rig_.store().path());
  equipment_ = equipment();
  window_ = std::make_unique<shell::MainWindow>(rig_.workbench(), settings_, equipment_);
  window_->resize(1366, 768);  // the smallest screen it is made for
  come_up(*window_);
}

shell::Equipment BenchWindow::equipment() {
  const bench::Surroundings surroundings = hands_.surroundings();
  shell::Equipment equipment;
  equipment.clock = [this] { return rig_.workbench().now(); };
  equipment.places = {rig_.file("own.shimwright").toStdString(), rig_.file("demo.shimwright").toStdString()};
  equipment.choose_folder = [](QWidget*, const QString&) { return QString(); };
  equipment.choose_photo = [pick = surroundings.pick_photo](QWidget*, const QString&) { return pick(); };
  equipment.after = surroundings.after;
  equipment.dress = [](widgets::Scheme) {};
  equipment.speak = [](const QString&) {};
  equipment.sound = [] {};
  equipment.pages = shell::page_table();
  return equipment;
}

void BenchWindow::open_job(KeyTechnician& technician, const job::OpenJob& as_scripted) {
  technician.tab_and_press("button-new-job");
  technician.fill("field-vehicle", as_scripted.vehicle_typed);
  const auto fill_text = [&](const char* field, const std::optional<job::PrivateText>& text) {
    if (text) {
      technician.fill(field, text->text);
    }
  };
  fill_text("field-plate", as_scripted.plate);
  technician.fill("field-odometer", as_scripted.odometer);
  fill_text("field-complaint", as_scripted.complaint);
  technician.fill("field-gearbox-serial", as_scripted.gearbox_serial);
  technician.fill("field-build-date", as_scripted.build_date);
  fill_text("field-customer-reference", as_scripted.customer_reference);
  technician.tab_and_press("button-open-job");
  REQUIRE(window_->page() == shell::PageName::job);
}

void BenchWindow::do_whole_job(KeyTechnician& technician, const std::string& name,
                               const std::function<void()>& before_each) {
  const cli::Script script = demo_script(name);
  const auto opening = std::find_if(script.commands.begin(), script.commands.end(), [](const auto& each) {
    return each.expect_accepted && std::holds_alternative<job::OpenJob>(each.command);
  });
  REQUIRE(opening != script.commands.end());
  open_job(technician, std::get<job::OpenJob>(opening->command));
  const auto step_up = [&](const std::string& initials) {
    before_each();
    if (rig_.workbench().person().initials != initials) {
      technician.call_persons();
      technician.tab_and_press(widgets::qt("button-person-" + initials));
    }
    REQUIRE(rig_.workbench().person().initials == initials);
  };
  do_script_by_keys(rig_, technician, script, {step_up, [] {}});
  technician.tab_and_press("button-record");
  REQUIRE(window_->page() == shell::PageName::record);
  const auto* record = window_->findChild<past::RecordView*>();
  REQUIRE(record != nullptr);
  CHECK(record->isVisible());
  const QString place =
      QCoreApplication::translate("shimwright::past::RecordView", "page %1 of %2").section("%2", 0, 0);
  CHECK(record->findChild<QLabel*>("page-place")->text().startsWith(place.arg(1)));
  before_each();
}

void check_as_replayed(const job::JobState& by_hand, const std::string& script) {
  UiBench rig(script);
  rig.go_to("");
  const job::JobState& by_script = rig.workbench().state();
  CHECK(by_hand.closed);
  CHECK(by_hand.assembly == by_script.assembly);
  CHECK(by_hand.shims == by_script.shims);
  for (const auto& [step, state] : by_script.steps) {
    INFO(step);
    CHECK(by_hand.step(step).index() == state.index());
  }
}

}  // namespace shimwright::test
