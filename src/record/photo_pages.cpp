#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

constexpr double photo_height_mm = 104;
constexpr double photo_gap_mm = 3;

std::string photo_caption(const Photo& photo, const Record& record) {
  const std::string said = photo.caption.empty() ? std::string() : "“" + photo.caption + "”";
  std::vector<std::string> parts{photo.place.title};
  if (!said.empty()) {
    parts.push_back(said);
  }
  parts.push_back(who_when(photo.stamp, record.job.opened.moment));
  return joined(parts, ", ");
}

void write_photo(PageWriter& writer, const Photo& photo, const Record& record) {
  const auto lines = wrapped(photo_caption(photo, record), FontRole::body, writer.width(), writer.measure());
  const double text_mm = static_cast<double>(lines.size()) * body_pitch_mm;
  const auto picture = record.pictures.find(photo.sha256);
  const bool there = picture != record.pictures.end();
  const double height_mm = text_mm + (there ? photo_height_mm : body_pitch_mm);
  writer.gap(photo_gap_mm);
  writer.need(height_mm);
  double y = writer.y();
  for (const std::string& each : lines) {
    writer.text(writer.left(), y + body_pitch_mm * 0.72, each, FontRole::body);
    y += body_pitch_mm;
  }
  if (there) {
    writer.add(Picture{{writer.left(), y, writer.width(), photo_height_mm - photo_gap_mm}, picture->second});
  } else {
    writer.text(writer.left(), y + body_pitch_mm * 0.72,
                say(SHIMWRIGHT_TEXT("record", "Its file is missing or was changed, and is not shown.")), FontRole::body,
                Ink::brick);
  }
  writer.piece(height_mm);
}

}  // namespace

void write_photo_pages(PageWriter& writer, const Record& record) {
  if (!record.with_photos || record.photos.empty()) {
    return;
  }
  writer.new_page();
  writer.heading(SHIMWRIGHT_TEXT("record", "Photos"), body_pitch_mm);
  for (const Photo& photo : record.photos) {
    write_photo(writer, photo, record);
  }
}

}  // namespace shimwright::record
