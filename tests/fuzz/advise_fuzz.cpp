#include <algorithm>
#include <nlohmann/json.hpp>

#include "fuzz_target.h"
#include "shimwright/shim/advise.h"
#include "shimwright/shim/advise_case.h"

namespace shim = shimwright::shim;
using shimwright::fuzz::require;

namespace {

/// The belief has a cell for each micrometre: shims as thick as a hand is wide are taken, but only cost the fuzzer its
/// time.
bool quick(const shim::AdviseCase& advise_case) {
  constexpr shimwright::quantity::Length most = shimwright::quantity::micrometres(100'000);
  const bool thin = std::all_of(advise_case.tray.begin(), advise_case.tray.end(),
                                [&](const shim::Shim& each) { return each.thickness < most; });
  return thin && (!advise_case.gauge_fit || advise_case.gauge_fit->snug_band < most);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto checked = shim::read_case(shimwright::fuzz::text_of(data, size));
  if (!checked) {
    const auto& error = checked.error();
    require(!error.code.empty(), "a refusal has a code");
    require(error.place.empty() || error.place.front() == '/', "its place is a JSON pointer");
    return 0;
  }
  if (!quick(checked->content())) {
    return 0;
  }
  const std::string answer = shim::write_answer(shim::advise(*checked));
  require(nlohmann::json::accept(answer), "an answer is JSON, so every number in it is finite");
  const auto again = shim::read_case(shim::write_case(checked->content()));
  require(again.has_value() && again->content() == checked->content(), "a case written is read as the same case");
  return 0;
}
