#include "shimwright/record/layout.h"

#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>

#include "paper.h"
#include "sample_job.h"
#include "sealed_sample.h"

using namespace shimwright;
using namespace shimwright::record_test;
using record::PaperSize;

TEST_CASE("jobs of all lengths keep the laws of layout on both papers") {
  for (const Bench& bench : {open_job(), finished_job(), long_job()}) {
    for (const PaperSize paper : {PaperSize::a4, PaperSize::letter}) {
      CHECK(broken_laws(all_pages(record_of(bench), paper)) == std::vector<std::string>{});
    }
  }
  CHECK(broken_laws(all_pages(record::Record())).empty());
}

TEST_CASE("a usual job takes one to three pages, a long one flows on") {
  CHECK(all_pages(record_of(open_job())).size() <= 2);
  CHECK(all_pages(record_of(finished_job())).size() <= 3);
  CHECK(all_pages(record_of(long_job())).size() > 3);
}

TEST_CASE("the result stands on the first page before all else") {
  const auto pages = all_pages(record_of(finished_job()));
  const std::string text = text_of({pages.front()});
  CHECK(text.find("Both discs free") < text.find("Shims, mm"));
  CHECK(text.find("Shims, mm") < text.find("Float, mm"));
  CHECK(text.find("Float, mm") < text.find("Other readings"));
}

TEST_CASE("a sealed record keeps the laws of layout, has one code, and says on each page that it is a reprint") {
  for (const PaperSize paper : {PaperSize::a4, PaperSize::letter}) {
    const auto pages = all_pages(sealed_record(true), paper);
    CHECK(broken_laws(pages) == std::vector<std::string>{});
    CHECK(elements_of<record::Code>(pages).size() == 1);
    for (const auto& page : pages) {
      CHECK(has({page}, "Job 2041 · reprint · page"));
    }
    CHECK_FALSE(has(all_pages(sealed_record(false), paper), "reprint"));
  }
}

TEST_CASE("signatures come once") {
  for (const Bench& bench : {open_job(), finished_job(), long_job()}) {
    CHECK(elements_of<record::KeptPlace>(all_pages(record_of(bench))).size() == 1);
  }
}

namespace {

/// The page of the signatures, and how high what stands above them reaches.
struct SignedPage {
  std::size_t number = 0;
  std::size_t rows_above = 0;
  double above_mm = 0;
};

SignedPage signed_page(const std::vector<record::Page>& pages) {
  for (std::size_t at = 0; at < pages.size(); ++at) {
    for (const record::Element& element : pages[at].elements) {
      const auto* code = std::get_if<record::Code>(&element);
      const auto* kept = std::get_if<record::KeptPlace>(&element);
      if (code == nullptr && kept == nullptr) {
        continue;
      }
      SignedPage found{at, 0, 0};
      for (const record::Box& row : pages[at].rows) {
        if (row.y_mm + row.height_mm < (code != nullptr ? code->box.y_mm : kept->box.y_mm)) {
          ++found.rows_above;
          found.above_mm = std::max(found.above_mm, row.y_mm + row.height_mm);
        }
      }
      return found;
    }
  }
  return {};
}

double height_of_rows(const record::Page& page) {
  double least = page.height_mm;
  double most = 0;
  for (const record::Box& row : page.rows) {
    least = std::min(least, row.y_mm);
    most = std::max(most, row.y_mm + row.height_mm);
  }
  return most - least;
}

record::Record with_notes(record::Record record, int count) {
  for (int note = 0; note < count; ++note) {
    record.notes.push_back({record.job.opened, std::nullopt, "note " + std::to_string(note)});
  }
  return record;
}

}  // namespace

TEST_CASE("signatures never have a page to themselves, however long the record is") {
  for (const PaperSize paper : {PaperSize::a4, PaperSize::letter}) {
    for (const Bench& bench : {finished_job(), long_job()}) {
      const record::Record record = record_of(bench);
      for (int notes = 0; notes < 70; ++notes) {
        const auto pages = all_pages(with_notes(record, notes), paper);
        INFO(notes << " notes, " << pages.size() << " pages");
        CHECK(signed_page(pages).rows_above > 0);
        CHECK(broken_laws(pages) == std::vector<std::string>{});
        CHECK(times(pages, "Customer") == 1);
      }
    }
  }
}

TEST_CASE("one note more never saves more than the page that closer rows save") {
  const record::Record record = record_of(finished_job());
  std::size_t before = 0;
  for (int notes = 0; notes < 70; ++notes) {
    const std::size_t pages = all_pages(with_notes(record, notes)).size();
    CHECK(pages + 1 >= before);
    before = pages;
  }
}

TEST_CASE("addenda begin a page only where they do not fit below the signatures") {
  int on_the_same = 0;
  int on_another = 0;
  for (const PaperSize paper : {PaperSize::a4, PaperSize::letter}) {
    const record::Record record = sealed_record();
    for (int notes = 0; notes < 70; ++notes) {
      const auto pages = all_pages(with_notes(record, notes), paper);
      const SignedPage last = signed_page(pages);
      INFO(notes << " notes");
      CHECK(broken_laws(pages) == std::vector<std::string>{});
      if (last.number + 1 == pages.size()) {
        ++on_the_same;
        continue;
      }
      ++on_another;
      REQUIRE(last.number + 2 == pages.size());
      const record::Page& page = pages[last.number];
      const double signatures_mm = page.rows.back().height_mm;
      const double addenda_mm = height_of_rows(pages.back());
      CHECK(last.above_mm + signatures_mm + addenda_mm > page.height_mm - page.margin_mm - 4.5);
    }
  }
  CHECK(on_the_same > 20);
  CHECK(on_another > 5);
}

TEST_CASE("every page of a job with demonstration values says so") {
  for (const auto& page : all_pages(record_of(long_job()))) {
    CHECK(times({page}, "DEMONSTRATION VALUES") == 2);
  }
  auto record = record_of(long_job());
  record.job.sheet.demonstration = false;
  record.job.spec.demonstration = false;
  CHECK(times(all_pages(record), "DEMONSTRATION") == 0);
}

TEST_CASE("the same record gives the same pages") {
  CHECK(text_of(all_pages(record_of(long_job()))) == text_of(all_pages(record_of(long_job()))));
}

namespace {

std::string digits_text() {
  const int decimals = *rc::gen::inRange(0, 4);
  std::string text = std::to_string(*rc::gen::inRange(0, 10));
  for (int at = 0; at < decimals; ++at) {
    text += (at == 0 ? "." : "") + std::to_string(*rc::gen::inRange(0, 10));
  }
  return text;
}

bool printed(const std::vector<record::TextRun>& runs, const std::string& digits) {
  for (const record::TextRun& run : runs) {
    for (std::size_t at = run.text.find(digits); at != std::string::npos; at = run.text.find(digits, at + 1)) {
      const auto part_of_number = [&](std::size_t place) {
        return place < run.text.size() && std::string("0123456789.").find(run.text[place]) != std::string::npos;
      };
      const bool ends = !part_of_number(at + digits.size()) || run.text.substr(at + digits.size(), 1) == ".";
      if (ends && (at == 0 || !part_of_number(at - 1))) {
        return true;
      }
    }
  }
  return false;
}

}  // namespace

TEST_CASE("every reading is printed exactly as it was typed") {
  CHECK(rc::check([] {
    Bench bench;
    bench.add(opened());
    std::vector<std::string> all;
    const auto next = [&] {
      all.push_back(digits_text());
      return all.back();
    };
    bench.read("old-shim-lower", {reading("thickness", next())});
    bench.read("stamp-lower", {reading("stamp", next())});
    bench.read("face-to-shaft-end", {judged(reading("depth", next()), job::ReadingVerdict::within, {}, "7.00")});
    bench.peak("press-peak", 1, reading("torque", next(), Unit::newton_metre), 3);
    bench.read("large-shim-measured", {reading("thickness", next())});
    bench.add(job::DepthsRead{
        bench.here("large-depth"), Side::lower, {typed(next()), typed(next())}, typed(next()), typed(next()), {}});
    for (int spot = 1; spot <= 3; ++spot) {
      job::FloatRun run;
      run.at = bench.here("lower-float");
      run.spot = spot;
      run.rest = typed(next());
      run.lifted = typed(next());
      run.zero_after = typed(next());
      bench.add(run);
    }
    const auto runs = runs_of(all_pages(record_of(bench)));
    for (const std::string& digits : all) {
      RC_ASSERT(printed(runs, digits));
    }
  }));
}

TEST_CASE("texts of any length keep within the page and none is lost") {
  CHECK(rc::check([] {
    const int words = *rc::gen::inRange(1, 700);
    std::string text;
    for (int word = 0; word < words; ++word) {
      text += "word" + std::to_string(word) + " ";
    }
    const std::string last = "word" + std::to_string(words - 1);
    Bench bench = open_job();
    bench.add(job::Deviated{bench.here("gear-oil"), text});
    bench.add(job::Noted{std::nullopt, text});
    bench.check("hub-index", false, text);
    bench.add(job::Written{bench.here("fluid-kinds"), text, {}});
    const auto pages = all_pages(record_of(bench));
    RC_ASSERT(broken_laws(pages).empty());
    RC_ASSERT(times(pages, last) >= 4);
  }));
}
