#include "case_sections.h"

namespace shimwright::shim {

namespace {

constexpr Bound least_feel{0.001, true};
constexpr Bound least_prior{0.01, true};

std::optional<SeatPrior> read_prior(Fields& section) {
  if (section.value("prior").is_null()) {
    return std::nullopt;
  }
  Fields fields(section.value("prior"), section.place_of("prior"), section.fault(), {"mean_mm", "sd_mm"});
  SeatPrior prior;
  prior.mean_mm = fields.number("mean_mm");
  prior.sd_mm = fields.number("sd_mm", least_prior);
  return prior;
}

Trial read_trial(const json::Value& value, const std::string& place, const Tray& tray, FirstFault& fault) {
  Fields fields(value, place, fault, {"shim", "fit"});
  Trial trial;
  trial.shim = read_known_shim(fields, "shim", tray);
  const auto fit = fit_named(fields.text("fit"));
  if (!fit) {
    fault.note("unknown_name", fields.place_of("fit"),
               SHIMWRIGHT_TEXT("shim", "One of tight, snug or loose has to stand here."));
  }
  trial.fit = fit.value_or(Fit::snug);
  return trial;
}

}  // namespace

GaugeFitCase read_gauge_fit(const json::Value& value, const Tray& tray, FirstFault& fault) {
  Fields fields(value, "/gauge_fit", fault, {"snug_band_mm", "feel_u_mm", "prior", "order", "trials"});
  GaugeFitCase gauge_fit;
  gauge_fit.snug_band = fields.length("snug_band_mm", more_than_zero);
  gauge_fit.feel_u_mm = fields.number("feel_u_mm", least_feel);
  gauge_fit.prior = read_prior(fields);
  const auto order = trial_order_named(fields.text("order"));
  if (!order) {
    fault.note("unknown_name", fields.place_of("order"),
               SHIMWRIGHT_TEXT("shim", "Either fewest or thick_to_thin has to stand here."));
  }
  gauge_fit.order = order.value_or(TrialOrder::fewest);
  const json::Array& trials = fields.list("trials");
  for (std::size_t index = 0; index < trials.size() && !fault.any(); ++index) {
    gauge_fit.trials.push_back(read_trial(trials[index], json::pointer(fields.place_of("trials"), index), tray, fault));
  }
  return gauge_fit;
}

}  // namespace shimwright::shim
