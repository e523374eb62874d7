#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "shimwright/shim/advise.h"

using namespace shimwright::shim;
using Json = nlohmann::json;

namespace {

std::vector<std::filesystem::path> vector_files() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(SHIM_VECTORS_DIR)) {
    files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

bool ends_with(const std::string& text, const std::string& end) {
  return text.size() >= end.size() && text.compare(text.size() - end.size(), end.size(), end) == 0;
}

/// The agreed tolerance of the number at this place.
double tolerance_at(const std::string& place) {
  if (ends_with(place, "trials_left")) {
    return 0.02;
  }
  const bool probability = place.find("/p_") != std::string::npos;
  return probability ? 0.005 : 0.0005;
}

void check_numbers(const std::string& place, double wanted, double given) {
  INFO(place << ": " << given << " instead of " << wanted);
  if (ends_with(place, "high_at_deg")) {
    const double apart = std::abs(std::remainder(wanted - given, 360.0));
    CHECK(apart <= 0.5);
  } else {
    CHECK(std::abs(wanted - given) <= tolerance_at(place));
  }
}

void check_alike(const std::string& place, const Json& wanted, const Json& given);

void check_members(const std::string& place, const Json& wanted, const Json& given) {
  for (const auto& [key, value] : wanted.items()) {
    INFO(place << '/' << key);
    REQUIRE(given.contains(key));
    check_alike(place + '/' + key, value, given[key]);
  }
  for (const auto& [key, value] : given.items()) {
    INFO(place << '/' << key << " was not asked for");
    CHECK(wanted.contains(key));
  }
}

void check_alike(const std::string& place, const Json& wanted, const Json& given) {
  INFO(place << ": " << given << " instead of " << wanted);
  if (wanted.is_number() && given.is_number()) {
    check_numbers(place, wanted.get<double>(), given.get<double>());
  } else if (wanted.is_object() && given.is_object()) {
    check_members(place, wanted, given);
  } else if (wanted.is_array() && given.is_array() && !ends_with(place, "findings")) {
    REQUIRE(wanted.size() == given.size());
    for (std::size_t index = 0; index < wanted.size(); ++index) {
      check_alike(place + '/' + std::to_string(index), wanted[index], given[index]);
    }
  } else if (wanted.is_array() && given.is_array()) {
    std::vector<Json> wanted_names(wanted.begin(), wanted.end());
    std::vector<Json> given_names(given.begin(), given.end());
    std::sort(wanted_names.begin(), wanted_names.end());
    std::sort(given_names.begin(), given_names.end());
    CHECK(wanted_names == given_names);
  } else {
    CHECK(wanted == given);
  }
}

}  // namespace

TEST_CASE("every vector gets its answer or its refusal") {
  const auto files = vector_files();
  REQUIRE(files.size() == 25);
  for (const auto& file : files) {
    INFO(file.filename().string());
    std::ifstream stream(file);
    const Json vector = Json::parse(stream);
    const auto read = read_case(vector["case"].dump());
    if (vector["answer"].contains("refused")) {
      REQUIRE_FALSE(read);
      CHECK(read.error().place == vector["answer"]["refused"].get<std::string>());
      continue;
    }
    REQUIRE(read);
    check_alike("", vector["answer"], Json::parse(write_answer(advise(*read))));
  }
}
