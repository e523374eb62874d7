#include <QDate>
#include <QDateTime>
#include <QString>

#include <nlohmann/json.hpp>

#include "arguments.h"
#include "commands.h"
#include "progress.h"
#include "shimwright/store/measurement_export.h"
#include "shimwright/store/vehicle_history.h"
#include "shimwright/vehicle/vehicle_number.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

using nlohmann::ordered_json;
using store::TableForm;

constexpr std::int64_t metres_in_km = 1000;

std::string in_a_line(const ordered_json& value) {
  return value.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

Exit told(const Error& error) {
  return error.code == "disk_full" || error.code == "disk_fault" ? failed(error) : refused(error);
}

ordered_json float_json(const record::FloatInLife& of_disc) {
  ordered_json json{{"side", std::string(sheet::name_of(of_disc.side))},
                    {"as_found", of_disc.as_found},
                    {"mean_um", of_disc.mean_um},
                    {"least_um", of_disc.least.count()},
                    {"most_um", of_disc.most.count()},
                    {"verdict", std::string(job::name_of(of_disc.verdict))}};
  if (of_disc.expanded_u_um) {
    json["expanded_u_um"] = *of_disc.expanded_u_um;
  }
  return json;
}

ordered_json job_json(const store::JobOfVehicle& job) {
  ordered_json shims = ordered_json::object();
  for (const auto& [side, shim] : job.life.shims) {
    shims[std::string(sheet::name_of(side))] = shim;
  }
  ordered_json floats = ordered_json::array();
  for (const record::FloatInLife& each : job.life.floats) {
    floats.push_back(float_json(each));
  }
  ordered_json json{{"job", job.summary.id},
                    {"number", job.summary.number},
                    {"state", std::string(store::name_of(job.summary.standing))},
                    {"sealed", job.seal == record::SealStanding::holds},
                    {"addenda", job.life.addenda},
                    {"opened_at_ms", job.summary.opened_at_ms},
                    {"shims", std::move(shims)},
                    {"floats", std::move(floats)}};
  if (job.seal) {
    json["seal"] = std::string(record::name_of(*job.seal));
  }
  if (job.life.odometer) {
    json["odometer_km"] = job.life.odometer->base / metres_in_km;
  }
  return json;
}

/// Where each form goes; none where none was asked for.
std::vector<std::pair<TableForm, std::string>> files_of(const Arguments& arguments) {
  std::vector<std::pair<TableForm, std::string>> files;
  for (const auto& [name, form] : {std::pair("csv", TableForm::csv), std::pair("json", TableForm::json)}) {
    if (const auto found = arguments.options.find(name); found != arguments.options.end()) {
      files.emplace_back(form, absolute(found->second));
    }
  }
  return files;
}

Exit export_to(store::Store& store, const store::JobIds& jobs, const Arguments& arguments) {
  for (const auto& [form, file] : files_of(arguments)) {
    auto report = store::export_jobs(store, jobs, file, form, told_on_the_way("measurements"));
    if (!report) {
      return told(report.error());
    }
    say(in_a_line(ordered_json{{"file", report->file}, {"jobs", report->jobs}}));
  }
  return Exit::done;
}

/// The moment the day begins by this machine's clock; `later` days after that.
Result<std::int64_t> day_begins(const Arguments& arguments, const std::string& option, int later) {
  const std::string& text = arguments.options.at(option);
  const QDate day = QDate::fromString(QString::fromStdString(text), Qt::ISODate);
  if (!day.isValid() || text.size() != 10) {
    return refuse("bad_day", "--" + option, SHIMWRIGHT_TEXT("cli", "“{0}” is no day: write it as 2026-11-24."), {text});
  }
  return day.addDays(later).startOfDay().toMSecsSinceEpoch();
}

Result<store::Period> period_of(const Arguments& arguments) {
  auto from = day_begins(arguments, "from", 0);
  auto to = from ? day_begins(arguments, "to", 1) : from;
  if (!to) {
    return tl::make_unexpected(to.error());
  }
  if (*to <= *from) {
    return refuse("bad_period", "--to", SHIMWRIGHT_TEXT("cli", "The last day lies before the first: change the two."));
  }
  return store::Period{*from, *to};
}

}  // namespace

Exit run_vehicle(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {1, 1, {"store", "csv", "json"}, {"store"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto store = open_to_look(arguments->options.at("store"));
  if (!store) {
    return refused(store.error());
  }
  const std::string key = vehicle::folded_key(arguments->positional.front());
  auto history = store::vehicle_history(**store, key, SIZE_MAX, told_on_the_way("vehicle"));
  if (!history) {
    return refused(history.error());
  }
  if (history->jobs.empty()) {
    return refused(
        Error{"unknown_vehicle",
              key,
              {SHIMWRIGHT_TEXT("cli", "There is no job of this vehicle in the store; look at its number again."), {}}});
  }
  store::JobIds jobs;
  for (const store::JobOfVehicle& each : history->jobs) {
    say(in_a_line(job_json(each)));
    jobs.insert(jobs.begin(), each.summary.id);
  }
  for (const record::Wear& each : store::wear_of(*history)) {
    say(in_a_line(ordered_json{{"pack", each.pack},
                               {"side", std::string(sheet::name_of(each.side))},
                               {"wear", each.facts.in_english() + " " + each.conclusion.in_english()}}));
  }
  return export_to(**store, jobs, *arguments);
}

Exit run_measurements(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {0, 0, {"store", "from", "to", "csv", "json"}, {"store", "from", "to"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto period = period_of(*arguments);
  if (!period) {
    return refused(period.error());
  }
  if (files_of(*arguments).empty()) {
    return refused(
        Error{"option_missing",
              "--csv",
              {SHIMWRIGHT_TEXT("cli", "Say where the measurements go: --csv OUT, --json OUT or both."), {}}});
  }
  auto store = open_to_look(arguments->options.at("store"));
  if (!store) {
    return refused(store.error());
  }
  auto jobs = store::jobs_of_period(**store, *period);
  if (!jobs) {
    return refused(jobs.error());
  }
  return export_to(**store, *jobs, *arguments);
}

Exit run_figures(const std::vector<std::string>& words) {
  auto arguments =
      read_arguments(words, {0, 0, {"store", "from", "to", "within-km", "within-days"}, {"store", "from", "to"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto period = period_of(*arguments);
  if (!period) {
    return refused(period.error());
  }
  store::BackWithin within;
  for (const auto& [name, value, unit] : {std::tuple("within-km", &within.distance_m, metres_in_km),
                                          std::tuple("within-days", &within.days, std::int64_t{1})}) {
    if (const auto found = arguments->options.find(name); found != arguments->options.end()) {
      bool is_number = false;
      const int number = QString::fromStdString(found->second).toInt(&is_number);
      if (!is_number || number < 0) {
        return refused(Error{"not_a_number",
                             "--" + std::string(name),
                             {SHIMWRIGHT_TEXT("cli", "“{0}” is no whole number from 0 on."), {found->second}}});
      }
      *value = std::int64_t{number} * unit;
    }
  }
  auto store = open_to_look(arguments->options.at("store"));
  if (!store) {
    return refused(store.error());
  }
  auto figures = store::figures_of(**store, *period, within, told_on_the_way("figures"));
  if (!figures) {
    return refused(figures.error());
  }
  for (const auto& [month, jobs] : figures->by_month) {
    say(in_a_line(ordered_json{{"year", month.year}, {"month", month.month}, {"jobs", jobs.size()}}));
  }
  for (const auto& [name, jobs] : figures->by_shim) {
    say(in_a_line(ordered_json{{"gearbox", name.gearbox},
                               {"side", std::string(sheet::name_of(name.side))},
                               {"shim", name.shim},
                               {"jobs", jobs.size()}}));
  }
  say(in_a_line(ordered_json{{"jobs", figures->jobs.size()},
                             {"from_elsewhere", figures->elsewhere.size()},
                             {"with_shim", figures->with_shim.size()},
                             {"second_assembly", figures->again.size()},
                             {"trials", figures->trials},
                             {"shims_found", figures->shims_found},
                             {"back", figures->back.size()},
                             {"back_distance_unknown", figures->back_by_time.size()}}));
  return Exit::done;
}

}  // namespace shimwright::cli
