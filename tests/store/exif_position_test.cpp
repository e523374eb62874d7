#include "exif_position.h"

#include <rapidcheck.h>
#include <QtEndian>

#include <catch2/catch.hpp>

#include "sample_photos.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("the position in an Exif body is emptied, all else stays") {
  for (const bool little : {true, false}) {
    QByteArray tiff = tiff_with_position(little);
    const QByteArray before = tiff;
    REQUIRE(tiff.contains("INVENTED-PLACE"));
    REQUIRE(empty_position(tiff));
    CHECK(tiff.size() == before.size());
    CHECK_FALSE(tiff.contains("INVENTED-PLACE"));
    CHECK(tiff.contains("2031:05:04 10:11:12"));
    CHECK(tiff.first(tiff_position_at) == before.first(tiff_position_at));
    CHECK(tiff.mid(tiff_position_at, 2) == QByteArray(2, '\0'));
  }
}

TEST_CASE("an Exif body that cannot be followed is said to be so") {
  QByteArray empty;
  CHECK_FALSE(empty_position(empty));
  QByteArray other = "XX" + tiff_with_position(true).mid(2);
  CHECK_FALSE(empty_position(other));
  for (qsizetype length = 0; length < tiff_length; ++length) {
    QByteArray cut = tiff_with_position(false).first(length);
    CAPTURE(length);
    CHECK_FALSE(empty_position(cut));
  }
}

TEST_CASE("a position that names itself or its own directory ends", "[law]") {
  CHECK(rc::check("no changed Exif body is read outside of it", [] {
    QByteArray tiff = tiff_with_position(*rc::gen::arbitrary<bool>());
    const int changes = *rc::gen::inRange(1, 6);
    for (int each = 0; each < changes; ++each) {
      tiff[*rc::gen::inRange(0, static_cast<int>(tiff.size()))] = static_cast<char>(*rc::gen::inRange(0, 256));
    }
    const qsizetype size = tiff.size();
    static_cast<void>(empty_position(tiff));
    RC_ASSERT(tiff.size() == size);
  }));
}

}  // namespace shimwright::store
