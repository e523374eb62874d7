#include "shimwright/shim/advise_case.h"

#include "case_sections.h"
#include "shimwright/json/value.h"

namespace shimwright::shim {

/// The only maker of checked cases.
struct CaseChecker {
  [[nodiscard]] static CheckedCase approve(AdviseCase content) { return CheckedCase(std::move(content)); }
};

Result<CheckedCase> read_case(std::string_view json_text) {
  const auto parsed = json::parse(json_text);
  if (!parsed) {
    return tl::make_unexpected(parsed.error());
  }
  FirstFault fault;
  Fields top(*parsed, "", fault, {"tray"}, {"gauge_fit", "depth", "float"});
  if (!top.has("gauge_fit") && !top.has("depth") && !top.has("float")) {
    fault.note("no_section", "",
               SHIMWRIGHT_TEXT("shim", "There is nothing to advise on; add gauge_fit, depth or float."));
  }
  AdviseCase content;
  content.tray = read_tray(top);
  if (top.has("gauge_fit") && !fault.any()) {
    content.gauge_fit = read_gauge_fit(top.value("gauge_fit"), content.tray, fault);
  }
  if (top.has("depth") && !fault.any()) {
    content.depth = read_depth(top.value("depth"), content.tray, fault);
  }
  if (top.has("float") && !fault.any()) {
    content.disc_float = read_float(top.value("float"), content.tray, fault);
  }
  if (const auto& found = fault.error()) {
    return tl::make_unexpected(*found);
  }
  return CaseChecker::approve(std::move(content));
}

/// By way of the text, so that there is one set of rules only.
Result<CheckedCase> checked(const AdviseCase& advise_case) {
  auto read = read_case(write_case(advise_case));
  if (read && !(read->content() == advise_case)) {
    return refuse("not_utf8", "", SHIMWRIGHT_TEXT("shim", "A name in this case is not UTF-8 text; enter it again."));
  }
  return read;
}

}  // namespace shimwright::shim
