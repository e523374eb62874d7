#include "reading_fields.h"

#include <catch2/catch.hpp>

#include "page_driver.h"

using namespace shimwright;

namespace {

struct PeakFields {
  test::UiBench bench;
  std::unique_ptr<bench::ReadingFields> fields;

  PeakFields() {
    bench.go_to("press-peak");
    const auto& peak = std::get<sheet::PeakStep>(bench.workbench().state().sheets.job->find("press-peak")->body);
    fields = std::make_unique<bench::ReadingFields>(bench.workbench(),
                                                    std::vector<const sheet::Channel*>{&peak.channel}, nullptr);
  }
};

}  // namespace

TEST_CASE("a typed reading goes out with the instrument that was used before") {
  PeakFields peak;
  CHECK(peak.fields->blank());
  CHECK(peak.fields->typed().empty());
  peak.fields->findChild<QLineEdit*>("field-torque")->setText("13,5");
  REQUIRE(peak.fields->typed().size() == 1);
  CHECK(peak.fields->typed().front().text == "13,5");
  CHECK_FALSE(peak.fields->typed().front().instrument.empty());
  peak.fields->clear();
  CHECK(peak.fields->blank());
}

TEST_CASE("a refusal that names a field stands there; any other is not taken") {
  PeakFields peak;
  CHECK(peak.fields->show_refusal({"unknown_instrument", "press-peak/torque", {"Say which instrument.", {}}}));
  CHECK_FALSE(peak.fields->show_refusal({"hold_point", "press-peak", {"Not yet.", {}}}));
}
