#include <QFileInfo>
#include <QString>

#include <nlohmann/json.hpp>
#include <optional>

#include "arguments.h"
#include "commands.h"
#include "progress.h"
#include "shimwright/store/check.h"
#include "shimwright/store/rescue.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

/// Where the window keeps them when nobody chose another place.
std::string backups_beside(const std::string& store) {
  return QFileInfo(QString::fromStdString(store)).absolutePath().toStdString() + "/backups";
}

bool is_in_order(const std::string& path) {
  auto store = open_to_look(path);
  if (!store) {
    return false;
  }
  auto report = store::check(**store, told_on_the_way("check"));
  return report && report->in_order();
}

nlohmann::ordered_json offer_line(const store::BackupOffer& offer) {
  nlohmann::ordered_json line{
      {"backup", offer.file}, {"last_at_ms", offer.last_at_ms}, {"jobs", offer.jobs}, {"entries", offer.entries}};
  if (offer.missing) {
    line["missing"] = {{"jobs", offer.missing->jobs}, {"entries", offer.missing->entries}};
  } else {
    line["missing"] = nullptr;
  }
  return line;
}

Result<std::string> put_back_for(const std::string& path, const std::string& backup) {
  if (is_in_order(path)) {
    return refuse("store_in_order", path,
                  SHIMWRIGHT_TEXT("cli", "This store is in order, so no backup was put in its place."));
  }
  return store::put_back(path, backup, {store::Mode::read_write, "shimwright-cli", moment_now().at_ms});
}

}  // namespace

Exit run_rescue(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {0, 0, {"store", "from"}, {"store"}, {"put-back"}});
  if (!arguments) {
    return refused(arguments.error());
  }
  const std::string path = absolute(arguments->options.at("store"));
  const auto from = arguments->options.find("from");
  const std::string folder = from == arguments->options.end() ? backups_beside(path) : absolute(from->second);
  auto offer = store::last_whole_backup(path, folder, told_on_the_way("rescue"));
  if (!offer) {
    return refused(offer.error());
  }
  const std::optional<store::BackupOffer>& found = *offer;
  if (!found) {
    return failed(Error{
        "no_backup",
        folder,
        {SHIMWRIGHT_TEXT("cli", "There is no whole backup of this store in {0}: name another folder."), {folder}}});
  }
  auto line = offer_line(*found);
  if (arguments->flags.count("put-back") != 0) {
    auto kept = put_back_for(path, found->file);
    if (!kept) {
      return refused(kept.error());
    }
    line["kept"] = *kept;
  }
  complain(found->told().in_english());
  if (const auto photos = found->told_of_photos()) {
    complain(photos->in_english());
  }
  say(line.dump());
  return Exit::done;
}

}  // namespace shimwright::cli
