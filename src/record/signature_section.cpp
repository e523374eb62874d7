#include <algorithm>

#include "qr_code.h"
#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

constexpr double code_mm = 28;
constexpr double code_below_top_mm = 2.5;  // white above it, as a camera needs
constexpr double blank_gap_mm = 5;
constexpr double line_below_top_mm = 16.5;
constexpr double pitch_mm = 3.7;
constexpr double above_foot_mm = 1.6;

std::string person_of(const Record& record, const Stamp& stamp) {
  for (const auto& [id, person] : record.job.people) {
    if (id == stamp.person && !person.name.empty()) {
      return person.name + ", " + stamp.initials;
    }
  }
  return stamp.initials;
}

std::string caption(const Record& record, sheet::Signer signer) {
  std::string text = signer_word(signer);
  for (const Signature& signature : record.signatures) {
    if (signature.signer == signer) {
      text = signer_word(signer) + " " + person_of(record, signature.stamp) + ", " + date_time(signature.stamp.moment);
    }
  }
  return text;
}

std::string sealed_words(const Record& record, const SealMark& seal) {
  std::vector<std::string> words;
  if (seal.reprint) {
    words.emplace_back(SHIMWRIGHT_TEXT("record", "Reprint: printed again after it was sealed."));
  }
  if (!record.addenda.empty()) {
    words.push_back(counted(record.addenda.size(), SHIMWRIGHT_TEXT("record", "One addendum stands at the end."),
                            SHIMWRIGHT_TEXT("record", "{0} addenda stand at the end.")));
  }
  return joined(words, " ");
}

std::vector<Span> foot(const Record& record) {
  std::vector<Span> spans;
  const auto small = [&](const std::string& text) { spans.push_back({text + " ", FontRole::small, Ink::soft}); };
  if (const auto& seal = record.seal; seal && seal->check.standing == SealStanding::changed) {
    spans.push_back({say(SHIMWRIGHT_TEXT("record", "The seal of {0} does not hold: changed after it was signed: {1}."),
                         {date_time(seal->moment), seal->check.place}) +
                         " ",
                     FontRole::strong, Ink::text});
  } else if (seal) {
    small(say(SHIMWRIGHT_TEXT("record", "Sealed {0} as"), {date_time(seal->moment)}));
    spans.push_back({seal->groups + ". ", FontRole::strong, Ink::text});
    if (seal->check.standing == SealStanding::key_unknown) {
      spans.push_back({say(SHIMWRIGHT_TEXT("record", "The key of {0} is not known here, or was no longer valid then."),
                           {seal->check.place}) +
                           " ",
                       FontRole::strong, Ink::text});
    }
    small(sealed_words(record, *seal));
  } else {
    small(SHIMWRIGHT_TEXT("record", "Not sealed: a draft that may still change."));
  }
  small(record.demonstration()
            ? SHIMWRIGHT_TEXT("record",
                              "Limits and values are demonstration values: never work to them on a vehicle; "
                              "the vehicle maker's service information and local rules hold.")
            : SHIMWRIGHT_TEXT("record", "The vehicle maker's service information and local rules hold."));
  return spans;
}

/// What the section holds, broken into lines, and how high that makes it.
struct SignatureBlock {
  double column_mm = 0;
  std::vector<std::vector<std::string>> captions;
  std::vector<FlowLine> foot_lines;
  double foot_below_top_mm = 0;

  [[nodiscard]] double height_mm() const {
    return foot_below_top_mm + pitch_mm * static_cast<double>(foot_lines.size()) + 0.8;
  }
};

SignatureBlock block_of(const PageWriter& writer, const Record& record) {
  SignatureBlock block;
  block.column_mm = (writer.width() - code_mm - 3 * blank_gap_mm) / 3;
  double lowest = code_below_top_mm + code_mm;
  for (const std::string& text : {caption(record, sheet::Signer::technician), caption(record, sheet::Signer::checker),
                                  std::string(SHIMWRIGHT_TEXT("record", "Customer"))}) {
    block.captions.push_back(wrapped(text, FontRole::small, block.column_mm, writer.measure()));
    const double lines = static_cast<double>(block.captions.back().size());
    lowest = std::max(lowest, line_below_top_mm + pitch_mm * lines + 1);
  }
  block.foot_lines = flow(foot(record), writer.width(), writer.measure());
  block.foot_below_top_mm = lowest + above_foot_mm;
  return block;
}

void write_captions(PageWriter& writer, const SignatureBlock& block, double top) {
  double x = writer.left();
  for (const auto& lines : block.captions) {
    writer.line(x, top + line_below_top_mm, x + block.column_mm, top + line_below_top_mm, 0.25, Ink::text);
    double baseline = top + line_below_top_mm + 3.8;
    for (const std::string& line : lines) {
      writer.text(x, baseline, line, FontRole::small, Ink::soft);
      baseline += pitch_mm;
    }
    x += block.column_mm + blank_gap_mm;
  }
}

void write_kept_place(PageWriter& writer, const Box& box, const std::string& above, const std::string& below) {
  writer.add(KeptPlace{box, KeptFor::seal_code});
  writer.add(Rectangle{box, std::nullopt, Ink::hair});
  const double middle = box.x_mm + code_mm / 2;
  writer.centred(middle, box.y_mm + code_mm / 2 - 0.8, above, FontRole::small, Ink::soft);
  writer.centred(middle, box.y_mm + code_mm / 2 + 2.9, below, FontRole::small, Ink::soft);
}

void write_foot(PageWriter& writer, const SignatureBlock& block, double top) {
  double baseline = top + block.foot_below_top_mm + pitch_mm * 0.72;
  for (const FlowLine& line : block.foot_lines) {
    for (const FlowLine::Part& part : line.parts) {
      writer.text(writer.left() + part.x_mm, baseline, part.span.text, part.span.role, part.span.ink);
    }
    baseline += pitch_mm;
  }
}

}  // namespace

double signatures_mm(const PageWriter& writer, const Record& record) {
  return block_of(writer, record).height_mm();
}

void write_signatures(PageWriter& writer, const Record& record, double above_bottom_mm) {
  const SignatureBlock block = block_of(writer, record);
  writer.go_to_bottom(block.height_mm() + above_bottom_mm);
  const double top = writer.y();
  write_captions(writer, block, top);
  const Box box{writer.right() - code_mm, top + code_below_top_mm, code_mm, code_mm};
  if (!record.seal) {
    write_kept_place(writer, box, SHIMWRIGHT_TEXT("record", "not sealed:"), SHIMWRIGHT_TEXT("record", "draft"));
  } else if (record.seal->check.standing == SealStanding::changed) {
    write_kept_place(writer, box, SHIMWRIGHT_TEXT("record", "the seal"), SHIMWRIGHT_TEXT("record", "does not hold"));
  } else {
    writer.add(qr_code(record.seal->code, box));
  }
  write_foot(writer, block, top);
  writer.piece(block.height_mm());
}

}  // namespace shimwright::record
