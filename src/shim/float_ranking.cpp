#include "float_ranking.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <tuple>

#include "float_judgement.h"
#include "shimwright/metrology/normal.h"
#include "sorted_tray.h"

namespace shimwright::shim {

namespace {

using quantity::in_millimetres;

constexpr double as_good_as_sure = 0.99;

struct Candidate {
  RankedShim ranked;
  double distance_mm = 0.0;
  std::int64_t distance_class = 0;
  std::int64_t change_um = 0;
  std::int64_t thickness_um = 0;
};

/// Distances within the slack of lengths count as equal; classes of them keep the order a proper one.
void classify_distances(std::vector<Candidate>& candidates) {
  std::sort(candidates.begin(), candidates.end(),
            [](const Candidate& left, const Candidate& right) { return left.distance_mm < right.distance_mm; });
  for (std::size_t at = 1; at < candidates.size(); ++at) {
    const bool apart = candidates[at].distance_mm - candidates[at - 1].distance_mm > metrology::length_slack_mm;
    candidates[at].distance_class = candidates[at - 1].distance_class + (apart ? 1 : 0);
  }
}

bool comes_first(const Candidate& left, const Candidate& right) {
  const auto key = [](const Candidate& each) {
    const bool sure = each.ranked.p_within >= as_good_as_sure;
    const double falling = sure ? 0.0 : -std::nearbyint(each.ranked.p_within * 1e6);
    return std::tuple(!sure, falling, each.distance_class, each.change_um, each.thickness_um);
  };
  return key(left) < key(right);
}

class Prediction {
 public:
  Prediction(const FloatCase& disc_float, const FloatJudgement& judgement, const metrology::Slope& sensitivity,
             const Shim& fitted)
      : judgement_(judgement), sensitivity_(sensitivity), fitted_(fitted), limits_(limits_of(disc_float)) {
    const auto [least, most] = std::minmax_element(judgement.float_mm.begin(), judgement.float_mm.end());
    least_mm_ = *least;
    most_mm_ = *most;
  }

  [[nodiscard]] RankedShim with(const Shim& shim) const {
    const double change = in_millimetres(shim.thickness - fitted_.thickness);
    const double shift = -sensitivity_.mean * change;
    const double shims_u = sensitivity_.mean * std::hypot(shim.u_mm, fitted_.u_mm);
    const double u_mm = shim.id == fitted_.id ? judgement_.u_mean_mm
                                              : std::hypot(judgement_.u_mean_mm, change * sensitivity_.sd, shims_u);
    return {
        shim.id, judgement_.mean_mm + shift, u_mm,
        metrology::probability_inside(limits_.lower_mm, limits_.upper_mm, least_mm_ + shift, most_mm_ + shift, u_mm)};
  }

 private:
  const FloatJudgement& judgement_;
  metrology::Slope sensitivity_;
  const Shim& fitted_;
  metrology::Limits limits_;
  double least_mm_ = 0.0;
  double most_mm_ = 0.0;
};

}  // namespace

FloatRanking rank_shims(const Tray& tray, const FloatCase& disc_float, const FloatJudgement& judgement,
                        const metrology::Slope& sensitivity) {
  const auto shims = thin_to_thick(tray);
  const Shim& fitted = *shims[index_of(shims, disc_float.fitted_shim)];
  const auto limits = limits_of(disc_float);
  const double target =
      disc_float.target ? in_millimetres(*disc_float.target) : (limits.lower_mm + limits.upper_mm) / 2.0;
  const Prediction prediction(disc_float, judgement, sensitivity, fitted);
  std::vector<Candidate> candidates;
  candidates.reserve(shims.size());
  for (const Shim* shim : shims) {
    Candidate candidate{prediction.with(*shim), 0.0, 0, 0, shim->thickness.count()};
    candidate.distance_mm = std::abs(candidate.ranked.predicted_mm - target);
    candidate.change_um = std::abs(shim->thickness.count() - fitted.thickness.count());
    candidates.push_back(std::move(candidate));
  }
  classify_distances(candidates);
  std::sort(candidates.begin(), candidates.end(), comes_first);
  FloatRanking ranking;
  ranking.ideal_mm = in_millimetres(fitted.thickness) + (judgement.mean_mm - target) / sensitivity.mean;
  for (auto& candidate : candidates) {
    ranking.shims.push_back(std::move(candidate.ranked));
  }
  return ranking;
}

}  // namespace shimwright::shim
