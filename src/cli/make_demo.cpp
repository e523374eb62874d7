#include <fmt/format.h>

#include <array>
#include <charconv>
#include <nlohmann/json.hpp>

#include "arguments.h"
#include "commands.h"
#include "demo_bench.h"
#include "demo_calendar.h"
#include "demo_vehicles.h"
#include "sheets.h"
#include "shimwright/job/decide.h"
#include "shimwright/job/evolve.h"
#include "shimwright/record/hash.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

Script demo_workshop(const std::string& spec) {
  Script script;
  script.workshop_name = "Hollow Lane Gearboxes";
  script.workshop_address = "4 Hollow Lane · 01000 000 000";
  script.sheet = "dry-pack-renewal";
  script.spec = spec;
  script.people = {{"MK", "Mara Kestrel"}, {"RT", "Rolf Tarn"}, {"JO", "Jo Ossian"}};
  using Kind = sheet::InstrumentKind;
  script.instruments = {
      {"", "dial 2", Kind::dial_gauge, 10, 10, "2099-11-30", quantity::micrometres(1000)},
      {"", "depth 1", Kind::depth_gauge, 10, 20, "2099-03-02", std::nullopt},
      {"", "micrometer 1", Kind::micrometer, 1, 2, "2099-05-12", std::nullopt},
      {"", "wrench 3", Kind::torque_wrench, 100, 300, "2099-03-02", std::nullopt},
      {"", "thermometer 1", Kind::thermometer, 100, 500, "2099-07-01", std::nullopt},
      {"", "meter 1", Kind::multimeter, 10, 50, "2099-08-01", std::nullopt},
  };
  return script;
}

struct DemoSetting {
  store::Store& store;
  store::IdSource& ids;
  KnownHere known;
  job::Sheets sheets;
  std::vector<job::AddPhoto> photos;
};

/// Some time in the morning of a working day; the jobs are spread over all of them.
std::int64_t start_of(int job, int jobs, Dice& dice) {
  constexpr std::int64_t within_ms = std::int64_t{3} * 60 * 60 * 1000;
  return morning_of(demo_working_days * job / jobs) + dice.between(0, within_ms);
}

/// One in twenty is open, and only of the last tenth: no vehicle waits for years.
bool stays_open(int job, int jobs, Dice& dice) {
  return std::int64_t{10} * job >= std::int64_t{9} * jobs && dice.one_in(2);
}

const char* waits_for(Dice& dice) {
  constexpr std::array reasons{"parts on order", "the customer's answer", "a bearing from the dealer"};
  return reasons.at(static_cast<std::size_t>(dice.below(reasons.size())));
}

/// One job in memory, then in one transaction: a demonstration store has no reading anyone waits to see saved.
class DemoJob {
 public:
  DemoJob(DemoSetting& setting, Dice& dice, std::int64_t start_ms)
      : setting_(setting), dice_(dice), state_(job::begin(setting.sheets)), at_ms_(start_ms) {}

  Result<void> run(DemoVehicle& vehicle, const std::string& number, bool leave_open) {
    id_ = setting_.ids.id(at_ms_);
    auto context = setting_.store.context(id_, *setting_.sheets.spec, vehicle.vin, by("MK"));
    if (!context) {
      return tl::make_unexpected(context.error());
    }
    context_ = *std::move(context);
    if (auto opened = open(vehicle, number); !opened) {
      return opened;
    }
    DemoTechnician technician(vehicle.gearbox, setting_.photos, dice_);
    const std::size_t stop_after = leave_open ? static_cast<std::size_t>(dice_.between(10, 110)) : 1'000;
    for (std::size_t done = 0; done < stop_after; ++done) {
      const auto command = technician.next(state_, context_);
      if (!command) {
        break;
      }
      if (auto taken = take(*command); !taken) {
        return taken;
      }
    }
    if (state_.closed) {
      vehicle.gearbox = left_by(state_, vehicle.gearbox, context_);
      vehicle.left_at_ms = at_ms_;
    } else if (auto parked = take(job::Park{waits_for(dice_), ""}); !parked) {
      return parked;
    }
    return setting_.store.append(id_, entries_, texts_, state_);
  }

 private:
  [[nodiscard]] store::By by(const std::string& initials) const {
    return {setting_.known.people.at(initials), {at_ms_, demo_offset_min, false}};
  }

  Result<void> open(const DemoVehicle& vehicle, const std::string& number) {
    job::OpenJob open;
    open.number = number;
    open.vehicle_typed = vehicle.vin;
    open.plate = setting_.ids.private_text("DEMO " + vehicle.vin.substr(14), at_ms_);
    open.customer_reference = setting_.ids.private_text(fmt::format("C-{:05}", dice_.below(100'000)), at_ms_);
    open.complaint = setting_.ids.private_text(dice_.one_in(2) ? "shudders pulling away" : "slips when hot", at_ms_);
    open.odometer = std::to_string(vehicle.kilometres);
    open.gearbox_serial = fmt::format("{}-{}", setting_.sheets.spec->gearbox, vehicle.vin.substr(11));
    return take(open);
  }

  Result<void> take(const job::Command& command) {
    at_ms_ = at_work(at_ms_ + dice_.between(20'000, 400'000));
    context_.now = {at_ms_, demo_offset_min, false};
    const auto* signing = std::get_if<job::Sign>(&command);
    const sheet::Step* step = signing == nullptr ? nullptr : state_.sheets.job->find(signing->step);
    const auto* sign = step == nullptr ? nullptr : std::get_if<sheet::SignStep>(&step->body);
    context_.person = setting_.known.people.at(sign != nullptr && sign->signer == sheet::Signer::checker ? "RT" : "MK");
    auto entries = job::decide(state_, command, context_);
    if (!entries) {
      return tl::make_unexpected(entries.error());
    }
    for (job::Entry& entry : *entries) {
      state_ = job::evolve(std::move(state_), entry);
      entries_.push_back(std::move(entry));
    }
    for (job::PrivateText& text : job::private_texts_of(command)) {
      texts_.push_back(std::move(text));
    }
    return {};
  }

  DemoSetting& setting_;
  Dice& dice_;
  job::JobState state_;
  job::Context context_;
  std::string id_;
  std::int64_t at_ms_;
  std::vector<job::Entry> entries_;
  std::vector<job::PrivateText> texts_;
};

/// Kept once, however many jobs show them.
Result<std::vector<job::AddPhoto>> demo_photos(store::Store& store) {
  const std::vector<std::array<const char*, 3>> shipped{
      {"received-photos", "as-received", "as it came in"}, {"received-photos", "instruments", "the lamps as they were"},
      {"strip-photos", "disc-lower", "lower disc"},        {"strip-photos", "disc-upper", "upper disc"},
      {"strip-photos", "levers", "levers, as taken out"},
  };
  std::vector<job::AddPhoto> photos;
  for (const auto& [step, name, caption] : shipped) {
    auto kept = store.keep_photo(fmt::format(":/shimwright/data/demo/photos/{}.png", name));
    if (!kept) {
      return tl::make_unexpected(kept.error());
    }
    photos.push_back({step, kept->sha256, kept->media_type, kept->bytes, caption});
  }
  return photos;
}

Result<DemoSetting> setting_for(store::Store& store, store::IdSource& ids, const std::string& spec_name) {
  auto known = settle_in(store, demo_workshop(spec_name), ids);
  if (!known) {
    return tl::make_unexpected(known.error());
  }
  auto sheet_text = shipped_job_sheet("dry-pack-renewal");
  auto spec_text = sheet_text ? shipped_spec_sheet(spec_name) : sheet_text;
  if (!spec_text) {
    return tl::make_unexpected(spec_text.error());
  }
  auto sheet = sheet::read_job_sheet(*sheet_text);
  if (!sheet) {
    return tl::make_unexpected(sheet.error());
  }
  auto spec = sheet::read_spec_sheet(*spec_text);
  if (!spec) {
    return tl::make_unexpected(spec.error());
  }
  auto photos = demo_photos(store);
  if (!photos) {
    return tl::make_unexpected(photos.error());
  }
  return DemoSetting{store,
                     ids,
                     *known,
                     {std::make_shared<const sheet::JobSheet>(*std::move(sheet)), known->sheet_hash,
                      std::make_shared<const sheet::SpecSheet>(*std::move(spec)), known->spec_hash},
                     *std::move(photos)};
}

Result<int> number_option(const Arguments& arguments, const std::string& name, int least, int most, int absent) {
  const auto found = arguments.options.find(name);
  if (found == arguments.options.end()) {
    return absent;
  }
  int number = 0;
  const std::string& text = found->second;
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (fault != std::errc() || end != text.data() + text.size() || number < least || number > most) {
    return refuse("out_of_range", "--" + name, SHIMWRIGHT_TEXT("cli", "A whole number from {0} to {1} is needed here."),
                  {std::to_string(least), std::to_string(most)});
  }
  return number;
}

Result<void> fill(store::Store& store, int jobs, int seed) {
  store::IdSource ids;
  auto d7 = setting_for(store, ids, "D7-3");
  auto d6 = d7 ? setting_for(store, ids, "D6-2") : tl::make_unexpected(d7.error());
  if (!d6) {
    return tl::make_unexpected(d6.error());
  }
  Dice dice(static_cast<std::uint64_t>(seed));
  DemoVehicles vehicles;
  const DemoSpecs specs{*d7->sheets.spec, *d6->sheets.spec};
  for (int at = 0; at < jobs; ++at) {
    const std::int64_t start = start_of(at, jobs, dice);
    DemoVehicle& vehicle = vehicles.next(start, specs, dice);
    DemoJob job(vehicle.by_depth ? *d6 : *d7, dice, start);
    if (auto done = job.run(vehicle, std::to_string(1001 + at), stays_open(at, jobs, dice)); !done) {
      return done;
    }
    if ((at + 1) % 100 == 0 || at + 1 == jobs) {
      complain(fmt::format("make-demo: {} of {} jobs", at + 1, jobs));
    }
  }
  return {};
}

}  // namespace

Exit run_make_demo(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {0, 0, {"jobs", "store", "seed"}, {"jobs", "store"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto jobs = number_option(*arguments, "jobs", 1, 1'000'000, 1);
  if (!jobs) {
    return refused(jobs.error());
  }
  auto seed = number_option(*arguments, "seed", 0, 2'000'000'000, 1);
  if (!seed) {
    return refused(seed.error());
  }
  auto store = open_to_write(arguments->options.at("store"), "make-demo");
  if (!store) {
    return refused(store.error());
  }
  auto there = (*store)->jobs(1);
  if (!there || !there->empty()) {
    return there
               ? refused(Error{"not_empty", arguments->options.at("store"),
                               Message{SHIMWRIGHT_TEXT("cli", "This store holds jobs already: name a new file."), {}}})
               : failed(there.error());
  }
  if (auto done = fill(**store, *jobs, *seed); !done) {
    return failed(done.error());
  }
  say(nlohmann::ordered_json{{"jobs", *jobs}, {"seed", *seed}, {"store", absolute(arguments->options.at("store"))}}
          .dump());
  return Exit::done;
}

}  // namespace shimwright::cli
