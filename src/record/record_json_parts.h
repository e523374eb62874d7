#pragma once

#include <nlohmann/json.hpp>

#include "shimwright/record/record.h"

/// Each part of a record as JSON: integers only, what is absent is left out.
namespace shimwright::record::parts_json {

using Json = nlohmann::json;

[[nodiscard]] Json of(const TypedNumber& number);
[[nodiscard]] Json of(const Message& message);
[[nodiscard]] Json of(const Stamp& stamp);
[[nodiscard]] Json of(const Place& place);
[[nodiscard]] Json of(const Personal& personal);
[[nodiscard]] Json of(const job::InstrumentUsed& instrument);
[[nodiscard]] Json of(const job::LimitUsed& limit);
[[nodiscard]] Json of(const ReadingLine& line);
[[nodiscard]] Json of(const JobHead& head);
[[nodiscard]] Json of(const Vehicle& vehicle);
[[nodiscard]] Json of(const ShimUse& use);
[[nodiscard]] Json of(const OldShim& shim);
[[nodiscard]] Json of(const FloatSeries& series);
[[nodiscard]] Json of(const TeachIn& attempt);
[[nodiscard]] Json of(const PartLine& part);
[[nodiscard]] Json of(const Deviation& deviation);
[[nodiscard]] Json of(const Disagreement& disagreement);
[[nodiscard]] Json of(const NotMeasured& line);
[[nodiscard]] Json of(const Answer& answer);
[[nodiscard]] Json of(const Confirmation& confirmation);
[[nodiscard]] Json of(const Photo& photo);
[[nodiscard]] Json of(const Signature& signature);
[[nodiscard]] Json of(const NoteLine& note);
[[nodiscard]] Json of(const Stop& stop);
[[nodiscard]] Json of(const Assembly& assembly);
[[nodiscard]] Json of(const TakenBack& line);
[[nodiscard]] Json of(const WorkValueLine& line);

template <class Part>
[[nodiscard]] Json list_of(const std::vector<Part>& parts) {
  Json list = Json::array();
  for (const Part& part : parts) {
    list.push_back(of(part));
  }
  return list;
}

/// Nothing where there is nothing.
template <class Part>
void put(Json& object, const char* key, const std::optional<Part>& part) {
  if (part) {
    if constexpr (std::is_arithmetic_v<Part> || std::is_same_v<Part, std::string>) {
      object[key] = *part;
    } else {
      object[key] = of(*part);
    }
  }
}

}  // namespace shimwright::record::parts_json
