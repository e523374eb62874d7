#include "shimwright/shell/stores.h"

#include <QDir>
#include <QStandardPaths>
#include <algorithm>

#include "sheets.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/say.h"

namespace shimwright::shell {

namespace {

Result<void> add_shipped_sheets(store::Registers& registers, const store::By& by) {
  for (const char* folder : {"sheets", "specs"}) {
    const bool jobs = QLatin1String(folder) == QLatin1String("sheets");
    const QDir shipped(QStringLiteral(":/shimwright/data/") + QLatin1String(folder));
    for (const QString& file : shipped.entryList(QDir::Files, QDir::Name)) {
      const std::string name = widgets::plain(file.chopped(5));
      auto text = jobs ? cli::shipped_job_sheet(name) : cli::shipped_spec_sheet(name);
      auto added = !text ? text : jobs ? registers.add_job_sheet(*text, by) : registers.add_spec_sheet(*text, by);
      if (!added) {
        return tl::make_unexpected(added.error());
      }
    }
  }
  return {};
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

}  // namespace shimwright::shell
