#include "shimwright/shell/stores.h"

#include <QDir>
#include <QStandardPaths>
#include <algorithm>
#include <utility>
#include <vector>

#include "sheets.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/spec_sheet.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/say.h"

namespace shimwright::shell {

namespace {

struct Shipped {
  bool is_job;
  std::string text;
};

/// Every sheet that comes with the program, the earlier issues of a name first.
Result<std::vector<Shipped>> shipped_sheets() {
  std::vector<Shipped> all;
  for (const char* folder : {"sheets", "specs"}) {
    const bool is_job = QLatin1String(folder) == QLatin1String("sheets");
    const QDir shipped(QStringLiteral(":/shimwright/data/") + QLatin1String(folder));
    for (const QString& file : shipped.entryList(QDir::Files, QDir::Name)) {
      const std::string name = widgets::plain(file.chopped(5));
      auto text = is_job ? cli::shipped_job_sheet(name) : cli::shipped_spec_sheet(name);
      if (!text) {
        return tl::make_unexpected(text.error());
      }
      all.push_back({is_job, std::move(*text)});
    }
  }
  return all;
}

Result<void> enter_sheet(store::Registers& registers, const Shipped& sheet, const store::By& by) {
  auto added = sheet.is_job ? registers.add_job_sheet(sheet.text, by) : registers.add_spec_sheet(sheet.text, by);
  return added ? Result<void>() : tl::make_unexpected(added.error());
}

Result<void> add_shipped_sheets(store::Registers& registers, const store::By& by) {
  auto all = shipped_sheets();
  if (!all) {
    return tl::make_unexpected(all.error());
  }
  for (const Shipped& each : *all) {
    if (auto added = enter_sheet(registers, each, by); !added) {
      return added;
    }
  }
  return {};
}

template <class Sheet>
bool is_later(const Result<Sheet>& shipped, const std::string& name,
              const Result<std::vector<store::SheetIssue>>& here) {
  return shipped && here && std::any_of(here->begin(), here->end(), [&](const store::SheetIssue& latest) {
           return latest.name == name && latest.issue < shipped->issue;
         });
}

/// Whether the workshop has this sheet, and only in issues before this one.
bool is_later_here(const store::Registers& registers, const Shipped& sheet) {
  if (sheet.is_job) {
    const auto shipped = sheet::read_job_sheet(sheet.text);
    return is_later(shipped, shipped ? shipped->name : std::string(), registers.job_sheets());
  }
  const auto shipped = sheet::read_spec_sheet(sheet.text);
  return is_later(shipped, shipped ? shipped->gearbox : std::string(), registers.spec_sheets());
}

Result<void> enter_workshop(store::Registers& registers, const Beginning& beginning, store::IdSource& ids,
                            const store::By& by) {
  auto there = registers.workshop();
  if (!there) {
    return tl::make_unexpected(there.error());
  }
  const std::optional<store::Workshop>& known = *there;
  if (known && beginning.workshop.empty()) {
    return {};
  }
  const std::string id = known ? known->id : ids.id(by.moment.at_ms);
  return registers.put(store::Workshop{id, beginning.workshop, beginning.address, beginning.logo}, by);
}

Result<void> enter_person(store::Registers& registers, const Beginning& beginning, store::IdSource& ids,
                          const store::By& by) {
  auto there = registers.persons();
  if (!there) {
    return tl::make_unexpected(there.error());
  }
  const bool known = std::any_of(there->begin(), there->end(), [&](const store::Person& each) {
    return each.active && each.initials == beginning.initials && each.name == beginning.person;
  });
  return known ? Result<void>()
               : registers.put(
                     store::Person{ids.id(by.moment.at_ms), beginning.person, beginning.initials, std::nullopt, true},
                     by);
}

}  // namespace

StorePlaces places_of_this_person() {
  const QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
  return {widgets::plain(folder.absoluteFilePath(QStringLiteral("workshop.shimwright"))),
          widgets::plain(folder.absoluteFilePath(QStringLiteral("demo/workshop.shimwright")))};
}

Result<void> begin_workshop(store::Store& store, const Beginning& beginning, store::IdSource& ids,
                            const job::Moment& now) {
  const store::By by{"", now};
  store::Registers& registers = store.registers();
  if (auto added = add_shipped_sheets(registers, by); !added) {
    return added;
  }
  if (auto entered = enter_workshop(registers, beginning, ids, by); !entered) {
    return entered;
  }
  return enter_person(registers, beginning, ids, by);
}

Result<void> add_later_issues(store::Store& store, const job::Moment& now) {
  auto all = shipped_sheets();
  if (!all) {
    return tl::make_unexpected(all.error());
  }
  for (const Shipped& each : *all) {
    if (!is_later_here(store.registers(), each)) {
      continue;
    }
    // A workshop that added a caution of its own to an issue goes on with its own.
    if (auto added = enter_sheet(store.registers(), each, {"", now}); !added && added.error().code != "no_reason") {
      return added;
    }
  }
  return {};
}

}  // namespace shimwright::shell
