#pragma once

#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/spec_sheet.h"

/// Files the tests of this layer read, and tables of what is refused.
namespace shimwright::sheet::test {

[[nodiscard]] std::string test_file(const std::string& name);
[[nodiscard]] std::string shipped_file(const std::string& name);

[[nodiscard]] nlohmann::json small_job_sheet();
[[nodiscard]] nlohmann::json small_spec_sheet();

/// Fails the test where the text is refused.
[[nodiscard]] JobSheet good_job_sheet(const std::string& text);
[[nodiscard]] SpecSheet good_spec_sheet(const std::string& text);

[[nodiscard]] JobSheet default_job_sheet();
[[nodiscard]] std::vector<std::string> shipped_specs();

/// What a reader says of a file: nothing where it takes it.
struct Verdict {
  std::string code;
  std::string place;
  std::string sentence;
};
[[nodiscard]] Verdict verdict_on(const nlohmann::json& file, const std::string& schema);

/// One line that ends with a full stop, its arguments filled in.
[[nodiscard]] bool is_sentence(const std::string& text);

/// Each row of the table: a good file, changed in one thing, is refused with that code at that place.
void check_refusals(const std::string& table_name);

}  // namespace shimwright::sheet::test
