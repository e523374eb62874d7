#include "shimwright/record/blank_sheet.h"

#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;

namespace {

std::vector<record::Page> blank_pages(const sheet::JobSheet& sheet, record::PaperSize paper = record::PaperSize::a4,
                                      const record::PaperLanguage& language = {}) {
  return record::lay_out_blank_sheet(sheet, {"Hollow Lane Gearboxes", "4 Hollow Lane"}, language, paper,
                                     FixedMeasure());
}

}  // namespace

TEST_CASE("every step of the sheet stands on the blank paper, with its cautions and hold points") {
  const auto sheets = shipped_sheets();
  const sheet::JobSheet& sheet = *sheets.job;
  for (const record::PaperSize paper : {record::PaperSize::a4, record::PaperSize::letter}) {
    const auto pages = blank_pages(sheet, paper);
    CHECK(broken_laws(pages).empty());
    std::size_t hold_points = 0;
    for (const sheet::Step* step : sheet.steps()) {
      INFO(step->id);
      CHECK(has(pages, step->title.in_english()));
      hold_points += step->hold_point ? 1 : 0;
    }
    CHECK(times(pages, "(hold point)") == hold_points);
    CHECK(has(pages, "Hollow Lane Gearboxes"));
  }
}

TEST_CASE("a reading has a line with its unit, a float lines for each spot") {
  sheet::JobSheet sheet;
  sheet.title = {{{"en", "Sheet"}}};
  sheet::Step read;
  read.title = {{{"en", "Oil"}}};
  sheet::Channel channel;
  channel.title = {{{"en", "amount"}}};
  channel.unit = quantity::Unit::litre;
  read.body = sheet::ReadStep{{channel}};
  sheet::Step disc;
  disc.title = {{{"en", "Float"}}};
  disc.body = sheet::FloatStep{};
  sheet.stages = {{"one", {{{"en", "Stage"}}}, {read, disc}}};
  const auto pages = blank_pages(sheet);
  CHECK(has(pages, "amount ____________ l"));
  CHECK(times(pages, "Spot 3: rest") == 2);
  CHECK_FALSE(has(pages, "DEMONSTRATION"));
}

TEST_CASE("the blank paper is in one language: the words of the sheet and those around them") {
  const auto sheets = shipped_sheets();
  const record::PaperLanguage marked{"de", [](const Message& message) {
                                       return Message{"#" + message.text, message.arguments}.in_english();
                                     }};
  const auto pages = blank_pages(*sheets.job, record::PaperSize::a4, marked);
  CHECK(broken_laws(pages).empty());
  for (const sheet::Step* step : sheets.job->steps()) {
    INFO(step->id);
    CHECK(has(pages, step->title.by_language.at("de")));
  }
  for (const char* words : {" (hold point)", "Caution: ", "In order / not", "Spot 1: rest", "Shim taken ____",
                            "Depths ____", "Attempts ____", "Name ____", "Job ____", "DEMONSTRATION VALUES"}) {
    INFO(words);
    CHECK(times(pages, words) > 0);
    CHECK(times(pages, words) == times(pages, std::string("#") + words));
  }
}
