#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "shimwright/quantity/quantity.h"
#include "shimwright/shim/tray.h"

/// The shim from measured depths. The formulas and their sources are in docs/method.md, section 2.
namespace shimwright::shim {

/// A named length that is added to the measured one; negative to take away.
struct DepthConstant {
  std::string name;
  quantity::Length add;

  friend bool operator==(const DepthConstant&, const DepthConstant&) = default;
};

/// From here to there, both ends included, this shim.
struct DepthBin {
  quantity::Length from;
  quantity::Length to;
  std::string shim;

  friend bool operator==(const DepthBin&, const DepthBin&) = default;
};

struct DepthCase {
  std::vector<quantity::Length> readings;  ///< at least one
  quantity::Length reference;
  std::vector<DepthConstant> constants;
  bool stamp_used = false;
  std::optional<quantity::Length> stamp;  ///< the signed deviation marked on the new pack; 0 is a value, blank is not
  quantity::Length max_spread;            ///< more than 0
  double u_reading_mm = 0.0;              ///< more than 0
  std::optional<std::vector<DepthBin>> bins;

  friend bool operator==(const DepthCase&, const DepthCase&) = default;
};

enum class DepthState { tilted, impossible, outside, far, edge, shim };
[[nodiscard]] std::string_view name_of(DepthState state);
[[nodiscard]] std::optional<DepthState> depth_state_named(std::string_view name);

struct DepthAnswer {
  DepthState state = DepthState::shim;
  quantity::Length spread;
  std::optional<double> required_mm;  ///< not where tilted
  std::optional<double> u_required_mm;
  std::optional<std::string> shim;
  std::vector<std::string> candidates;  ///< thin to thick
};

/// Pure. Tray and case must have passed the check of advise_case.h.
[[nodiscard]] DepthAnswer advise_depth(const Tray& tray, const DepthCase& depth);

}  // namespace shimwright::shim
