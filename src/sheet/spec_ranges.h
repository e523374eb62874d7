#pragma once

#include "measures.h"

/// How large the numbers of a spec sheet may be. The lower ends are those of the shim engine; the upper ones only keep
/// out what cannot be meant, and what would make the engine work on a grid of metres.
namespace shimwright::sheet {

inline constexpr LengthRange any_length{quantity::micrometres(-9'999'999), quantity::micrometres(9'999'999)};
inline constexpr LengthRange thickness_range{quantity::micrometres(1), quantity::micrometres(50'000)};
inline constexpr LengthRange snug_band_range{quantity::micrometres(1), quantity::micrometres(5'000)};
inline constexpr LengthRange spread_range{quantity::micrometres(1), quantity::micrometres(50'000)};
inline constexpr LengthRange float_range{quantity::micrometres(0), quantity::micrometres(50'000)};

inline constexpr std::int64_t ten = 10 * millionths_of_one;
inline constexpr DecimalRange uncertainty_range{1, ten};
inline constexpr DecimalRange repeatability_range{0, ten};
inline constexpr DecimalRange feel_range{1'000, ten};
inline constexpr DecimalRange prior_mean_range{0, 50 * millionths_of_one};
inline constexpr DecimalRange prior_sd_range{10'000, ten};
inline constexpr DecimalRange guard_factor_range{0, ten};
inline constexpr DecimalRange sensitivity_range{1, 100 * millionths_of_one};
inline constexpr DecimalRange angle_range{0, 360 * millionths_of_one - 1};

}  // namespace shimwright::sheet
