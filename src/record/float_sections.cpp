#include <algorithm>
#include <set>

#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

std::string value_text(const FloatRunLine& run) {
  return quantity::with_true_minus(quantity::millimetre_text(run.value, run.decimals));
}

std::string derived_text(const std::optional<std::int64_t>& micrometres) {
  return micrometres ? millimetre_digits(*micrometres) : "";
}

std::string series_title(const FloatSeries& series, bool with_runs) {
  if (series.as_found) {
    return say(SHIMWRIGHT_TEXT("record", "{0} as found"), {disc_word(series.side)});
  }
  std::string title = disc_word(series.side) + ", " + std::to_string(series.place.assembly);
  if (series.reason == job::SeriesReason::seated_again) {
    title += SHIMWRIGHT_TEXT("record", ", seated again");
  } else if (series.reason == job::SeriesReason::measure_again) {
    title += SHIMWRIGHT_TEXT("record", ", measured again");
  } else if (with_runs && !series.latest) {
    std::size_t runs = 0;
    for (const FloatSpot& spot : series.spots) {
      runs = std::max(runs, spot.runs.size());
    }
    title += runs > 1 ? say(SHIMWRIGHT_TEXT("record", ", runs 1 to {0}"), {std::to_string(runs)}) : "";
  }
  return title;
}

int most_spots(const Record& record) {
  int most = 3;
  for (const FloatSeries& series : record.floats) {
    most = series.spots.empty() ? most : std::max(most, series.spots.back().spot);
  }
  return most;
}

std::string spot_text(const FloatSeries& series, int number) {
  for (const FloatSpot& spot : series.spots) {
    if (spot.spot == number) {
      std::vector<std::string> values;
      for (const FloatRunLine& run : spot.runs) {
        values.push_back(value_text(run));
      }
      return joined(values, ", ");
    }
  }
  return series.series == 1 ? SHIMWRIGHT_TEXT("record", "not measured") : SHIMWRIGHT_TEXT("record", "as before");
}

std::string instruments_and_people(const FloatSeries& series, const Record& record) {
  std::vector<std::string> instruments;
  std::vector<std::string> people;
  Stamp last;
  for (const FloatSpot& spot : series.spots) {
    for (const FloatRunLine& run : spot.runs) {
      instruments.push_back(run.instrument ? run.instrument->name : "");
      people.push_back(run.stamp.initials);
      last = run.stamp.entry > last.entry ? run.stamp : last;
    }
  }
  return joined({joined(each_once(instruments), ", "), joined(each_once(people), ", "),
                 short_time(last.moment, record.job.opened.moment)},
                ", ");
}

Cell judgement_cell(const FloatSeries& series) {
  if (series.as_found) {
    return {SHIMWRIGHT_TEXT("record", "for information"), FontRole::body, Ink::soft, std::nullopt};
  }
  if (!series.judged || series.judged->spot_verdicts.empty()) {
    return {SHIMWRIGHT_TEXT("record", "not judged"), FontRole::body, Ink::soft, std::nullopt};
  }
  return disc_verdict_cell(disc_verdict(series.judged->spot_verdicts));
}

std::vector<Cell> series_row(const FloatSeries& series, const Record& record, int spots) {
  const FontRole role = series.latest ? FontRole::strong : FontRole::body;
  std::vector<Cell> row = {{series_title(series, true), role}};
  for (int spot = 1; spot <= spots; ++spot) {
    row.push_back({spot_text(series, spot)});
  }
  row.push_back({series.judged ? derived_text(series.judged->spread) : ""});
  row.push_back({series.judged ? derived_text(series.judged->expanded_u) : ""});
  row.push_back(judgement_cell(series));
  row.push_back({instruments_and_people(series, record)});
  return row;
}

std::vector<Column> float_columns(int spots) {
  std::vector<Column> columns = {{SHIMWRIGHT_TEXT("record", "Disc, assembly"), Align::left, true}};
  for (int spot = 1; spot <= spots; ++spot) {
    columns.push_back({say(SHIMWRIGHT_TEXT("record", "Spot {0}"), {std::to_string(spot)}), Align::right, spots > 3});
  }
  columns.push_back({SHIMWRIGHT_TEXT("record", "Spread"), Align::right});
  columns.push_back({SHIMWRIGHT_TEXT("record", "± (95 %)"), Align::right});
  columns.push_back({SHIMWRIGHT_TEXT("record", "Verdict")});
  columns.push_back({SHIMWRIGHT_TEXT("record", "Instrument, by, time"), Align::left, true});
  return columns;
}

std::string limits_text(const FloatLimits& limits) {
  return say(SHIMWRIGHT_TEXT("record", "limits {0} to {1}, spread at most {2}"),
             {millimetre_digits(limits.least.count()), millimetre_digits(limits.most.count()),
              millimetre_digits(limits.max_spread.count())});
}

/// Limits as the spec sheet has them for each side, once where both are alike.
std::string float_heading(const Record& record) {
  std::set<std::string> lower;
  std::set<std::string> upper;
  for (const FloatSeries& series : record.floats) {
    (series.side == Side::lower ? lower : upper).insert(limits_text(series.limits));
  }
  const std::string title = SHIMWRIGHT_TEXT("record", "Float, mm");
  if (lower.empty() || upper.empty() || lower == upper) {
    const auto& there = lower.empty() ? upper : lower;
    return there.empty() ? title : title + ": " + *there.begin();
  }
  return title + ": " + say(SHIMWRIGHT_TEXT("record", "lower {0}; upper {1}"), {*lower.begin(), *upper.begin()});
}

std::string digits(const TypedNumber& number) {
  const bool plain = number.unit == quantity::Unit::millimetre;
  return quantity::with_true_minus(plain ? quantity::digits_of(number) : quantity::text_of(number));
}

/// One run on one line: no break within it.
std::string run_text(const FloatRunLine& run) {
  const std::string zero = run.zero_after ? digits(*run.zero_after) : SHIMWRIGHT_TEXT("record", "not looked at");
  std::string text = digits(run.rest) + " to " + digits(run.lifted) + " (" + zero + ")";
  for (auto at = text.find(' '); at != std::string::npos; at = text.find(' ', at)) {
    text.replace(at, 1, "\u00A0");
  }
  return text;
}

std::vector<Cell> runs_row(const FloatSeries& series, const Record& record, int spots) {
  std::vector<Cell> row = {{series_title(series, false)}};
  for (int spot = 1; spot <= spots; ++spot) {
    std::vector<std::string> runs;
    for (const FloatSpot& each : series.spots) {
      for (const FloatRunLine& run : each.spot == spot ? each.runs : std::vector<FloatRunLine>{}) {
        runs.push_back(run_text(run));
      }
    }
    row.push_back({joined(runs, ", ")});
  }
  row.push_back({instruments_and_people(series, record)});
  return row;
}

}  // namespace

void write_floats(PageWriter& writer, const Record& record) {
  Table table;
  const int spots = most_spots(record);
  table.columns = float_columns(spots);
  for (const FloatSeries& series : record.floats) {
    table.rows.push_back(series_row(series, record, spots));
  }
  write_table(writer, float_heading(record), table);
}

void write_float_runs(PageWriter& writer, const Record& record) {
  Table table;
  table.padding_mm = 0.5;
  const int spots = most_spots(record);
  table.columns = {{SHIMWRIGHT_TEXT("record", "Disc, assembly"), Align::left, true}};
  for (int spot = 1; spot <= spots; ++spot) {
    table.columns.push_back({say(SHIMWRIGHT_TEXT("record", "Spot {0}"), {std::to_string(spot)}), Align::left, true});
  }
  table.columns.push_back({SHIMWRIGHT_TEXT("record", "Instrument, by, time")});
  for (const FloatSeries& series : record.floats) {
    table.rows.push_back(runs_row(series, record, spots));
  }
  write_table(writer, SHIMWRIGHT_TEXT("record", "Float, every run as entered, mm: rest to lifted (zero after)"), table);
}

}  // namespace shimwright::record
