#include "shimwright/vehicle/vehicle_number.h"

namespace shimwright::vehicle {

nlohmann::json to_json(const VinNumber& number) {
  nlohmann::json notes = nlohmann::json::array();
  for (const VinNote note : number.notes) {
    notes.push_back(std::string(name_of(note)));
  }
  return {{"typed", number.typed},
          {"kind", "vin"},
          {"key", number.key},
          {"check_digit",
           {{"expected", std::string(1, number.check_digit.expected)},
            {"given", std::string(1, number.check_digit.given)},
            {"fits", number.check_digit.fits()}}},
          {"notes", std::move(notes)},
          {"model_years", number.model_years}};
}

nlohmann::json to_json(const VinRefusal& refusal) {
  nlohmann::json answer = {
      {"typed", refusal.typed}, {"kind", "refused"}, {"reason", std::string(name_of(refusal.reason))}};
  if (refusal.suggestion) {
    answer["suggestion"] = *refusal.suggestion;
  }
  return answer;
}

nlohmann::json to_json(const ChassisNumber& number) {
  return {{"typed", number.text}, {"kind", "chassis"}, {"key", number.key}, {"reason", number.reason}};
}

}  // namespace shimwright::vehicle
