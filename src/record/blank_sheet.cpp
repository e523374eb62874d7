#include "shimwright/record/blank_sheet.h"

#include <variant>

#include "page_writer.h"
#include "wording.h"

namespace shimwright::record {

namespace {

constexpr double indent_mm = 8;
constexpr double box_mm = 4;
constexpr double pitch_of_lines_mm = 6.4;

std::string blank_of(const sheet::Channel& channel, const PaperLanguage& language, const std::string& when) {
  const std::string unit(quantity::symbol_of(channel.unit));
  return channel.title.in(language.code) + when + " ____________ " + unit;
}

/// What is to be filled in at a step, line by line.
class Blanks {
 public:
  explicit Blanks(const PaperLanguage& language) : language_(language) {}

  std::vector<std::string> operator()(const sheet::DoStep&) const { return {}; }
  std::vector<std::string> operator()(const sheet::CheckStep&) const {
    return {said(SHIMWRIGHT_TEXT("record", "In order / not in order, because ______________________________________"))};
  }
  std::vector<std::string> operator()(const sheet::ChooseStep& choose) const {
    std::vector<std::string> titles;
    for (const sheet::Choice& each : choose.choices) {
      titles.push_back(each.title.in(language_.code));
    }
    return {joined(titles, "  /  ")};
  }
  std::vector<std::string> operator()(const sheet::ReadStep& read) const {
    std::vector<std::string> lines;
    for (const sheet::Channel& each : read.channels) {
      lines.push_back(blank_of(each, language_, {}));
    }
    return lines;
  }
  std::vector<std::string> operator()(const sheet::PeakStep& peak) const {
    return {blank_of(peak.channel, language_, {}),
            said(SHIMWRIGHT_TEXT("record", "Further attempts ____________  ____________"))};
  }
  std::vector<std::string> operator()(const sheet::PartStep& part) const {
    return std::vector<std::string>(
        part.parts.size(), said(SHIMWRIGHT_TEXT("record", "Number ____________________  batch ____________________")));
  }
  std::vector<std::string> operator()(const sheet::PhotoStep&) const { return {}; }
  std::vector<std::string> operator()(const sheet::TextStep&) const {
    return {"______________________________________________________________"};
  }
  std::vector<std::string> operator()(const sheet::GaugeFitStep&) const {
    return {said(SHIMWRIGHT_TEXT("record", "Shim ________ tight / snug / loose · Shim ________ tight / snug / loose")),
            said(SHIMWRIGHT_TEXT("record", "Shim ________ tight / snug / loose · Shim ________ tight / snug / loose")),
            said(SHIMWRIGHT_TEXT("record", "Shim taken ____________ mm"))};
  }
  std::vector<std::string> operator()(const sheet::DepthStep&) const {
    return {said(SHIMWRIGHT_TEXT("record", "Depths ____________  ____________ mm · reference ____________ mm")),
            said(SHIMWRIGHT_TEXT("record", "Stamp, with its sign ____________ mm · shim taken ____________ mm"))};
  }
  std::vector<std::string> operator()(const sheet::FloatStep&) const {
    std::vector<std::string> lines;
    for (const char* spot : {"1", "2", "3", "1", "2", "3"}) {
      lines.push_back(language_.say(
          {SHIMWRIGHT_TEXT("record", "Spot {0}: rest ________ lifted ________ zero after ________"), {spot}}));
    }
    return lines;
  }
  std::vector<std::string> operator()(const sheet::TeachInStep& teach_in) const {
    std::vector<std::string> lines;
    for (const sheet::Channel& each : teach_in.channels) {
      lines.push_back(blank_of(each, language_, said(SHIMWRIGHT_TEXT("record", ", before"))));
      lines.push_back(blank_of(each, language_, said(SHIMWRIGHT_TEXT("record", ", after"))));
    }
    lines.push_back(
        said(SHIMWRIGHT_TEXT("record", "Attempts ______ · code and reason of an abort ____________________")));
    return lines;
  }
  std::vector<std::string> operator()(const sheet::SignStep&) const {
    return {
        said(SHIMWRIGHT_TEXT("record", "Name ______________________  time ______________  ______________________"))};
  }

 private:
  [[nodiscard]] std::string said(const char* pattern) const { return language_.say({pattern, {}}); }

  const PaperLanguage& language_;
};

struct PaperStep {
  std::vector<std::string> title;
  std::vector<std::string> cautions;
  std::vector<std::string> blanks;

  [[nodiscard]] double height() const {
    return static_cast<double>(title.size() + cautions.size()) * body_pitch_mm +
           static_cast<double>(blanks.size()) * pitch_of_lines_mm + 2.2;
  }
};

PaperStep paper_step(const sheet::Step& step, const PaperLanguage& language, const PageWriter& writer) {
  const double room = writer.width() - indent_mm;
  PaperStep lines;
  const std::string hold =
      step.hold_point ? language.say({SHIMWRIGHT_TEXT("record", " (hold point)"), {}}) : std::string();
  lines.title = wrapped(step.title.in(language.code) + hold, FontRole::strong, room, writer.measure());
  for (const sheet::Caution& caution : step.cautions) {
    const std::string text = language.say({SHIMWRIGHT_TEXT("record", "Caution: {0} {1}"),
                                           {caution.hazard.in(language.code), caution.precaution.in(language.code)}});
    for (std::string& line : wrapped(text, FontRole::small, room, writer.measure())) {
      lines.cautions.push_back(std::move(line));
    }
  }
  for (const std::string& blank : std::visit(Blanks(language), step.body)) {
    for (std::string& line : wrapped(blank, FontRole::body, room, writer.measure())) {
      lines.blanks.push_back(std::move(line));
    }
  }
  return lines;
}

void write_step(PageWriter& writer, const PaperStep& step) {
  const double height = step.height();
  writer.need(height);
  const double left = writer.left() + indent_mm;
  writer.add(Rectangle{{writer.left(), writer.y() + 0.4, box_mm, box_mm}, std::nullopt, Ink::edge});
  double y = writer.y();
  const auto put = [&](const std::vector<std::string>& lines, FontRole role, Ink ink, double pitch) {
    for (const std::string& line : lines) {
      writer.text(left, y + pitch * 0.78, line, role, ink);
      y += pitch;
    }
  };
  put(step.title, FontRole::strong, Ink::text, body_pitch_mm);
  put(step.cautions, FontRole::small, Ink::soft, body_pitch_mm);
  put(step.blanks, FontRole::body, Ink::text, pitch_of_lines_mm);
  writer.piece(height);
}

}  // namespace

std::vector<Page> lay_out_blank_sheet(const sheet::JobSheet& sheet, const PaperHead& head,
                                      const PaperLanguage& language, PaperSize paper, const TextMeasure& measure) {
  PageHead on_every_page;
  on_every_page.workshop = head.workshop_name;
  on_every_page.address = head.workshop_address;
  on_every_page.title = sheet.title.in(language.code);
  on_every_page.job = language.say({SHIMWRIGHT_TEXT("record", "Job ______________"), {}});
  on_every_page.place = language.say({SHIMWRIGHT_TEXT("record", "{0} · page {1} of {2}"), {}});
  on_every_page.mark =
      sheet.demonstration ? language.say({SHIMWRIGHT_TEXT("record", "DEMONSTRATION VALUES"), {}}) : std::string();
  PageWriter writer(paper, measure, on_every_page);
  writer.paragraph(
      {{language.say({SHIMWRIGHT_TEXT("record",
                                      "Vehicle number ______________________________  odometer ______________  gearbox "
                                      "______________________"),
                      {}}),
        FontRole::body, Ink::text}},
      pitch_of_lines_mm);
  for (const sheet::Stage& stage : sheet.stages) {
    const PaperStep first = paper_step(stage.steps.front(), language, writer);
    writer.heading(stage.title.in(language.code), first.height());
    for (const sheet::Step& step : stage.steps) {
      write_step(writer, paper_step(step, language, writer));
    }
  }
  return writer.finish();
}

}  // namespace shimwright::record
