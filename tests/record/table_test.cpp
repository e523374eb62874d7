#include "table.h"

#include <catch2/catch.hpp>

#include "paper.h"
#include "wording.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::Align;
using record::Cell;
using record::ReadingVerdict;
using record::ShapeKind;
using record::Table;

namespace {

Table numbers(int rows) {
  Table table;
  table.columns = {{"Step", Align::left, true}, {"Reading", Align::right}};
  for (int row = 0; row < rows; ++row) {
    table.rows.push_back({{"row " + std::to_string(row)}, {std::to_string(row) + ".00"}});
  }
  return table;
}

std::vector<record::Page> drawn(const Table& table) {
  return pages_of([&](record::PageWriter& writer) { record::draw(writer, table); });
}

}  // namespace

TEST_CASE("the head of a table comes again on each page") {
  const auto pages = drawn(numbers(120));
  REQUIRE(pages.size() == 3);
  CHECK(times(pages, "Reading") == 3);
  CHECK(broken_laws(pages).empty());
  CHECK(has(pages, "row 119"));
}

TEST_CASE("numbers stand right under each other") {
  double right = 0;
  for (const auto& run : runs_of(drawn(numbers(12)))) {
    if (run.text.find(".00") != std::string::npos) {
      right = right == 0 ? run.x_mm + run.width_mm : right;
      CHECK(run.x_mm + run.width_mm == Approx(right));
    }
  }
  CHECK(right > 0);
}

TEST_CASE("long text breaks in the column that gives, numbers stay whole") {
  Table table = numbers(1);
  for (int word = 0; word < 80; ++word) {
    table.rows.front()[0].text += " word" + std::to_string(word);
  }
  table.rows.front()[1].text = "1234.567 mm";
  const auto pages = drawn(table);
  CHECK(broken_laws(pages).empty());
  bool whole = false;
  for (const auto& run : runs_of(pages)) {
    whole = whole || run.text == "1234.567 mm";
  }
  CHECK(whole);
  CHECK(has(pages, "word79"));
}

TEST_CASE("a row higher than a page goes on, its head with it") {
  Table table = numbers(1);
  for (int word = 0; word < 3000; ++word) {
    table.rows.front()[0].text += " word" + std::to_string(word);
  }
  const auto pages = drawn(table);
  CHECK(pages.size() > 1);
  CHECK(times(pages, "Reading") == pages.size());
  CHECK(broken_laws(pages).empty());
  CHECK(has(pages, "word2999"));
}

TEST_CASE("every column too wide: all give way, nothing leaves the page") {
  Table table;
  std::vector<Cell> row;
  for (int column = 0; column < 8; ++column) {
    table.columns.push_back({"column"});
    row.push_back({"text that is far too wide for an eighth of a page"});
  }
  table.rows.push_back(row);
  CHECK(broken_laws(drawn(table)).empty());
}

TEST_CASE("a verdict is a word and a shape of its own") {
  using V = ReadingVerdict;
  std::vector<ShapeKind> shapes;
  for (const V verdict : {V::within, V::too_small, V::too_large, V::on_limit, V::not_equal}) {
    const Cell cell = record::verdict_cell(verdict);
    CHECK(cell.text == record::word_of(verdict));
    REQUIRE(cell.shape);
    for (const ShapeKind other : shapes) {
      CHECK(other != *cell.shape);
    }
    shapes.push_back(*cell.shape);
  }
  CHECK_FALSE(record::verdict_cell(V::none).shape);
  CHECK(record::disc_verdict_cell(V::not_equal).text == "mixed");
  Table table = numbers(1);
  table.rows.front()[0] = record::verdict_cell(V::on_limit);
  CHECK(elements_of<record::Shape>(drawn(table)).size() == 1);
}

TEST_CASE("head and first row are kept together") {
  const auto pages = pages_of([](record::PageWriter& writer) {
    const Table table = numbers(3);
    const double beginning = record::height_of_beginning(writer, table);
    CHECK(beginning > 8);
    writer.piece(writer.room() - beginning + 0.1);
    record::draw(writer, table);
  });
  REQUIRE(pages.size() == 2);
  CHECK(has({pages[1]}, "Reading"));
  CHECK_FALSE(has({pages[0]}, "Reading"));
}
