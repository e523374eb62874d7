#include "sheet_files.h"

#include <fstream>
#include <iterator>

#include <catch2/catch.hpp>

namespace shimwright::sheet::test {

namespace {

std::string text_of_file(const std::string& path) {
  INFO(path);
  std::ifstream file(path, std::ios::binary);
  REQUIRE(file.good());
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

template <class Sheet>
Sheet good(Result<Sheet> sheet) {
  INFO((sheet ? std::string() : sheet.error().in_english()));
  REQUIRE(sheet.has_value());
  return *sheet;
}

template <class Sheet>
Verdict verdict_of(const Result<Sheet>& sheet) {
  return sheet ? Verdict{} : Verdict{sheet.error().code, sheet.error().place, sheet.error().message.in_english()};
}

}  // namespace

std::string test_file(const std::string& name) {
  return text_of_file(SHIMWRIGHT_SOURCE_DIR "/tests/sheet/data/" + name);
}

std::string shipped_file(const std::string& name) {
  return text_of_file(SHIMWRIGHT_DATA_DIR "/" + name);
}

nlohmann::json small_job_sheet() {
  return nlohmann::json::parse(test_file("small_job_sheet.json"));
}

nlohmann::json small_spec_sheet() {
  return nlohmann::json::parse(test_file("small_spec_sheet.json"));
}

JobSheet good_job_sheet(const std::string& text) {
  return good(read_job_sheet(text));
}

SpecSheet good_spec_sheet(const std::string& text) {
  return good(read_spec_sheet(text));
}

JobSheet default_job_sheet() {
  return good_job_sheet(shipped_file("sheets/dry-pack-renewal.json"));
}

std::vector<std::string> shipped_specs() {
  return {"specs/D6-1.json", "specs/D6-2.json", "specs/D7-1.json", "specs/D7-2.json", "specs/D7-3.json"};
}

Verdict verdict_on(const nlohmann::json& file, const std::string& schema) {
  return schema == "job-sheet" ? verdict_of(read_job_sheet(file.dump())) : verdict_of(read_spec_sheet(file.dump()));
}

bool is_sentence(const std::string& text) {
  const bool filled_in = text.find("{0}") == std::string::npos && text.find("{1}") == std::string::npos;
  return !text.empty() && text.back() == '.' && filled_in && text.find('\n') == std::string::npos;
}

void check_refusals(const std::string& table_name) {
  const auto table = nlohmann::json::parse(test_file("refused/" + table_name + ".json"));
  const auto good_file = nlohmann::json::parse(test_file(table["file"]));
  REQUIRE(verdict_on(good_file, table["schema"]).code.empty());
  for (const auto& row : table["refusals"]) {
    INFO(row["name"].get<std::string>());
    const Verdict verdict = verdict_on(good_file.patch(row["patch"]), table["schema"]);
    INFO(verdict.place << ": " << verdict.sentence);
    CHECK(verdict.code == row["code"].get<std::string>());
    CHECK(verdict.place == row["place"].get<std::string>());
    CHECK(is_sentence(verdict.sentence));
  }
}

}  // namespace shimwright::sheet::test
