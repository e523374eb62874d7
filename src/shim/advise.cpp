#include "shimwright/shim/advise.h"

namespace shimwright::shim {

AdviseAnswer advise(const CheckedCase& checked_case) {
  const AdviseCase& content = checked_case.content();
  AdviseAnswer answer;
  if (content.gauge_fit) {
    answer.gauge_fit = advise_gauge_fit(content.tray, *content.gauge_fit);
  }
  if (content.depth) {
    answer.depth = advise_depth(content.tray, *content.depth);
  }
  if (content.disc_float) {
    answer.disc_float = advise_float(content.tray, *content.disc_float);
  }
  if (content.gauge_fit && content.disc_float && answer.disc_float) {
    answer.cross_check = cross_check(content.tray, *content.gauge_fit, *content.disc_float, *answer.disc_float);
  }
  return answer;
}

std::string_view engine_version() {
  return "1";
}

}  // namespace shimwright::shim
