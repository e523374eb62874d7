#include "workshop.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QString>
#include <QTemporaryDir>
#include <algorithm>
#include <utility>

#include "sheets.h"
#include "shimwright/json/value.h"

namespace shimwright::cli {

namespace {

template <class Value>
tl::unexpected<Error> passed_on(const Result<Value>& result) {
  return tl::make_unexpected(result.error());
}

/// A refusal of the registers, `person/name`, at its place in the script: `/people/3/name`.
tl::unexpected<Error> refused_at(const std::string& place, Error error) {
  const auto rest = error.place.find('/');
  error.place = place + (rest == std::string::npos ? std::string() : error.place.substr(rest));
  return tl::make_unexpected(std::move(error));
}

void give_pin(const ScriptPerson& scripted, const std::string& id, KnownHere& known) {
  if (!scripted.pin.empty()) {
    known.pins[id] = scripted.pin;
  }
}

Result<void> settle_people(store::Store& store, const Script& script, store::IdSource& ids, const store::By& by,
                           KnownHere& known) {
  auto there = store.registers().persons();
  if (!there) {
    return passed_on(there);
  }
  for (const store::Person& each : *there) {
    known.people[each.initials] = each.id;
  }
  for (std::size_t at = 0; at < script.people.size(); ++at) {
    const ScriptPerson& each = script.people[at];
    if (const auto person = known.people.find(each.initials); person != known.people.end()) {
      give_pin(each, person->second, known);
      continue;
    }
    const store::Person person{ids.id(by.moment.at_ms), each.name, each.initials, std::nullopt, true};
    if (auto put = store.registers().put(person, by); !put) {
      return refused_at(json::pointer("/people", at), put.error());
    }
    known.people[each.initials] = person.id;
    give_pin(each, person.id, known);
  }
  return {};
}

Result<void> settle_instruments(store::Store& store, const Script& script, store::IdSource& ids, const store::By& by,
                                KnownHere& known) {
  auto there = store.registers().instruments();
  if (!there) {
    return passed_on(there);
  }
  for (const job::Instrument& each : *there) {
    known.instruments[each.name] = each.id;
  }
  for (std::size_t at = 0; at < script.instruments.size(); ++at) {
    job::Instrument each = script.instruments[at];
    if (known.instruments.count(each.name) != 0) {
      continue;
    }
    each.id = ids.id(by.moment.at_ms);
    if (auto put = store.registers().put(each, by); !put) {
      return refused_at(json::pointer("/instruments", at), put.error());
    }
    known.instruments[each.name] = each.id;
  }
  return {};
}

Result<void> settle_trays(store::Store& store, const Script& script, store::IdSource& ids, const store::By& by) {
  for (std::size_t at = 0; at < script.trays.size(); ++at) {
    const ScriptTray& each = script.trays[at];
    auto there = store.registers().tray_named(each.name);
    if (!there) {
      return passed_on(there);
    }
    if (*there) {
      continue;
    }
    if (auto put = store.registers().put(store::Tray{ids.id(by.moment.at_ms), each.name, each.shims}, by); !put) {
      return refused_at(json::pointer("/trays", at), put.error());
    }
  }
  return {};
}

Result<void> settle_sheets(store::Store& store, const Script& script, const store::By& by, KnownHere& known) {
  auto sheet = shipped_job_sheet(script.sheet);
  if (!sheet) {
    return passed_on(sheet);
  }
  auto spec = shipped_spec_sheet(script.spec);
  if (!spec) {
    return passed_on(spec);
  }
  auto sheet_hash = store.registers().add_job_sheet(*sheet, by);
  if (!sheet_hash) {
    return passed_on(sheet_hash);
  }
  auto spec_hash = store.registers().add_spec_sheet(*spec, by);
  if (!spec_hash) {
    return passed_on(spec_hash);
  }
  known.sheet_hash = *sheet_hash;
  known.spec_hash = *spec_hash;
  return {};
}

Result<void> settle_workshop(store::Store& store, const Script& script, store::IdSource& ids, const store::By& by) {
  auto there = store.registers().workshop();
  if (!there) {
    return passed_on(there);
  }
  if (*there) {
    return {};
  }
  const store::Workshop workshop{ids.id(by.moment.at_ms), script.workshop_name, script.workshop_address};
  auto put = store.registers().put(workshop, by);
  return put ? put : refused_at("/workshop", put.error());
}

Result<void> settle_all(store::Store& store, const Script& script, store::IdSource& ids, KnownHere& known) {
  const store::By by{"", moment_now()};
  if (auto done = settle_sheets(store, script, by, known); !done) {
    return done;
  }
  if (auto done = settle_people(store, script, ids, by, known); !done) {
    return done;
  }
  if (auto done = settle_instruments(store, script, ids, by, known); !done) {
    return done;
  }
  if (auto done = settle_trays(store, script, ids, by); !done) {
    return done;
  }
  return settle_workshop(store, script, ids, by);
}

}  // namespace

job::Moment moment_now() {
  const QDateTime now = QDateTime::currentDateTime();
  return {now.toMSecsSinceEpoch(), now.offsetFromUtc() / 60, false};
}

Result<KnownHere> settle_in(store::Store& store, const Script& script, store::IdSource& ids) {
  KnownHere known;
  auto settled = store.all_or_nothing([&] { return settle_all(store, script, ids, known); });
  if (!settled) {
    return passed_on(settled);
  }
  return known;
}

Result<void> could_settle(const Script& script) {
  const QTemporaryDir folder;
  auto store = open_to_write(folder.filePath(QStringLiteral("trial.shimwright")).toStdString(), "");
  if (!store) {
    return passed_on(store);
  }
  store::IdSource ids;
  auto settled = settle_in(**store, script, ids);
  return settled ? Result<void>() : passed_on(settled);
}

std::string absolute(const std::string& path) {
  return QDir::cleanPath(QFileInfo(QString::fromStdString(path)).absoluteFilePath()).toStdString();
}

Result<std::unique_ptr<store::Store>> open_to_look(const std::string& path) {
  return store::Store::open(absolute(path), {store::Mode::look_only, "", moment_now().at_ms});
}

Result<std::unique_ptr<store::Store>> open_to_write(const std::string& path, const std::string& person) {
  auto store = store::Store::open(absolute(path), {store::Mode::read_write, person, moment_now().at_ms});
  if (store && (*store)->looks_only()) {
    const auto& why = (*store)->why_look_only();
    return tl::make_unexpected(Error{
        "look_only", path, why ? *why : Message{SHIMWRIGHT_TEXT("cli", "This store can only be looked at."), {}}});
  }
  return store;
}

Result<std::string> job_named(const store::Store& store, const std::string& number_or_id) {
  if (store::is_uuid(number_or_id)) {
    return number_or_id;
  }
  auto jobs = store.jobs_numbered(number_or_id);
  if (!jobs) {
    return passed_on(jobs);
  }
  if (jobs->empty()) {
    return refuse("unknown_job", number_or_id,
                  SHIMWRIGHT_TEXT("cli", "There is no job of this number in the store: find it by its vehicle."));
  }
  if (jobs->size() > 1) {
    return refuse("several_jobs", number_or_id,
                  SHIMWRIGHT_TEXT("cli", "Several jobs have this number: name one by its id, which “find” shows."));
  }
  return jobs->front().id;
}

}  // namespace shimwright::cli
