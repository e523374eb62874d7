#include "shimwright/past/record_ways.h"

#include <catch2/catch.hpp>

using namespace shimwright;

TEST_CASE("records are laid out for the paper people print on there") {
  CHECK(past::paper_of(QLocale(QLocale::English, QLocale::UnitedStates)) == record::PaperSize::letter);
  CHECK(past::paper_of(QLocale(QLocale::German, QLocale::Germany)) == record::PaperSize::a4);
  CHECK(past::paper_of(QLocale::c()) == record::PaperSize::a4);
}
