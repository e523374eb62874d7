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
constexpr const char* job_id = "01930000-0000-7000-8000-000000001000";

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

JobInHand opened_job(Store& store) {
  Registers& registers = store.registers();
  needed(registers.put(Person{person, "Mara Kern", "MK", std::nullopt, true}, by(0)));
  needed(registers.put(job::Instrument{"01930000-0000-7000-8000-000000000011", "Dial gauge 2",
                                       sheet::InstrumentKind::dial_gauge, 10, 13, "2027-03-31", quantity::Length(1000)},
                       by(0)));
  const std::string sheet = needed(registers.add_job_sheet(shipped("sheets/dry-pack-renewal.json"), by(0)));
  const std::string spec = needed(registers.add_spec_sheet(shipped("specs/D7-2.json"), by(0)));
  JobInHand job = needed(JobInHand::begin(store, job_id, sheet, spec));
  job::OpenJob open;
  open.number = "2026-0147";
  open.vehicle_typed = "TESTVN009TA030417";
  open.chassis_reason = "Demonstration vehicle";
  static_cast<void>(needed(job.execute(open, needed(job.context(by(0), "TESTVN009TA030417")))));
  return job;
}

/// The float is measured behind these.
void pass_hold_points(JobInHand& job) {
  const job::Context context = needed(job.context(by(1)));
  for (const char* step : {"diagnosis", "diagnosis-reason", "customer-consent", "high-voltage"}) {
    static_cast<void>(needed(job.execute(job::Deviate{step, "measuring the store, no vehicle here"}, context)));
  }
}

/// A day's job has some hundred entries before the last one comes.
void fill(JobInHand& job, int entries) {
  const job::Context context = needed(job.context(by(1)));
  for (int count = 0; count < entries; ++count) {
    static_cast<void>(
        needed(job.execute(job::Note{std::nullopt, "Bolt places seen, dowels seen, all in one tray"}, context)));
  }
}

bench::RowsByTable rows_after(Connection& connection, std::int64_t seq) {
  bench::RowsByTable rows;
  for (const char* table : {"entry", "job", "measurement", "float_run", "advice", "chain_head"}) {
    const bool is_job = std::string(table) == "job";
    const std::string sql = is_job ? std::string("SELECT ") + job_columns + " FROM job WHERE id = ? AND last_seq > ?"
                                   : std::string("SELECT * FROM ") + table + " WHERE job = ? AND seq > ?";
    rows.emplace_back(table, needed(connection.rows(sql, {text_value(job_id), number_value(seq)})));
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

/// Ours and the bare one in turn, so that both meet the disk in the same mood.
void measure(const std::string& name, JobInHand& job, Store& store, bench::BareStore& bare, int repeats,
             const std::function<job::Command(int)>& command) {
  std::vector<double> ours;
  std::vector<double> theirs;
  for (int repeat = 0; repeat < repeats; ++repeat) {
    const job::Context context = needed(job.context(by(2)));
    const job::Command next = command(repeat);
    const auto before = static_cast<std::int64_t>(job.state().entries.size());
    ours.push_back(microseconds([&] { static_cast<void>(needed(job.execute(next, context))); }));
    const bench::RowsByTable rows = rows_after(store.connection(), before);
    bool written = false;
    theirs.push_back(microseconds([&] { written = bare.write(rows); }));
    if (!written) {
      std::cerr << "the bare store refused\n";
      std::exit(2);
    }
  }
  std::cout << fmt::format("{:24} {:10.0f} {:10.0f} {:8.2f}\n", name, median(ours), median(theirs),
                           median(ours) / median(theirs));
}

}  // namespace

/// `store_bench [repeats [folder]]`: what one durable command costs, from decide to the commit, beside a bare
/// transaction that writes the same rows with the same settings on the same disk. Median times in microseconds.
int main(int argument_count, char** arguments) {
  const QCoreApplication application(argument_count, arguments);
  const int repeats = argument_count > 1 ? std::max(1, std::atoi(arguments[1])) : 201;
  const QString place = argument_count > 2 ? QString::fromLocal8Bit(arguments[2]) : QDir::currentPath();
  const QTemporaryDir folder(place + "/store-bench-XXXXXX");
  const auto store = needed(Store::open(folder.filePath("store.sqlite").toStdString(), {Mode::read_write, "MK", 0}));
  JobInHand job = opened_job(*store);
  pass_hold_points(job);
  fill(job, std::min(repeats, 150));
  needed(lay_copy(store->connection(), folder.filePath("bare.sqlite")));
  const auto bare = bench::BareStore::open(folder.filePath("bare.sqlite").toStdString());
  if (bare == nullptr) {
    return 2;
  }
  std::cout << fmt::format("{:24} {:>10} {:>10} {:>8}\n", "one durable command", "ours", "bare", "ratio");
  measure("note", job, *store, *bare, repeats, [](int) { return job::Note{std::nullopt, "Two bolts replaced"}; });
  measure("reading", job, *store, *bare, repeats, [](int repeat) {
    return job::EnterReadings{"odometer", {{"distance", std::to_string(148210 + repeat), ""}}};
  });
  measure("float run and advice", job, *store, *bare, repeats, [](int repeat) {
    return job::EnterFloatRun{"lower-float-as-found",
                              1 + repeat % 3,
                              "0",
                              "0.7" + std::to_string(repeat % 10),
                              "0",
                              "01930000-0000-7000-8000-000000000011"};
  });
  return 0;
}
