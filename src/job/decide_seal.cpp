#include <algorithm>

#include "desk.h"
#include "shimwright/job/to_decide.h"

namespace shimwright::job {

namespace {

bool is_digest(const std::string& text) {
  return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

}  // namespace

Bodies decide_on(const Desk& desk, const SealJob& command) {
  for (const OpenPoint& point : to_decide(desk.state)) {
    if (keeps_from_sealing(point)) {
      return refuse("not_decided", point.step, point.message.text, point.message.arguments);
    }
  }
  if (!is_digest(command.digest)) {
    return refuse("bad_digest", "seal",
                  SHIMWRIGHT_TEXT("job", "What was signed has no digest of its own: report this fault."));
  }
  if (command.signers != signers_of(desk.state)) {
    return refuse("other_signers", "seal",
                  SHIMWRIGHT_TEXT("job", "A job is sealed by those who signed it: the technician, then the checker."));
  }
  return std::vector<EntryBody>{Sealed{command.digest, command.signers}};
}

Bodies decide_on(const Desk& desk, const AddAddendum& command) {
  if (!desk.state.sealed) {
    return refuse("not_sealed", "addendum",
                  SHIMWRIGHT_TEXT("job", "This job is not sealed: enter it in the job itself."));
  }
  if (is_blank(command.text)) {
    return refuse("text_missing", "addendum/text",
                  SHIMWRIGHT_TEXT("job", "The addendum is empty: write what is to be added."));
  }
  auto reason = reason_given("addendum/reason", command.reason);
  if (!reason) {
    return tl::make_unexpected(reason.error());
  }
  return std::vector<EntryBody>{AddendumAdded{*reason, command.text}};
}

}  // namespace shimwright::job
