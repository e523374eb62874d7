#include "shimwright/record/summary.h"

#include "wording.h"

namespace shimwright::record {

namespace {

std::string result_sentence(const Record& record) {
  std::vector<std::string> sentences;
  for (const Message& message : record.result) {
    sentences.push_back(message.in_english());
  }
  return joined(sentences, " ");
}

std::string trials_text(const ShimUse& use) {
  std::vector<std::string> told;
  for (const Trial& trial : use.trials) {
    told.push_back(trial.shim + " " + word_of(trial.fit));
  }
  return joined(told, ", ");
}

std::string how(const ShimUse& use) {
  if (!use.trials.empty()) {
    return say(SHIMWRIGHT_TEXT("record", "after the trials {0}"), {trials_text(use)});
  }
  if (!use.depths.empty()) {
    std::vector<std::string> readings;
    for (const TypedNumber& reading : use.depths.back().readings) {
      readings.push_back(quantity::printed_text_of(reading));
    }
    return say(SHIMWRIGHT_TEXT("record", "from the depths {0}"), {joined(readings, ", ")});
  }
  return SHIMWRIGHT_TEXT("record", "without trials or depths");
}

std::vector<std::string> numbers(const std::vector<int>& assemblies) {
  std::vector<std::string> texts;
  for (const int assembly : assemblies) {
    texts.push_back(std::to_string(assembly));
  }
  return texts;
}

/// Which shim was fitted and what it stood on.
std::string shim_sentence(const ShimUse& use) {
  const std::string which = say(SHIMWRIGHT_TEXT("record", "{0} bearing, assembly {1}"),
                                {bearing_word(use.side), joined(numbers(use.assemblies), ", ")});
  if (use.choices.empty()) {
    return say(SHIMWRIGHT_TEXT("record", "{0}: no shim chosen yet, {1}."), {which, how(use)});
  }
  const ShimChoice& choice = use.choices.back();
  std::string text = say(SHIMWRIGHT_TEXT("record", "{0}: shim {1}, {2}."), {which, choice.shim, how(use)});
  if (choice.chance_percent) {
    text += " " + say(SHIMWRIGHT_TEXT("record", "Chance that it is the best fitting one: {0} %."),
                      {std::to_string(*choice.chance_percent)});
  }
  if (!use.advice.empty() && !use.advice.back().reason.text.empty()) {
    text += " " + use.advice.back().reason.in_english();
  }
  if (!choice.reason.empty()) {
    text += " " + say(SHIMWRIGHT_TEXT("record", "Reason given: “{0}”."), {choice.reason});
  }
  return text;
}

std::string float_sentence(const FloatSeries& series) {
  const std::string which =
      series.as_found
          ? say(SHIMWRIGHT_TEXT("record", "{0} disc as found"), {disc_word(series.side)})
          : say(SHIMWRIGHT_TEXT("record", "{0} disc, assembly {1}, series {2}"),
                {disc_word(series.side), std::to_string(series.place.assembly), std::to_string(series.series)});
  if (!series.judged || !series.judged->mean) {
    return say(SHIMWRIGHT_TEXT("record", "{0}: float not judged."), {which});
  }
  std::string text =
      say(SHIMWRIGHT_TEXT("record", "{0}: mean float {1} mm"), {which, millimetre_digits(*series.judged->mean)});
  if (!series.as_found) {
    text += ", " + disc_verdict_word(disc_verdict(series.judged->spot_verdicts));
  }
  return text + ". " + series.judged->reason.in_english();
}

}  // namespace

std::vector<std::string> summary(const Record& record) {
  std::vector<std::string> told = {result_sentence(record)};
  for (const ShimUse& use : record.shims) {
    told.push_back(shim_sentence(use));
  }
  for (const FloatSeries& series : record.floats) {
    told.push_back(float_sentence(series));
  }
  for (const Deviation& deviation : record.deviations) {
    told.push_back(
        say(SHIMWRIGHT_TEXT("record", "Deviation at “{0}”: “{1}”."), {deviation.place.title, deviation.reason}));
  }
  std::vector<std::string> missing;
  for (const NotMeasured& each : record.not_measured) {
    missing.push_back(each.place.title);
  }
  if (!missing.empty()) {
    told.push_back(say(SHIMWRIGHT_TEXT("record", "Not measured: {0}."), {joined(each_once(missing), "; ")}));
  }
  if (record.demonstration()) {
    told.emplace_back(SHIMWRIGHT_TEXT("record", "Limits and values are demonstration values."));
  }
  return told;
}

}  // namespace shimwright::record
