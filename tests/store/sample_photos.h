#pragma once

#include <QByteArray>
#include <QtEndian>

/// Photos of an invented camera, as small as their formats allow.
namespace shimwright::store::test {

/// A segment of a JPEG: 0xFF, `marker`, its length, `body`.
inline QByteArray jpeg_segment(uchar marker, const QByteArray& body) {
  QByteArray segment(4, '\0');
  segment[0] = '\xFF';
  segment[1] = static_cast<char>(marker);
  qToBigEndian(static_cast<quint16>(body.size() + 2), segment.data() + 2);
  return segment + body;
}

/// A JPEG of which nothing but the shape is there: its beginning and drawn data that was cut off, `drawn`.
inline QByteArray bare_jpeg(const QByteArray& drawn) {
  return QByteArray("\xFF\xD8", 2) + jpeg_segment(0xDA, QByteArray()) + drawn;
}

/// A piece of a PNG; nothing here looks at check sums.
inline QByteArray png_chunk(const QByteArray& kind, const QByteArray& body) {
  QByteArray length(4, '\0');
  qToBigEndian(static_cast<quint32>(body.size()), length.data());
  return length + kind + body + QByteArray(4, 'c');
}

inline QByteArray png_of(const QByteArray& chunks) {
  return QByteArray("\x89PNG\r\n\x1A\n", 8) + chunks + png_chunk("IEND", QByteArray());
}

// An Exif body: a directory of time and position, the time, the position's directory and its value.
constexpr qsizetype tiff_time_at = 8 + 2 + 2 * 12 + 4;
constexpr qsizetype tiff_position_at = tiff_time_at + 20;
constexpr qsizetype tiff_value_at = tiff_position_at + 2 + 12 + 4;
constexpr qsizetype tiff_length = tiff_value_at + 14;

inline QByteArray tiff_with_position(bool little) {
  const auto number = [little](auto value) {
    QByteArray bytes(sizeof(value), '\0');
    little ? qToLittleEndian(value, bytes.data()) : qToBigEndian(value, bytes.data());
    return bytes;
  };
  const auto two = [&](int value) { return number(static_cast<quint16>(value)); };
  const auto four = [&](qsizetype value) { return number(static_cast<quint32>(value)); };
  const auto entry = [&](int tag, int type, qsizetype count, qsizetype place) {
    return two(tag) + two(type) + four(count) + four(place);
  };
  QByteArray tiff = QByteArray(little ? "II" : "MM") + two(42) + four(8);
  tiff += two(2) + entry(0x0132, 2, 20, tiff_time_at) + entry(0x8825, 4, 1, tiff_position_at) + four(0);
  tiff += QByteArray("2031:05:04 10:11:12\0", 20);
  tiff += two(1) + entry(0x001C, 2, 14, tiff_value_at) + four(0);
  return tiff + QByteArray("INVENTED-PLACE", 14);
}

}  // namespace shimwright::store::test
