#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <iostream>
#include <iterator>

#include <QCoreApplication>
#include <QTemporaryDir>

#include <fmt/format.h>

#include "bare_store.h"
#include "connection.h"
#include "copy.h"
#include "job_row.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/store/registers.h"

namespace {

using namespace shimwright;
using namespace shimwright::store;
using Clock = std::chrono::steady_clock;

constexpr const char* person = "01930000-0000-7000-8000-000000000031";
constexpr const char* dial = "01930000-0000-7000-8000-000000000011";
/// A job has some hundred entries before the last one comes, and no step is answered without end.
constexpr int entries_before = 100;
constexpr int commands_in_a_job = 9;

/// What a bench cannot go on without.
template <class Content>
Content needed(Result<Content> result) {
  if (!result) {
    std::cerr << result.error().in_english() << '\n';
    std::exit(2);
  }
  return std::move(*result);
}
void needed(const Result<void>& result) {
  if (!result) {
    std::cerr << result.error().in_english() << '\n';
    std::exit(2);
  }
}

std::string shipped(const std::string& name) {
  std::ifstream file(std::string(SHIMWRIGHT_DATA_DIR "/") + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

By by(std::int64_t second) {
  return {person, {1795421400000 + second * 1000, 60, false}};
}

struct Sheets {
  std::string sheet;
  std::string spec;
};

Sheets furnish(Registers& registers) {
  needed(registers.put(Person{person, "Mara Kern", "MK", std::nullopt, true}, by(0)));
  needed(registers.put(job::Instrument{dial, "Dial gauge 2", sheet::InstrumentKind::dial_gauge, 10, 13, "2027-03-31",
                                       quantity::Length(1000)},
                       by(0)));
  return {needed(registers.add_job_sheet(shipped("sheets/dry-pack-renewal.json"), by(0))),
          needed(registers.add_spec_sheet(shipped("specs/D7-2.json"), by(0)))};
}

/// Notes, all at once.
JobInHand filled(Store& store, const JobInHand& job) {
  job::JobState after = job.state();
  std::vector<job::Entry> notes;
  for (int count = 0; count < entries_before; ++count) {
    const job::Noted note{std::nullopt, "Bolt places seen, all in one tray"};
    notes.push_back({after.next_seq(), by(1).moment, person, note});
    after = job::evolve(std::move(after), notes.back());
  }
  needed(store.append(job.id(), notes, {}, after));
  return needed(JobInHand::load(store, job.id()));
}

/// A job that is open, with the hold points passed behind which the float is measured.
JobInHand fresh_job(Store& store, const Sheets& sheets) {
  JobInHand job = needed(JobInHand::begin(store, IdSource().id(by(0).moment.at_ms), sheets.sheet, sheets.spec));
  job::OpenJob open;
  open.number = "2026-0147";
  open.vehicle_typed = "TESTVN009TA030417";
  open.chassis_reason = "Demonstration vehicle";
  static_cast<void>(needed(job.execute(open, needed(job.context(by(0), "TESTVN009TA030417")))));
  const job::Context context = needed(job.context(by(1)));
  for (const char* step : {"diagnosis", "diagnosis-reason", "customer-consent", "high-voltage"}) {
    static_cast<void>(needed(job.execute(job::Deviate{step, "measuring the store, no vehicle here"}, context)));
  }
  return filled(store, job);
}

bench::RowsByTable rows_after(Connection& connection, const std::string& job, std::int64_t seq) {
  bench::RowsByTable rows;
  for (const char* table : {"entry", "job", "measurement", "float_run", "advice", "deviation", "chain_head"}) {
    const bool is_job = std::string(table) == "job";
    const std::string sql = is_job ? std::string("SELECT ") + job_columns + " FROM job WHERE id = ? AND last_seq > ?"
                                   : std::string("SELECT * FROM ") + table + " WHERE job = ? AND seq > ?";
    rows.emplace_back(table, needed(connection.rows(sql, {text_value(job), number_value(seq)})));
  }
  return rows;
}

double microseconds(const std::function<void()>& call) {
  const auto start = Clock::now();
  call();
  return std::chrono::duration<double, std::micro>(Clock::now() - start).count();
}

double median(std::vector<double> times) {
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

void write(bench::BareStore& bare, const bench::RowsByTable& rows) {
  if (!bare.write(rows)) {
    std::cerr << "the bare store refused\n";
    std::exit(2);
  }
}

struct Bench {
  Store& store;
  bench::BareStore& bare;
  Sheets sheets;
};

/// Ours and the bare one in turn, so that both meet the disk in the same mood.
void measure(const Bench& bench, const std::string& name, int repeats,
             const std::function<job::Command(int)>& command) {
  std::vector<double> ours;
  std::vector<double> theirs;
  std::optional<JobInHand> job;
  for (int repeat = 0; repeat < repeats; ++repeat) {
    if (repeat % commands_in_a_job == 0) {
      job = fresh_job(bench.store, bench.sheets);
      write(bench.bare, rows_after(bench.store.connection(), job->id(), 0));
    }
    const job::Context context = needed(job->context(by(2)));
    const job::Command next = command(repeat % commands_in_a_job);
    const auto before = static_cast<std::int64_t>(job->state().entries.size());
    ours.push_back(microseconds([&] { static_cast<void>(needed(job->execute(next, context))); }));
    const bench::RowsByTable rows = rows_after(bench.store.connection(), job->id(), before);
    theirs.push_back(microseconds([&] { write(bench.bare, rows); }));
  }
  std::cout << fmt::format("{:24} {:10.0f} {:10.0f} {:8.2f}\n", name, median(ours), median(theirs),
                           median(ours) / median(theirs));
}

}  // namespace

/// `store_bench [repeats [folder]]`: what one durable command costs, from decide to the commit, beside a bare
/// transaction that writes the same rows with the same settings on the same disk. Median times in microseconds.
int main(int argument_count, char** arguments) {
  const QCoreApplication application(argument_count, arguments);
  const int repeats = argument_count > 1 ? std::max(1, std::atoi(arguments[1])) : 300;
  const QString place = argument_count > 2 ? QString::fromLocal8Bit(arguments[2]) : QDir::currentPath();
  const QTemporaryDir folder(place + "/store-bench");
  const auto store = needed(Store::open(folder.filePath("store.sqlite").toStdString(), {Mode::read_write, "MK", 0}));
  const Sheets sheets = furnish(store->registers());
  // The vehicle has to be in the copy as well.
  static_cast<void>(fresh_job(*store, sheets));
  needed(lay_copy(store->connection(), folder.filePath("bare.sqlite")));
  const auto bare = bench::BareStore::open(folder.filePath("bare.sqlite").toStdString());
  if (bare == nullptr) {
    return 2;
  }
  const Bench bench{*store, *bare, sheets};
  std::cout << fmt::format("{:24} {:>10} {:>10} {:>8}\n", "one durable command", "ours", "bare", "ratio");
  measure(bench, "note", repeats, [](int) { return job::Note{std::nullopt, "Two bolts replaced"}; });
  measure(bench, "reading", repeats, [](int repeat) {
    return job::EnterReadings{"odometer", {{"distance", std::to_string(148210 + repeat), ""}}};
  });
  measure(bench, "float run and advice", repeats, [](int repeat) {
    const std::string lifted = "0.7" + std::to_string(repeat);
    return job::EnterFloatRun{"lower-float-as-found", 1 + repeat % 3, "0", lifted, "0", dial};
  });
  return 0;
}
