#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <iostream>
#include <iterator>
#include <random>

#include <QCoreApplication>
#include <QTemporaryDir>

#include <fmt/format.h>

#include "connection.h"
#include "shimwright/job/evolve.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/store/registers.h"
#include "shimwright/vehicle/vehicle_number.h"

namespace {

using namespace shimwright;
using namespace shimwright::store;
using Clock = std::chrono::steady_clock;

constexpr const char* person = "01930000-0000-7000-8000-000000000031";

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

By by(std::int64_t minute) {
  return {person, {1577869200000 + minute * 60'000, 60, false}};
}

/// A vehicle number of our own scenario with its right check digit.
std::string vehicle_number(std::mt19937& dice) {
  constexpr std::string_view years = "KLMNPRST";
  std::string vin = fmt::format("TESTVN000{}A{:06}", years[dice() % years.size()], dice() % 1'000'000);
  vin[8] = vehicle::check_digit_for(vin);
  return vin;
}

struct Known {
  std::string vehicle;
  std::string number;
  std::string plate;
  std::string serial;
};

/// Opens a job: all that a search finds is in its first entry.
Known open_job(Store& store, IdSource& ids, const std::string& sheet, const std::string& spec, int at,
               std::mt19937& dice) {
  const By now = by(at);
  Known known{vehicle_number(dice), std::to_string(10'000 + at), fmt::format("DEMO {:05}", dice() % 100'000),
              fmt::format("D7-{:07}", dice() % 10'000'000)};
  JobInHand job = needed(JobInHand::begin(store, ids.id(now.moment.at_ms), sheet, spec));
  job::OpenJob open;
  open.number = known.number;
  open.vehicle_typed = known.vehicle;
  open.plate = ids.private_text(known.plate, now.moment.at_ms);
  open.customer_reference = ids.private_text(fmt::format("C-{:06}", dice() % 1'000'000), now.moment.at_ms);
  open.gearbox_serial = known.serial;
  static_cast<void>(needed(job.execute(open, needed(job.context(now, known.vehicle)))));
  return known;
}

/// As the page of past jobs asks for them.
constexpr std::int64_t shown_at_first = 12;

double microseconds(const std::function<void()>& call) {
  const auto start = Clock::now();
  call();
  return std::chrono::duration<double, std::micro>(Clock::now() - start).count();
}

double part_of(std::vector<double> times, double part) {
  std::sort(times.begin(), times.end());
  return times[static_cast<std::size_t>(static_cast<double>(times.size() - 1) * part)];
}

std::string with_a_slip(std::string text, std::mt19937& dice) {
  char& wrong = text[dice() % text.size()];
  wrong = wrong == '7' ? '8' : '7';
  return text;
}

struct Way {
  const char* name;
  std::function<std::string(const Known&)> typed;
};

void measure(Store& store, const std::vector<Known>& jobs, int repeats, std::mt19937& dice) {
  const std::vector<Way> ways{
      {"vehicle number, last 6", [](const Known& job) { return job.vehicle.substr(11); }},
      {"the same, one slip", [&](const Known& job) { return with_a_slip(job.vehicle.substr(11), dice); }},
      {"vehicle number, last 4", [](const Known& job) { return job.vehicle.substr(13); }},
      {"whole vehicle number", [](const Known& job) { return job.vehicle; }},
      {"plate", [](const Known& job) { return job.plate; }},
      {"job number", [](const Known& job) { return job.number; }},
      {"serial", [](const Known& job) { return job.serial; }},
      {"first two characters", [](const Known& job) { return job.vehicle.substr(11, 2); }},
  };
  std::cout << fmt::format("{:24} {:>10} {:>10} {:>10} {:>10}\n", "search", "median us", "99 % us", "look-up us",
                           "99 % to it");
  for (const Way& way : ways) {
    std::vector<double> searches;
    std::vector<double> lookups;
    for (int repeat = 0; repeat < repeats; ++repeat) {
      const Known& sought = jobs[dice() % jobs.size()];
      const std::string typed = way.typed(sought);
      searches.push_back(microseconds([&] { static_cast<void>(needed(store.search(typed, shown_at_first))); }));
      lookups.push_back(microseconds([&] { static_cast<void>(needed(store.jobs_numbered(sought.number))); }));
    }
    std::cout << fmt::format("{:24} {:10.0f} {:10.0f} {:10.0f} {:10.1f}\n", way.name, part_of(searches, 0.5),
                             part_of(searches, 0.99), part_of(lookups, 0.5),
                             part_of(searches, 0.99) / part_of(lookups, 0.5));
  }
}

}  // namespace

/// `search_bench [jobs [repeats]]`: what it takes to find a job among so many, beside one look-up by an index.
int main(int argument_count, char** arguments) {
  const QCoreApplication application(argument_count, arguments);
  const int count = argument_count > 1 ? std::max(1, std::atoi(arguments[1])) : 100'000;
  const int repeats = argument_count > 2 ? std::max(1, std::atoi(arguments[2])) : 300;
  const QTemporaryDir folder(QDir::currentPath() + "/search-bench");
  const auto store = needed(Store::open(folder.filePath("store.sqlite").toStdString(), {Mode::read_write, "MK", 0}));
  needed(store->registers().put(Person{person, "Mara Kern", "MK", std::nullopt, true}, by(0)));
  const std::string sheet = needed(store->registers().add_job_sheet(shipped("sheets/dry-pack-renewal.json"), by(0)));
  const std::string spec = needed(store->registers().add_spec_sheet(shipped("specs/D7-2.json"), by(0)));
  std::mt19937 dice(7);
  IdSource ids;
  std::vector<Known> jobs;
  {
    auto all = needed(Transaction::begin(store->connection()));
    for (int at = 0; at < count; ++at) {
      jobs.push_back(open_job(*store, ids, sheet, spec, at, dice));
      if (at % 10'000 == 9'999) {
        std::cerr << fmt::format("{} jobs\n", at + 1);
      }
    }
    needed(all.commit());
  }
  measure(*store, jobs, repeats, dice);
  return 0;
}
