#pragma once

#include <QByteArray>
#include <optional>

namespace shimwright::store {

/// A JPEG or PNG photo without what a camera or a program wrote beside the picture that can tell a place: the position
/// in Exif, XMP, IPTC, the text parts of a PNG, and whatever follows the end of the picture. The picture itself, its
/// orientation and the time it was taken stay as they are. Nothing where the parts of the file cannot be followed.
/// Sources: ITU-T T.81 annex B (JPEG), CIPA DC-008 (Exif), W3C PNG third edition section 5.
[[nodiscard]] std::optional<QByteArray> without_place(const QByteArray& photo);

}  // namespace shimwright::store
