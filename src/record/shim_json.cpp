#include <cmath>

#include "record_json_parts.h"

namespace shimwright::record::parts_json {

namespace {

Json of(const Trial& trial) {
  return {{"stamp", parts_json::of(trial.stamp)}, {"shim", trial.shim}, {"fit", std::string(shim::name_of(trial.fit))}};
}

Json of(const Depths& depths) {
  Json object = {{"stamp", parts_json::of(depths.stamp)},
                 {"readings", list_of(depths.readings)},
                 {"reference", parts_json::of(depths.reference)}};
  put(object, "pack_stamp", depths.pack_stamp);
  put(object, "instrument", depths.instrument);
  return object;
}

Json of(const Advice& advice) {
  Json object = {{"stamp", parts_json::of(advice.stamp)},
                 {"engine", advice.engine},
                 {"conclusion", std::string(job::name_of(advice.conclusion))},
                 {"candidates", advice.candidates},
                 {"reason", parts_json::of(advice.reason)}};
  put(object, "shim", advice.shim);
  return object;
}

Json of(const ShimChoice& choice) {
  Json object = {{"stamp", parts_json::of(choice.stamp)},      {"shim", choice.shim},
                 {"thickness_um", choice.thickness.count()},   {"u_nm", choice.u_nm},
                 {"by", std::string(job::name_of(choice.by))}, {"reason", choice.reason}};
  put(object, "chance_percent", choice.chance_percent);
  return object;
}

Json of(const FloatRunLine& run) {
  Json object = {{"stamp", parts_json::of(run.stamp)},
                 {"rest", parts_json::of(run.rest)},
                 {"lifted", parts_json::of(run.lifted)},
                 {"float_um", run.value.count()}};
  put(object, "zero_after", run.zero_after);
  put(object, "instrument", run.instrument);
  return object;
}

Json of(const FloatJudged& judged) {
  Json verdicts = Json::array();
  for (const ReadingVerdict verdict : judged.spot_verdicts) {
    verdicts.push_back(std::string(job::name_of(verdict)));
  }
  Json object = {{"stamp", parts_json::of(judged.stamp)},
                 {"spot_floats_um", judged.spot_floats},
                 {"spot_verdicts", verdicts},
                 {"conclusion", std::string(job::name_of(judged.conclusion))},
                 {"reason", parts_json::of(judged.reason)}};
  put(object, "mean_um", judged.mean);
  put(object, "spread_um", judged.spread);
  put(object, "expanded_u_um", judged.expanded_u);
  put(object, "trials_agree", judged.trials_agree);
  put(object, "shim", judged.shim);
  return object;
}

Json of(const FloatLimits& limits) {
  return {{"least_um", limits.least.count()},
          {"most_um", limits.most.count()},
          {"max_spread_um", limits.max_spread.count()},
          {"guard_factor_thousandths", std::llround(limits.guard_factor * 1000)},
          {"source", limits.source}};
}

template <class Part>
Json all_of(const std::vector<Part>& parts) {
  Json list = Json::array();
  for (const Part& part : parts) {
    list.push_back(of(part));
  }
  return list;
}

}  // namespace

Json of(const ShimUse& use) {
  return {{"side", std::string(sheet::name_of(use.side))},
          {"method", std::string(sheet::name_of(use.method))},
          {"assemblies", use.assemblies},
          {"trials", all_of(use.trials)},
          {"depths", all_of(use.depths)},
          {"advice", all_of(use.advice)},
          {"choices", all_of(use.choices)},
          {"measured", list_of(use.measured)}};
}

Json of(const OldShim& shim) {
  return {{"side", std::string(sheet::name_of(shim.side))}, {"reading", of(shim.reading)}};
}

Json of(const FloatSeries& series) {
  Json spots = Json::array();
  for (const FloatSpot& spot : series.spots) {
    spots.push_back({{"spot", spot.spot}, {"runs", all_of(spot.runs)}});
  }
  Json object = {{"side", std::string(sheet::name_of(series.side))},
                 {"as_found", series.as_found},
                 {"place", of(series.place)},
                 {"series", series.series},
                 {"limits", of(series.limits)},
                 {"spots", spots},
                 {"latest", series.latest}};
  if (series.reason) {
    object["reason"] = std::string(job::name_of(*series.reason));
  }
  if (series.judged) {
    object["judged"] = of(*series.judged);
  }
  return object;
}

}  // namespace shimwright::record::parts_json
