#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "arguments.h"
#include "commands.h"
#include "progress.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/check.h"
#include "shimwright/vehicle/vehicle_number.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

using nlohmann::ordered_json;

std::string one_line(const ordered_json& value) {
  return value.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

ordered_json found_line(const store::Found& found) {
  ordered_json line{{"job", found.job.id},
                    {"number", found.job.number},
                    {"vehicle", found.job.vehicle_key},
                    {"gearbox", found.job.gearbox},
                    {"state", std::string(store::name_of(found.job.standing))},
                    {"assembly", found.job.assembly},
                    {"found_in", std::string(store::name_of(found.place))},
                    {"exact", found.exact}};
  if (found.taken_back) {
    line["taken_back"] = true;
  }
  if (!found.job.next_step.empty()) {
    line["next"] = found.job.next_step;
  }
  return line;
}

}  // namespace

Exit run_find(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {1, 1, {"store"}, {"store"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto store = open_to_look(arguments->options.at("store"));
  if (!store) {
    return refused(store.error());
  }
  auto found = (*store)->search(arguments->positional.front());
  if (!found) {
    return refused(found.error());
  }
  for (const store::Found& each : found->jobs) {
    say(one_line(found_line(each)));
  }
  if (found->more) {
    complain("There are others: search for more characters to narrow them down.");
  }
  return Exit::done;
}

Exit run_check(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {0, 0, {"store"}, {"store"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto store = open_to_look(arguments->options.at("store"));
  if (!store) {
    // A store that cannot even be opened because it is damaged is a finding, not a wrong request.
    return store.error().code == "store_damaged" ? failed(store.error()) : refused(store.error());
  }
  auto report = store::check(**store, told_on_the_way("check"));
  if (!report) {
    return failed(report.error());
  }
  for (const store::Finding& each : report->findings) {
    complain(each.place() + ": " + each.message.in_english());
  }
  say(one_line(ordered_json{{"in_order", report->in_order()},
                            {"jobs", report->jobs},
                            {"entries", report->entries},
                            {"photos", report->photos},
                            {"erased_texts", report->erased_texts},
                            {"sealed_elsewhere", report->sealed_elsewhere},
                            {"findings", report->findings.size()}}));
  return report->in_order() ? Exit::done : Exit::off;
}

Exit run_erase(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {1, 1, {"store"}, {"store"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto there = open_to_look(arguments->options.at("store"));
  if (!there) {
    return refused(there.error());
  }
  there->reset();
  auto store = open_to_write(arguments->options.at("store"), "shimwright-cli");
  if (!store) {
    return refused(store.error());
  }
  const std::string vehicle = vehicle::folded_key(arguments->positional.front());
  auto erased = (*store)->erase_vehicle_texts(vehicle, {"", moment_now()});
  if (!erased) {
    return erased.error().code == "unknown_vehicle" ? refused(erased.error()) : failed(erased.error());
  }
  say(one_line(ordered_json{{"vehicle", vehicle}, {"erased", *erased}}));
  return Exit::done;
}

Exit run_backup(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {1, 1, {"store"}, {"store"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  const std::string out = absolute(arguments->positional.front());
  auto report = store::back_up(absolute(arguments->options.at("store")), out, told_on_the_way("backup"));
  if (!report) {
    const bool disk = report.error().code == "disk_full" || report.error().code == "disk_fault" ||
                      report.error().code == "backup_wrong";
    return disk ? failed(report.error()) : refused(report.error());
  }
  say(one_line(ordered_json{{"backup", out},
                            {"entries", report->entries},
                            {"photos_copied", report->photos_copied},
                            {"photos_there", report->photos_there},
                            {"photos_gone", report->photos_gone}}));
  return Exit::done;
}

}  // namespace shimwright::cli
