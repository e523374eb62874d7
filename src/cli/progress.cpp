#include "progress.h"

#include <fmt/format.h>

#include "output.h"

namespace shimwright::cli {

store::BackupWatch told_on_the_way(std::string_view name, const std::function<void(std::string_view)>& tell,
                                   const Clock& clock) {
  static constexpr std::chrono::seconds long_work{2};
  store::BackupWatch watch;
  watch.progress = [name = std::string(name), tell, clock, begun = clock(), told = std::int64_t{-1}](
                       std::int64_t done, std::int64_t of_all) mutable {
    const std::int64_t tenth = of_all > 0 ? done * 10 / of_all : 10;
    if (tenth == told || clock() - begun < long_work) {
      return;
    }
    told = tenth;
    tell(fmt::format("{}: {} of {}", name, done, of_all));
  };
  return watch;
}

store::BackupWatch told_on_the_way(std::string_view name) {
  return told_on_the_way(name, [](std::string_view line) { complain(line); });
}

}  // namespace shimwright::cli
