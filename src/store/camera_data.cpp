#include "camera_data.h"

#include <QtEndian>

#include "exif_position.h"
#include "photos.h"

namespace shimwright::store {

namespace {

// Markers of T.81 table B.1, without the 0xFF before each.
constexpr uchar first_restart = 0xD0;
constexpr uchar last_restart = 0xD7;
constexpr uchar image_start = 0xD8;
constexpr uchar image_end = 0xD9;
constexpr uchar scan_start = 0xDA;
constexpr uchar first_application = 0xE0;
constexpr uchar exif_application = 0xE1;
constexpr uchar profile_application = 0xE2;
constexpr uchar colour_application = 0xEE;
constexpr uchar last_application = 0xEF;

uchar at(const QByteArray& bytes, qsizetype place) {
  return static_cast<uchar>(bytes.at(place));
}

/// An application's segment as it is kept: empty where it is left out.
QByteArray kept_application(uchar marker, const QByteArray& segment) {
  const QByteArray exif("Exif\0\0", 6);
  const QByteArray body = segment.mid(4);
  if (marker == exif_application && body.startsWith(exif)) {
    QByteArray tiff = body.mid(exif.size());
    return empty_position(tiff) ? segment.first(4) + exif + tiff : QByteArray();
  }
  const bool draws = marker == first_application || marker == colour_application ||
                     (marker == profile_application && body.startsWith("ICC_PROFILE"));
  return draws ? segment : QByteArray();
}

/// Where the drawn data that begins at `from` ends: at the next marker that is none of its own.
qsizetype end_of_scan(const QByteArray& photo, qsizetype from) {
  for (qsizetype place = from; place + 1 < photo.size(); ++place) {
    const uchar next = at(photo, place + 1);
    const bool own = next == 0 || next == 0xFF || (next >= first_restart && next <= last_restart);
    if (at(photo, place) == 0xFF && !own) {
      return place;
    }
  }
  return photo.size();
}

std::optional<QByteArray> jpeg_without_place(const QByteArray& photo) {
  QByteArray kept = photo.first(2);
  qsizetype place = 2;
  bool draws = false;
  // A photo that was cut off within its drawn data has no end, and shows what there is.
  while (place < photo.size()) {
    if (photo.size() - place < 2 || at(photo, place) != 0xFF) {
      return std::nullopt;
    }
    const uchar marker = at(photo, place + 1);
    if (marker == 0xFF) {  // one byte of filling
      ++place;
      continue;
    }
    if (marker == image_end) {
      return draws ? std::optional(kept + photo.mid(place, 2)) : std::nullopt;
    }
    const qsizetype length = photo.size() - place < 4 ? 0 : qFromBigEndian<quint16>(photo.constData() + place + 2);
    if (length < 2 || marker == image_start || length + 2 > photo.size() - place) {
      return std::nullopt;
    }
    const QByteArray segment = photo.mid(place, length + 2);
    const bool application = marker >= first_application && marker <= last_application;
    kept += application ? kept_application(marker, segment) : segment;
    place += segment.size();
    if (marker == scan_start) {
      draws = true;
      const qsizetype end = end_of_scan(photo, place);
      kept += photo.mid(place, end - place);
      place = end;
    }
  }
  return draws ? std::optional(kept) : std::nullopt;
}

std::optional<QByteArray> png_without_place(const QByteArray& photo) {
  constexpr qsizetype signature = 8;
  constexpr qsizetype frame = 12;  // length, kind and check sum
  QByteArray kept = photo.first(signature);
  for (qsizetype place = signature; place < photo.size();) {
    if (photo.size() - place < frame) {
      return std::nullopt;
    }
    const qsizetype length = qFromBigEndian<quint32>(photo.constData() + place);
    if (length > photo.size() - place - frame) {
      return std::nullopt;
    }
    const QByteArray chunk = photo.mid(place, length + frame);
    const QByteArray kind = chunk.mid(4, 4);
    if (kind != "eXIf" && kind != "tEXt" && kind != "zTXt" && kind != "iTXt") {
      kept += chunk;
    }
    place += chunk.size();
    if (kind == "IEND") {
      return kept;
    }
  }
  return std::nullopt;
}

}  // namespace

std::optional<QByteArray> without_place(const QByteArray& photo) {
  const auto kind = media_type_of(photo);
  if (kind != "image/jpeg" && kind != "image/png") {
    return std::nullopt;
  }
  // In a file made to deceive, what is left out can bring something else about.
  constexpr int most_passes = 4;
  QByteArray left = photo;
  for (int pass = 0; pass < most_passes; ++pass) {
    auto kept = kind == "image/jpeg" ? jpeg_without_place(left) : png_without_place(left);
    if (!kept || *kept == left) {
      return kept;
    }
    left = *std::move(kept);
  }
  return std::nullopt;
}

}  // namespace shimwright::store
