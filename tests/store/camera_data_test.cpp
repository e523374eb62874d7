#include "camera_data.h"

#include <rapidcheck.h>

#include <QFile>
#include <catch2/catch.hpp>

#include "sample_photos.h"

namespace shimwright::store {

using namespace test;

namespace {

const QByteArray begin("\xFF\xD8", 2);
const QByteArray end("\xFF\xD9", 2);
const QByteArray drawn("drawn \xFF\x00 and \xFF\xD3 on", 17);

QByteArray exif(const QByteArray& tiff) {
  return jpeg_segment(0xE1, QByteArray("Exif\0\0", 6) + tiff);
}

/// What draws: profile, colours, tables, and two scans with a table between them.
QByteArray what_draws() {
  return jpeg_segment(0xE0, QByteArray("JFIF\0", 5)) + jpeg_segment(0xE2, "ICC_PROFILE of a screen") +
         jpeg_segment(0xEE, "Adobe") + jpeg_segment(0xDB, "a table") + jpeg_segment(0xDA, "scan") + drawn +
         jpeg_segment(0xC4, "another") + jpeg_segment(0xDA, "scan") + drawn;
}

}  // namespace

TEST_CASE("a photo that tells no place stays as it is, byte for byte") {
  for (const QByteArray& each :
       {begin + what_draws() + end, begin + what_draws(), bare_jpeg("cut off"),
        png_of(png_chunk("IHDR", "size") + png_chunk("IDAT", "drawn")), png_of(QByteArray())}) {
    CHECK(without_place(each) == std::optional(each));
  }
}

TEST_CASE("every place in a JPEG is left out, and the picture stays") {
  const QByteArray place = "INVENTED-PLACE";
  QByteArray emptied = tiff_with_position(true);
  emptied.replace(tiff_position_at, tiff_length - tiff_position_at, QByteArray(tiff_length - tiff_position_at, '\0'));
  CHECK(without_place(begin + exif(tiff_with_position(true)) + what_draws() + end) ==
        std::optional(begin + exif(emptied) + what_draws() + end));
  for (const QByteArray& each : {jpeg_segment(0xE1, "http://ns.adobe.com/xap/1.0/" + place),
                                 jpeg_segment(0xED, "Photoshop 3.0" + place), jpeg_segment(0xE2, "MPF" + place),
                                 exif("no body of TIFF " + place), exif(tiff_with_position(true).chopped(1))}) {
    CHECK(without_place(begin + each + what_draws() + end) == std::optional(begin + what_draws() + end));
    CHECK(without_place(begin + what_draws() + each + end) == std::optional(begin + what_draws() + end));
  }
  CHECK(without_place(begin + what_draws() + end + "a film " + place) == std::optional(begin + what_draws() + end));
}

TEST_CASE("every place in a PNG is left out, and the picture stays") {
  const QByteArray picture = png_chunk("IHDR", "size") + png_chunk("IDAT", "drawn");
  for (const char* kind : {"eXIf", "tEXt", "zTXt", "iTXt"}) {
    CHECK(without_place(png_of(png_chunk(kind, "INVENTED-PLACE") + picture)) == std::optional(png_of(picture)));
  }
  CHECK(without_place(png_of(picture) + "INVENTED-PLACE") == std::optional(png_of(picture)));
}

TEST_CASE("a photo whose parts cannot be followed is said to be so") {
  CHECK_FALSE(without_place("GIF89a"));
  CHECK_FALSE(without_place(begin + "\xFFno marker"));
  CHECK_FALSE(without_place(begin + QByteArray("\xFF\xE0\x00\x01", 4)));
  CHECK_FALSE(without_place(begin + jpeg_segment(0xE0, "JFIF").chopped(1)));
  CHECK_FALSE(without_place(begin + QByteArray("\xFF\xD8", 2) + what_draws()));
  // Found by the fuzzer: nothing would be left of it.
  CHECK_FALSE(without_place(begin + exif("no body of TIFF")));
  CHECK_FALSE(without_place(begin + jpeg_segment(0xE0, "JFIF") + end));
  const QByteArray png = png_of(png_chunk("IDAT", "drawn"));
  CHECK_FALSE(without_place(png.chopped(1)));
  CHECK_FALSE(without_place(png.first(8)));
  CHECK_FALSE(without_place(png.first(8) + QByteArray("\xFF\xFF\xFF\xFFIDAT----", 12)));
}

TEST_CASE("a photo made to deceive is taken without its place or not at all") {
  QFile file(SHIMWRIGHT_SOURCE_DIR "/tests/fuzz/seeds/photo/parts_in_parts");  // found by the fuzzer
  REQUIRE(file.open(QIODevice::ReadOnly));
  if (const auto once = without_place(file.readAll())) {
    CHECK(without_place(*once) == once);
  }
  // A position that is said to be the directory itself.
  QByteArray tiff = tiff_with_position(true);
  tiff.replace(8 + 2 + 12 + 8, 4, QByteArray("\x08\0\0\0", 4));
  const auto kept = without_place(begin + exif(tiff) + what_draws() + end);
  REQUIRE(kept);
  CHECK(without_place(*kept) == kept);
}

TEST_CASE("whatever a photo's bytes are, what is kept is kept again as it is", "[law]") {
  CHECK(rc::check("leaving out twice is leaving out once", [] {
    QByteArray photo = *rc::gen::arbitrary<bool>()
                           ? begin + exif(tiff_with_position(false)) + what_draws() + end
                           : png_of(png_chunk("eXIf", tiff_with_position(true)) + png_chunk("IDAT", "drawn"));
    const int changes = *rc::gen::inRange(0, 6);
    for (int each = 0; each < changes; ++each) {
      photo[*rc::gen::inRange(8, static_cast<int>(photo.size()))] = static_cast<char>(*rc::gen::inRange(0, 256));
    }
    if (const auto once = without_place(photo)) {
      RC_ASSERT(once->size() <= photo.size());
      RC_ASSERT(without_place(*once) == once);
    }
  }));
}

}  // namespace shimwright::store
