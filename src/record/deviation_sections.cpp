#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

std::string deviation_text(const Deviation& deviation, const Record& record) {
  const std::string_view pattern = deviation.left_out ? SHIMWRIGHT_TEXT("record", "{0}: left out by {1}, “{2}”.")
                                                      : SHIMWRIGHT_TEXT("record", "{0}: accepted by {1}, “{2}”.");
  std::string title = deviation.place.title;
  if (deviation.place.assembly > 1 && !deviation.place.once) {
    title += say(SHIMWRIGHT_TEXT("record", ", assembly {0}"), {assembly_number(deviation.place)});
  }
  std::vector<std::string> found;
  for (const Message& message : deviation.found) {
    found.push_back(message.in_english());
  }
  title += found.empty() ? "" : " (" + joined(found, "; ") + ")";
  return say(pattern, {title, who_when(deviation.stamp, record.job.opened.moment), deviation.reason});
}

std::string disagreement_text(const Disagreement& each, const Record& record) {
  return say(SHIMWRIGHT_TEXT("record", "{0} disc, assembly {1}, series {2}: trials and float did not agree ({3}). {4}"),
             {disc_word(each.side), std::to_string(each.assembly), std::to_string(each.series),
              who_when(each.stamp, record.job.opened.moment), each.reason.in_english()});
}

std::string not_measured_text(const NotMeasured& each, const Record& record) {
  const std::string_view pattern = each.why == WhyNotMeasured::deviation
                                       ? SHIMWRIGHT_TEXT("record", "{0}: not measured, left out by {1}, “{2}”.")
                                       : SHIMWRIGHT_TEXT("record", "{0}: not measured, not required: “{2}”, {1}.");
  const std::string who = each.stamp ? who_when(*each.stamp, record.job.opened.moment) : "";
  return say(pattern, {each.place.title, who, each.reason});
}

}  // namespace

void write_deviations(PageWriter& writer, const Record& record) {
  if (!record.deviations.empty()) {
    writer.heading(SHIMWRIGHT_TEXT("record", "Deviations"), 2 * body_pitch_mm);
    writer.gap(0.8);
    for (const Deviation& deviation : record.deviations) {
      writer.paragraph({{deviation_text(deviation, record)}}, body_pitch_mm);
    }
  }
  if (!record.disagreements.empty()) {
    writer.heading(SHIMWRIGHT_TEXT("record", "Trials against float"), 2 * body_pitch_mm);
    writer.gap(0.8);
    for (const Disagreement& each : record.disagreements) {
      writer.paragraph({{disagreement_text(each, record)}}, body_pitch_mm);
    }
  }
}

void write_not_measured(PageWriter& writer, const Record& record) {
  if (record.not_measured.empty()) {
    return;
  }
  writer.heading(SHIMWRIGHT_TEXT("record", "Not measured"), 2 * body_pitch_mm);
  writer.gap(0.8);
  std::vector<std::string> not_done;
  for (const NotMeasured& each : record.not_measured) {
    if (each.why == WhyNotMeasured::not_done) {
      not_done.push_back(each.place.title);
    } else {
      writer.paragraph({{not_measured_text(each, record)}}, body_pitch_mm);
    }
  }
  if (!not_done.empty()) {
    writer.paragraph({{say(record.job.closed ? SHIMWRIGHT_TEXT("record", "No reason given: {0}.")
                                             : SHIMWRIGHT_TEXT("record", "So far: {0}."),
                           {joined(each_once(not_done), "; ")})}},
                     body_pitch_mm);
  }
}

}  // namespace shimwright::record
