#include <algorithm>
#include <cstdlib>
#include <functional>
#include <iostream>
#include <memory>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include <QApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>

#include <fmt/format.h>

#include "shimwright/print/fonts.h"
#include "shimwright/print/page_painter.h"
#include "shimwright/print/pdf.h"
#include "shimwright/print/pdf_writing.h"
#include "shimwright/record/layout.h"
#include "shimwright/shell/stores.h"
#include "shimwright/store/job_record.h"
#include "shimwright/store/store.h"
#include "timing.h"
#include "workshop.h"

namespace {

using namespace shimwright;
using bench_timing::median;
using bench_timing::milliseconds;

constexpr int usual_repeats = 30;

[[noreturn]] void give_up(const std::string& sentence) {
  std::cerr << sentence << '\n';
  std::exit(2);
}

template <class Content>
Content needed(Result<Content> result) {
  if (!result) {
    give_up(result.error().in_english());
  }
  return std::move(*result);
}
void needed(const Result<void>& result) {
  if (!result) {
    give_up(result.error().in_english());
  }
}

/// Of the demonstration workshop the job whose record has the most pages.
record::Record longest_record(const std::string& path, const print::Fonts& fonts) {
  const auto store = needed(store::Store::open(path, {store::Mode::look_only, "bench", 0}));
  std::optional<record::Record> longest;
  std::size_t most = 0;
  for (const store::JobSummary& each : needed(store->jobs())) {
    auto record = needed(store::record_of(*store, each.id));
    const std::size_t pages = record::lay_out(record, record::PaperSize::a4, print::FontMeasure(fonts)).size();
    if (pages > most) {
      most = pages;
      longest = std::move(record);
    }
  }
  if (!longest) {
    give_up("the demonstration workshop has no job");
  }
  return std::move(*longest);
}

/// What one record takes, in the order it is done.
struct Parts {
  std::vector<double> layout;
  std::vector<double> pages;
  std::vector<double> end;  ///< fonts are written with the end, and the file is brought to the disk
  std::vector<double> whole;
};

void write_record(const record::Record& record, const std::string& path, const print::Fonts& fonts, Parts& parts) {
  std::optional<print::Document> document;
  std::unique_ptr<print::PdfWriting> writing;
  parts.layout.push_back(milliseconds([&] { document = print::document_of(record, record::PaperSize::a4, fonts); }));
  parts.pages.push_back(milliseconds([&] {
    writing = needed(print::PdfWriting::begin(std::move(*document), path, record::PaperSize::a4, fonts));
    while (writing->pages_drawn() < writing->page_count()) {
      needed(writing->next_page());
    }
  }));
  parts.end.push_back(milliseconds([&] {
    needed(writing->finish());
    writing.reset();
  }));
  parts.whole.push_back(parts.layout.back() + parts.pages.back() + parts.end.back());
}

void write_empty(int pages, const QString& path) {
  QPdfWriter writer(path);
  writer.setPageSize(QPageSize(QPageSize::A4));
  QPainter painter(&writer);
  for (int page = 1; page < pages; ++page) {
    if (!writer.newPage()) {
      give_up("the empty pages were not written");
    }
  }
  painter.end();
}

/// The least that pages in our two fonts cost: one word in each.
void write_two_words(int pages, const std::string& path, const print::Fonts& fonts) {
  record::Page page;
  for (const record::FontRole role : {record::FontRole::body, record::FontRole::strong}) {
    page.elements.emplace_back(record::TextRun{20, 20, 20, "Within", role});
  }
  const print::Document document{"Two words", std::vector<record::Page>(static_cast<std::size_t>(pages), page)};
  needed(print::write_pdf(document, path, record::PaperSize::a4, fonts));
}

void say(const char* what, const std::vector<double>& times) {
  std::cout << fmt::format("  {:32} {:8.2f} ms\n", what, median(times));
}

}  // namespace

/// `pdf_bench [repeats [folder]]`: the record of the longest demonstration job as a PDF, made off the window's thread
/// as the window makes it, beside as many empty pages of the toolkit. Median times, and where they go.
int main(int argument_count, char** arguments) {
  const QApplication application(argument_count, arguments);
  const int repeats = argument_count > 1 ? std::max(1, std::atoi(arguments[1])) : usual_repeats;
  const QString place = argument_count > 2 ? QString::fromLocal8Bit(arguments[2]) : QDir::currentPath();
  const QTemporaryDir folder(place + "/pdf-bench");
  const std::string store = folder.filePath("workshop.shimwright").toStdString();
  needed(shell::make_demo_workshop(store, cli::moment_now()));
  const print::Fonts fonts = needed(print::load_fonts());
  const record::Record record = longest_record(store, fonts);
  const int pages = static_cast<int>(record::lay_out(record, record::PaperSize::a4, print::FontMeasure(fonts)).size());
  Parts parts;
  std::vector<double> empty;
  std::vector<double> two_words;
  std::thread([&] {
    const std::string ours = folder.filePath("record.pdf").toStdString();
    for (int repeat = 0; repeat <= repeats; ++repeat) {
      if (repeat == 1) {  // the first reads the glyphs
        parts = {};
        empty.clear();
        two_words.clear();
      }
      write_record(record, ours, fonts, parts);
      empty.push_back(milliseconds([&] { write_empty(pages, folder.filePath("empty.pdf")); }));
      two_words.push_back(
          milliseconds([&] { write_two_words(pages, folder.filePath("words.pdf").toStdString(), fonts); }));
    }
  }).join();
  std::cout << fmt::format(
      "record of job {}, {} pages, off the window's thread: {:.2f} ms, as many empty ones {:.2f} "
      "ms: {:.2f} times\n",
      record.job.number, pages, median(parts.whole), median(empty), median(parts.whole) / median(empty));
  say("as many with a word in each font", two_words);
  say("the record", parts.whole);
  say("  laid out", parts.layout);
  say("  drawn", parts.pages);
  say("  fonts, end, brought to the disk", parts.end);
  return 0;
}
