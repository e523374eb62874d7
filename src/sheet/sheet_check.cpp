#include "shimwright/sheet/sheet_check.h"

namespace shimwright::sheet {

Result<bool> check_counts(const OnDay& entered, const OnDay& checked) {
  if (checked.person.empty()) {
    return refuse("nobody", "", SHIMWRIGHT_TEXT("sheet", "Say first who is at the bench: a check has a name."));
  }
  const bool second_person = checked.person != entered.person;
  // ISO dates sort as the calendar does. A clock that was set back proves nothing, so the other day is a later one.
  if (!second_person && checked.day <= entered.day) {
    return refuse("check_too_soon", "",
                  SHIMWRIGHT_TEXT("sheet",
                                  "Who entered a sheet checks it on a later day, with fresh eyes; another person can "
                                  "check it today."));
  }
  return second_person;
}

}  // namespace shimwright::sheet
