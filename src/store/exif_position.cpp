#include "exif_position.h"

#include <QtEndian>
#include <array>
#include <optional>

namespace shimwright::store {

namespace {

constexpr qsizetype entry_length = 12;
constexpr quint16 position_tag = 0x8825;

/// Numbers of a TIFF body at checked places, in the order of bytes that it names.
class TiffBody {
 public:
  [[nodiscard]] static std::optional<TiffBody> of(QByteArray& bytes) {
    const bool little = bytes.startsWith(QByteArray("II\x2A\0", 4));
    if (!little && !bytes.startsWith(QByteArray("MM\0\x2A", 4))) {
      return std::nullopt;
    }
    return TiffBody(bytes, little);
  }

  [[nodiscard]] bool holds(qsizetype at, qsizetype length) const {
    return at >= 0 && length >= 0 && at <= bytes_->size() && length <= bytes_->size() - at;
  }
  [[nodiscard]] std::optional<quint16> two(qsizetype at) const {
    return holds(at, 2) ? std::optional(read<quint16>(at)) : std::nullopt;
  }
  [[nodiscard]] std::optional<quint32> four(qsizetype at) const {
    return holds(at, 4) ? std::optional(read<quint32>(at)) : std::nullopt;
  }
  void clear(qsizetype at, qsizetype length) { bytes_->replace(at, length, QByteArray(length, '\0')); }

 private:
  TiffBody(QByteArray& bytes, bool little) : bytes_(&bytes), little_(little) {}

  template <typename Number>
  [[nodiscard]] Number read(qsizetype at) const {
    const char* const place = bytes_->constData() + at;
    return little_ ? qFromLittleEndian<Number>(place) : qFromBigEndian<Number>(place);
  }

  QByteArray* bytes_;
  bool little_;
};

/// Bytes that one value of the TIFF type takes; 0 for a type that is not known.
qint64 bytes_of_type(quint16 type) {
  constexpr std::array<qint64, 13> lengths{0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};
  return type < lengths.size() ? lengths.at(type) : 0;
}

/// The value of the entry at `at`, where it lies outside of the entry itself.
bool clear_value(TiffBody& body, qsizetype at) {
  const auto type = body.two(at + 2);
  const auto count = body.four(at + 4);
  const auto place = body.four(at + 8);
  if (!type || !count || !place || bytes_of_type(*type) == 0) {
    return false;
  }
  const qint64 length = bytes_of_type(*type) * *count;
  if (length <= 4) {
    return true;
  }
  if (!body.holds(*place, length)) {
    return false;
  }
  body.clear(*place, length);
  return true;
}

bool clear_directory(TiffBody& body, qsizetype at) {
  const auto count = body.two(at);
  if (!count || !body.holds(at + 2, *count * entry_length)) {
    return false;
  }
  for (qsizetype each = 0; each < *count; ++each) {
    if (!clear_value(body, at + 2 + each * entry_length)) {
      return false;
    }
  }
  body.clear(at, 2 + *count * entry_length);
  return true;
}

bool empty_position_named_in(TiffBody& body, qsizetype directory) {
  const auto count = body.two(directory);
  if (!count) {
    return false;
  }
  for (qsizetype each = 0; each < *count; ++each) {
    const qsizetype entry = directory + 2 + each * entry_length;
    const auto tag = body.two(entry);
    const auto place = body.four(entry + 8);
    if (!tag || !place || (*tag == position_tag && !clear_directory(body, *place))) {
      return false;
    }
  }
  return true;
}

}  // namespace

bool empty_position(QByteArray& tiff) {
  auto body = TiffBody::of(tiff);
  auto directory = body ? body->four(4) : std::nullopt;
  // The picture's own and that of its thumbnail; more are no photo's.
  for (int each = 0; each < 2 && directory && *directory != 0; ++each) {
    if (!empty_position_named_in(*body, *directory)) {
      return false;
    }
    const auto count = body->two(*directory);  // emptied where the directory is said to be its own position
    directory = count ? body->four(qsizetype{*directory} + 2 + *count * entry_length) : std::nullopt;
  }
  return directory.has_value();
}

}  // namespace shimwright::store
