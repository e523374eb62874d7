#pragma once

#include <QByteArray>

namespace shimwright::store {

/// Empties the position (GPS) part of `tiff`, the body of an Exif segment, in place: its count becomes nought and every
/// value zeros, nothing else moves. False where the body cannot be followed; `tiff` is then to be thrown away.
[[nodiscard]] bool empty_position(QByteArray& tiff);

}  // namespace shimwright::store
