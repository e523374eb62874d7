#include "gather.h"
#include "wording.h"

namespace shimwright::record {

namespace {

/// A short sentence for each kind of entry, its digits as typed.
class Teller {
 public:
  Teller(const Source& source, std::vector<Message>& told) : source_(source), told_(told) {}

  void operator()(const job::Opened&) const { tell(SHIMWRIGHT_TEXT("record", "Job opened")); }
  void operator()(const job::Done&) const { tell(SHIMWRIGHT_TEXT("record", "Done")); }
  void operator()(const job::Checked& checked) const {
    checked.in_order ? tell(SHIMWRIGHT_TEXT("record", "In order"))
                     : tell(SHIMWRIGHT_TEXT("record", "Not in order: {0}"), {checked.finding});
  }
  void operator()(const job::Chosen& chosen) const { tell("{0}", {chosen.choice}); }
  void operator()(const job::Read& read) const {
    for (const job::Reading& reading : read.readings) {
      tell_reading(read.at.step, reading);
    }
  }
  void operator()(const job::PeakRead& peak) const { tell_reading(peak.at.step, peak.reading); }
  void operator()(const job::PartsFitted& fitted) const {
    for (const job::PartFitted& part : fitted.parts) {
      tell(SHIMWRIGHT_TEXT("record", "{0}, number {1}, quantity {2} {3}"),
           {part.part, part.number, std::to_string(part.quantity), part.batch});
    }
  }
  void operator()(const job::PhotoTaken& photo) const { tell(SHIMWRIGHT_TEXT("record", "Photo {0}"), {photo.caption}); }
  void operator()(const job::Written& written) const { tell("{0}", {written.text}); }
  void operator()(const job::ShimTried& tried) const {
    tell(SHIMWRIGHT_TEXT("record", "Shim {0} {1}"), {tried.shim, word_of(tried.fit)});
  }
  void operator()(const job::DepthsRead& depths) const {
    std::vector<std::string> digits;
    for (const TypedNumber& reading : depths.readings) {
      digits.push_back(quantity::printed_text_of(reading));
    }
    tell(SHIMWRIGHT_TEXT("record", "Depths {0}, reference {1}"),
         {joined(digits, ", "), quantity::printed_text_of(depths.reference)});
    if (depths.stamp) {
      tell(SHIMWRIGHT_TEXT("record", "Stamp {0}"), {quantity::signed_text_of(*depths.stamp)});
    }
  }
  void operator()(const job::FloatRun& run) const {
    tell(SHIMWRIGHT_TEXT("record", "Spot {0}: rest {1}, lifted {2}"),
         {std::to_string(run.spot), quantity::printed_text_of(run.rest), quantity::printed_text_of(run.lifted)});
    if (run.zero_after) {
      tell(SHIMWRIGHT_TEXT("record", "Zero after {0}"), {quantity::printed_text_of(*run.zero_after)});
    }
  }
  void operator()(const job::SeriesBegun& begun) const {
    tell(SHIMWRIGHT_TEXT("record", "Series {0} begun"), {std::to_string(begun.series)});
  }
  void operator()(const job::Confirmed& confirmed) const {
    tell(SHIMWRIGHT_TEXT("record", "Confirmed as it stands: {0}"), {confirmed.remark});
  }
  void operator()(const job::Advised& advised) const { told_.push_back(advised.reason); }
  void operator()(const job::ShimChosen& chosen) const {
    tell(SHIMWRIGHT_TEXT("record", "Shim {0} chosen"), {chosen.shim});
  }
  void operator()(const job::TeachInTried& tried) const {
    tell(SHIMWRIGHT_TEXT("record", "Teach-in, attempt {0}"), {std::to_string(tried.attempt)});
    for (const job::AttemptValue& value : tried.values) {
      if (value.before) {
        tell(SHIMWRIGHT_TEXT("record", "{0} before {1}"),
             {channel_title(source_, step_named(source_, tried.at.step), value.channel),
              quantity::printed_text_of(*value.before)});
      }
      if (value.after) {
        tell(SHIMWRIGHT_TEXT("record", "{0} after {1}"),
             {channel_title(source_, step_named(source_, tried.at.step), value.channel),
              quantity::printed_text_of(value.after->number)});
      }
    }
  }
  void operator()(const job::Signed&) const { tell(SHIMWRIGHT_TEXT("record", "Signed")); }
  void operator()(const job::Deviated& deviated) const {
    tell(SHIMWRIGHT_TEXT("record", "Deviation: {0}"), {deviated.reason});
  }
  void operator()(const job::NotRequired& said) const {
    tell(SHIMWRIGHT_TEXT("record", "Not required: {0}"), {said.reason});
  }
  void operator()(const job::Withdrawn&) const { tell(SHIMWRIGHT_TEXT("record", "Taken back")); }
  void operator()(const job::Noted& note) const { tell(SHIMWRIGHT_TEXT("record", "Note: {0}"), {note.text}); }
  void operator()(const job::Parked& parked) const {
    tell(SHIMWRIGHT_TEXT("record", "Parked: {0}"), {parked.waits_for});
  }
  void operator()(const job::TakenUp&) const { tell(SHIMWRIGHT_TEXT("record", "Taken up")); }
  void operator()(const job::HandedOver& handed) const {
    tell(SHIMWRIGHT_TEXT("record", "Handed over to {0}"), {initials_of(source_, handed.to)});
  }
  void operator()(const job::AssemblyBegun& begun) const {
    tell(SHIMWRIGHT_TEXT("record", "Assembly {0} begun: {1}"), {std::to_string(begun.assembly), begun.reason});
  }
  void operator()(const job::Sealed&) const { tell(SHIMWRIGHT_TEXT("record", "Sealed")); }
  void operator()(const job::AddendumAdded& addendum) const {
    tell(SHIMWRIGHT_TEXT("record", "Addendum: {0}"), {addendum.text});
  }

 private:
  void tell(std::string_view pattern, std::vector<std::string> arguments = {}) const {
    told_.push_back({std::string(pattern), std::move(arguments)});
  }
  void tell_reading(const std::string& step, const job::Reading& reading) const {
    const sheet::Channel* channel = channel_named(step_named(source_, step), reading.channel);
    const std::string title = channel_title(source_, step_named(source_, step), reading.channel);
    const bool has_sign = channel != nullptr && channel->signed_value;
    tell("{0} {1}",
         {title, has_sign ? quantity::signed_text_of(reading.number) : quantity::printed_text_of(reading.number)});
  }

  const Source& source_;
  std::vector<Message>& told_;
};

}  // namespace

std::vector<Message> what_was_entered(const Source& source, const job::Entry& entry) {
  std::vector<Message> told;
  std::visit(Teller(source, told), entry.body);
  return told;
}

}  // namespace shimwright::record
