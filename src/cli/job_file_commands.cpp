#include <QDir>
#include <QFileInfo>

#include <nlohmann/json.hpp>

#include "arguments.h"
#include "commands.h"
#include "progress.h"
#include "shimwright/store/exchange.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

using nlohmann::ordered_json;

std::string in_one_line(const ordered_json& value) {
  return value.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

/// What the disk did is no fault of what was asked for.
Exit told_by_cause(const Error& error) {
  return error.code == "disk_full" || error.code == "disk_fault" ? failed(error) : refused(error);
}

Result<std::string> place_for(const store::Store& store, const std::string& job, const std::string& out) {
  const std::string place = absolute(out);
  if (!QFileInfo(QString::fromStdString(place)).isDir()) {
    return place;
  }
  auto jobs = store.load(job);
  if (!jobs) {
    return tl::make_unexpected(jobs.error());
  }
  const auto* opened = std::get_if<job::Opened>(&jobs->entries.front().body);
  const std::string name = store::export_name(opened == nullptr ? std::string() : opened->number, job);
  return QDir(QString::fromStdString(place)).absoluteFilePath(QString::fromStdString(name)).toStdString();
}

ordered_json import_line(const store::ImportReport& report) {
  ordered_json told = ordered_json::array();
  for (const Message& each : report.told) {
    told.push_back(each.in_english());
  }
  return {{"job", report.job},
          {"number", report.number},
          {"from_store", report.from_store},
          {"from_workshop", report.from_workshop},
          {"entries_there", report.entries_there},
          {"entries_new", report.entries_new},
          {"photos_new", report.photos_new},
          {"sealed", report.sealed},
          {"told", std::move(told)}};
}

}  // namespace

Exit run_export(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {2, 2, {"store"}, {"store"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  const std::string path = absolute(arguments->options.at("store"));
  auto store = open_to_look(path);
  if (!store) {
    return refused(store.error());
  }
  auto job = job_named(**store, arguments->positional[0]);
  auto out = job ? place_for(**store, *job, arguments->positional[1]) : job;
  if (!out) {
    return refused(out.error());
  }
  auto report = store::export_job(path, *job, *out, told_on_the_way("export"));
  if (!report) {
    return told_by_cause(report.error());
  }
  say(in_one_line({{"job", *job},
                   {"number", report->number},
                   {"file", report->file},
                   {"entries", report->entries},
                   {"photos", report->photos}}));
  return Exit::done;
}

Exit run_import(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {1, 1, {"store"}, {"store"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  const std::string path = absolute(arguments->options.at("store"));
  // An import into a store that is not there would begin one.
  if (auto there = open_to_look(path); !there) {
    return refused(there.error());
  }
  auto store = open_to_write(path, "shimwright-cli");
  if (!store) {
    return refused(store.error());
  }
  auto report =
      store::import_job(path, absolute(arguments->positional.front()), {"", moment_now()}, told_on_the_way("import"));
  if (!report) {
    return told_by_cause(report.error());
  }
  for (const Message& each : report->told) {
    complain(Error{{}, {}, each}.in_english());
  }
  say(in_one_line(import_line(*report)));
  return Exit::done;
}

}  // namespace shimwright::cli
