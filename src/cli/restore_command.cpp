#include <nlohmann/json.hpp>

#include "arguments.h"
#include "commands.h"
#include "progress.h"
#include "shimwright/store/restore.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

using nlohmann::ordered_json;

Exit look_only(const std::string& path, const std::string& backup) {
  auto offer = store::look_at_backup(path, backup, told_on_the_way("restore"));
  if (!offer) {
    return refused(offer.error());
  }
  ordered_json line{
      {"backup", offer->file}, {"last_at_ms", offer->last_at_ms}, {"jobs", offer->jobs}, {"entries", offer->entries}};
  const auto& missing = offer->missing;
  if (missing) {
    line["missing"] = {{"jobs", missing->jobs}, {"entries", missing->entries}};
  }
  complain(store::told_before_restore(*offer).in_english());
  if (const auto photos = offer->told_of_photos()) {
    complain(photos->in_english());
  }
  say(line.dump());
  return Exit::done;
}

}  // namespace

Exit run_restore(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {1, 1, {"store"}, {"store"}, {"look"}});
  if (!arguments) {
    return refused(arguments.error());
  }
  const std::string path = absolute(arguments->options.at("store"));
  const std::string backup = absolute(arguments->positional.front());
  if (arguments->flags.count("look") != 0) {
    return look_only(path, backup);
  }
  auto report = store::restore(path, backup, {store::Mode::read_write, "shimwright-cli", moment_now().at_ms});
  if (!report) {
    const std::string& code = report.error().code;
    const bool disk = code == "disk_full" || code == "disk_fault" || code == "restore_differs";
    return disk ? failed(report.error()) : refused(report.error());
  }
  say(ordered_json{{"backup", backup},
                   {"kept", report->kept},
                   {"jobs", report->jobs},
                   {"entries_compared", report->entries},
                   {"photos", report->photos},
                   {"photos_gone", report->photos_gone},
                   {"erased_again", report->erased}}
          .dump());
  return Exit::done;
}

}  // namespace shimwright::cli
