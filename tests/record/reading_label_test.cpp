#include "reading_label.h"

#include <catch2/catch.hpp>
#include <set>

#include "sample_job.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::ReadingLabels;
using record::ReadingLine;

namespace {

ReadingLine line_of(const std::string& step, const std::string& title, const std::string& channel, bool only) {
  ReadingLine line;
  line.place.step = step;
  line.place.title = title;
  line.place.stage = "Refit";
  line.channel_title = channel;
  line.only_channel = only;
  return line;
}

std::string label(const std::vector<ReadingLine>& all, const std::vector<std::size_t>& together) {
  record::Record record;
  record.readings = all;
  std::vector<const ReadingLine*> lines;
  for (const std::size_t each : together) {
    lines.push_back(&record.readings[each]);
  }
  return ReadingLabels(record).of(lines);
}

}  // namespace

TEST_CASE("readings of several channels stand with the title of their step") {
  const auto distance = line_of("road-test", "Road test", "Distance", false);
  const auto oil = line_of("road-test", "Road test", "Gearbox oil", false);
  CHECK(label({distance, oil}, {0}) == "Road test: Distance");
  CHECK(label({distance, oil}, {0, 1}) == "Road test: Distance, Gearbox oil");
}

TEST_CASE("the stage stands there only where two steps share the title, or where the step is of one bearing") {
  auto large = line_of("large", "Temperature", "Box", false);
  auto small = line_of("small", "Temperature", "Box", false);
  large.place.stage = "Shim, large bearing";
  small.place.stage = "Shim, small bearing";
  CHECK(label({large, small}, {0}) == "Shim, large bearing: Box");
  CHECK(label({large, small}, {1}) == "Shim, small bearing: Box");
  CHECK(label({large, large}, {0}) == "Temperature: Box");
  large.side = record::Side::lower;
  CHECK(label({large}, {0}) == "Shim, large bearing: Box");
}

TEST_CASE("a reading alone has its own name where that takes up the step's words") {
  CHECK(label({line_of("a", "Read the odometer", "Odometer", true)}, {0}) == "Odometer");
  CHECK(label({line_of("a", "Drain the oil and measure it", "Oil drained", true)}, {0}) == "Oil drained");
  CHECK(label({line_of("a", "Huile de boîte", "Température, BOÎTE", true)}, {0}) ==
        "Huile de boîte: Température, BOÎTE");
}

TEST_CASE("a reading alone whose name does not tell stands with its step") {
  CHECK(label({line_of("a", "Temperature for the teach-in", "Gearbox oil", true)}, {0}) ==
        "Temperature for the teach-in: Gearbox oil");
  CHECK(label({line_of("a", "Of it", "On it", true)}, {0}) == "Of it: On it");
}

TEST_CASE("on the shipped sheet every reading can be told from all others") {
  const job::Sheets sheets = shipped_sheets();
  std::vector<ReadingLine> lines;
  for (const sheet::Stage& stage : sheets.job->stages) {
    for (const sheet::Step& step : stage.steps) {
      const auto* read = std::get_if<sheet::ReadStep>(&step.body);
      const bool with_the_shims = step.role == sheet::Role::old_shim || step.role == sheet::Role::new_shim;
      for (std::size_t at = 0; read != nullptr && !with_the_shims && at < read->channels.size(); ++at) {
        lines.push_back(line_of(step.id, step.title.in_english(), read->channels[at].title.in_english(),
                                read->channels.size() == 1));
        lines.back().place.stage = stage.title.in_english();
        lines.back().side = step.side;
      }
    }
  }
  REQUIRE(lines.size() > 15);
  std::set<std::string> labels;
  for (std::size_t at = 0; at < lines.size(); ++at) {
    const std::string each = label(lines, {at});
    INFO(each);
    CHECK(labels.insert(each).second);
  }
  CHECK(labels.count("Temperature for the teach-in: Gearbox oil") == 1);
  CHECK(labels.count("Road test: Distance") == 1);
  CHECK(labels.count("Odometer") == 1);
}
