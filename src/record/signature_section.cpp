#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

constexpr double code_mm = 23;
constexpr double blank_gap_mm = 5;

std::string caption(const Record& record, sheet::Signer signer) {
  std::string text = signer_word(signer);
  for (const Signature& signature : record.signatures) {
    if (signature.signer == signer) {
      text = signer_word(signer) + " " + signature.stamp.initials + ", " + date_time(signature.stamp.moment);
    }
  }
  return text;
}

void write_line(PageWriter& writer, const std::string& text, double x_mm, double width_mm, double y_mm) {
  writer.line(x_mm, y_mm, x_mm + width_mm, y_mm, 0.25, Ink::text);
  double baseline = y_mm + 3.8;
  for (const std::string& line : wrapped(text, FontRole::small, width_mm, writer.measure())) {
    writer.text(x_mm, baseline, line, FontRole::small, Ink::soft);
    baseline += 3.7;
  }
}

void write_kept_place(PageWriter& writer, double y_mm) {
  const Box box{writer.right() - code_mm, y_mm, code_mm, code_mm};
  writer.add(KeptPlace{box, KeptFor::seal_code});
  writer.add(Rectangle{box, std::nullopt, Ink::hair});
  const double middle = box.x_mm + code_mm / 2;
  writer.centred(middle, box.y_mm + code_mm / 2 - 0.8, SHIMWRIGHT_TEXT("record", "not sealed:"), FontRole::small,
                 Ink::soft);
  writer.centred(middle, box.y_mm + code_mm / 2 + 2.9, SHIMWRIGHT_TEXT("record", "draft"), FontRole::small, Ink::soft);
}

std::string foot(const Record& record) {
  const std::string draft = SHIMWRIGHT_TEXT("record", "Not sealed: a draft that may still change.");
  const std::string values =
      record.demonstration()
          ? SHIMWRIGHT_TEXT("record",
                            "Limits and values are demonstration values: never work to them on a vehicle; "
                            "the vehicle maker's service information and local rules hold.")
          : SHIMWRIGHT_TEXT("record", "The vehicle maker's service information and local rules hold.");
  return draft + " " + values;
}

}  // namespace

void write_signatures(PageWriter& writer, const Record& record) {
  writer.go_to_bottom(signatures_mm);
  const double top = writer.y();
  const double room = writer.width() - code_mm - 3 * blank_gap_mm;
  const double width = room / 3;
  const double line_y = top + 16.5;
  double x = writer.left();
  for (const std::string& text : {caption(record, sheet::Signer::technician), caption(record, sheet::Signer::checker),
                                  std::string(SHIMWRIGHT_TEXT("record", "Customer"))}) {
    write_line(writer, text, x, width, line_y);
    x += width + blank_gap_mm;
  }
  write_kept_place(writer, top + 1);
  double baseline = top + signatures_mm - 4.4;
  for (const std::string& line : wrapped(foot(record), FontRole::small, writer.width(), writer.measure())) {
    writer.text(writer.left(), baseline, line, FontRole::small, Ink::soft);
    baseline += 3.7;
  }
  writer.piece(signatures_mm);
}

}  // namespace shimwright::record
