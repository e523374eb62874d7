#include <algorithm>

#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

struct Fact {
  std::string label;
  std::string text;
  FontRole role = FontRole::body;
};

std::string shown(const std::optional<Personal>& personal, bool quoted) {
  if (!personal) {
    return SHIMWRIGHT_TEXT("record", "not given");
  }
  if (!personal->content) {
    return SHIMWRIGHT_TEXT("record", "erased");
  }
  return quoted ? say(SHIMWRIGHT_TEXT("record", "“{0}”"), {personal->content->text}) : personal->content->text;
}

std::vector<Fact> vehicle_facts(const Record& record) {
  const Vehicle& vehicle = record.vehicle;
  std::vector<Fact> facts;
  if (vehicle.chassis_reason) {
    facts.push_back({SHIMWRIGHT_TEXT("record", "Chassis no."), vehicle.key, FontRole::vehicle});
    facts.push_back({SHIMWRIGHT_TEXT("record", "No VIN because"), *vehicle.chassis_reason});
  } else {
    facts.push_back({SHIMWRIGHT_TEXT("record", "VIN"), vehicle.key, FontRole::vehicle});
  }
  const std::string odometer =
      vehicle.odometer ? quantity::text_of(*vehicle.odometer) : SHIMWRIGHT_TEXT("record", "odometer not read");
  facts.push_back({SHIMWRIGHT_TEXT("record", "Plate, odometer"), shown(vehicle.plate, false) + ", " + odometer});
  std::string gearbox = say(SHIMWRIGHT_TEXT("record", "unit {0}"), {vehicle.gearbox});
  if (vehicle.gearbox_serial) {
    gearbox += ", " + say(SHIMWRIGHT_TEXT("record", "serial {0}"), {*vehicle.gearbox_serial});
  }
  if (vehicle.build_date) {
    gearbox += ", " + say(SHIMWRIGHT_TEXT("record", "built {0}"), {*vehicle.build_date});
  }
  facts.push_back({SHIMWRIGHT_TEXT("record", "Gearbox"), gearbox});
  return facts;
}

std::string limits_source(const Record& record) {
  const SheetHead& spec = record.job.spec;
  const std::string head =
      say(SHIMWRIGHT_TEXT("record", "spec sheet {0}, issue {1}"), {spec.name, std::to_string(spec.issue)});
  const std::string source = spec.demonstration ? SHIMWRIGHT_TEXT("record", "demonstration values") : spec.source;
  return source.empty() ? head : head + ": " + source;
}

std::vector<Fact> job_facts(const Record& record) {
  std::string received = date_time(record.job.opened.moment) + ", " + record.job.opened.initials;
  if (record.vehicle.customer_reference) {
    received +=
        " · " + say(SHIMWRIGHT_TEXT("record", "reference {0}"), {shown(record.vehicle.customer_reference, false)});
  }
  return {{SHIMWRIGHT_TEXT("record", "Received"), received},
          {SHIMWRIGHT_TEXT("record", "Complaint"), shown(record.vehicle.complaint, true)},
          {SHIMWRIGHT_TEXT("record", "Limits from"), limits_source(record)}};
}

constexpr double opening_pitch_mm = 4.1;
constexpr double label_mm = 27;

std::size_t lines_of(const PageWriter& writer, const Fact& fact, double width_mm) {
  return wrapped(fact.text, fact.role, width_mm, writer.measure()).size();
}

void write_fact(PageWriter& writer, const Fact& fact, double x_mm, double width_mm) {
  double baseline = writer.y() + 3.9;
  writer.text(x_mm, baseline, fact.label, FontRole::body, Ink::soft);
  for (const std::string& line : wrapped(fact.text, fact.role, width_mm - label_mm, writer.measure())) {
    writer.text(x_mm + label_mm, baseline, line, fact.role);
    baseline += opening_pitch_mm;
  }
}

/// Two columns of facts; a long one falls to lines of its own, so that it can go over a page.
void write_facts(PageWriter& writer, const std::vector<Fact>& left, const std::vector<Fact>& right) {
  constexpr double inset_mm = 1.5;
  const double column = (writer.width() - 2 * inset_mm) / 2;
  for (std::size_t at = 0; at < std::max(left.size(), right.size()); ++at) {
    std::size_t lines = 1;
    for (const auto* side : {&left, &right}) {
      lines = at < side->size() ? std::max(lines, lines_of(writer, (*side)[at], column - label_mm - 2)) : lines;
    }
    const double height = static_cast<double>(lines) * opening_pitch_mm + 1.6;
    writer.need(height);
    if (at < left.size()) {
      write_fact(writer, left[at], writer.left() + inset_mm, column - 2);
    }
    if (at < right.size()) {
      write_fact(writer, right[at], writer.left() + inset_mm + column, column - 2);
    }
    writer.piece(height);
  }
}

}  // namespace

void write_result(PageWriter& writer, const Record& record) {
  writer.heading(SHIMWRIGHT_TEXT("record", "Result"), 12);
  writer.gap(0.6);
  std::vector<Span> spans;
  for (const Message& sentence : record.result) {
    const bool first = spans.empty();
    spans.push_back({(first ? "" : " ") + sentence.in_english(), first ? FontRole::result_strong : FontRole::result});
  }
  writer.paragraph(spans, 5.9);
  writer.gap(2);
  std::vector<Fact> right = job_facts(record);
  std::vector<Fact> long_ones;
  const double half = writer.width() / 2 - label_mm;
  for (Fact& fact : right) {
    if (lines_of(writer, fact, half - 5) > 4) {
      long_ones.push_back(std::exchange(fact, {fact.label, SHIMWRIGHT_TEXT("record", "below")}));
    }
  }
  write_facts(writer, vehicle_facts(record), right);
  for (const Fact& fact : long_ones) {
    writer.paragraph({{fact.label + ": ", FontRole::body, Ink::soft}, {fact.text}}, opening_pitch_mm);
  }
}

}  // namespace shimwright::record
