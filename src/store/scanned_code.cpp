#include "shimwright/store/scanned_code.h"

#include <algorithm>

#include <QFile>

#include "connection.h"
#include "seal_rows.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/signing.h"

namespace shimwright::store {

namespace {

struct SealedHere {
  std::string job;
  job::Moment moment;
};

/// A code ends in a blank as well as in any other of its symbols: only what a scanner adds is taken off.
std::string_view without_ends(std::string_view text) {
  const auto begin = text.find_first_not_of(" \t\r\n");
  if (begin == std::string_view::npos) {
    return {};
  }
  const auto end = text.find_last_not_of("\t\r\n");
  return text.substr(begin, end + 1 - begin);
}

Result<std::optional<SealedHere>> sealed_here(Connection& connection, const record::VitalValues& values) {
  auto jobs = connection.rows("SELECT id FROM job WHERE number = ?", {values.number});
  if (!jobs) {
    return passed_on(jobs);
  }
  for (const Row& row : *jobs) {
    const std::string job = text_in(row, 0);
    auto sealed = seal_rows(connection, job);
    if (sealed && record::digest_of(sealed->statement) == values.digest) {
      return std::optional(SealedHere{job, sealed->statement.moment});
    }
    // Another job of this number may lie there with a damaged seal: it is not the one that was scanned.
    if (!sealed && sealed.error().code != "not_sealed" && sealed.error().code != "seal_damaged") {
      return passed_on(sealed);
    }
  }
  return std::optional<SealedHere>();
}

KeyStanding standing_of(const PersonsKey& key, const std::optional<SealedHere>& sealed) {
  if (const std::optional<std::string>& from = key.invalid_from; from) {
    return sealed && record::date_of(sealed->moment) < *from ? KeyStanding::ours : KeyStanding::ended;
  }
  return KeyStanding::ours;
}

Result<std::string> name_of_person(Store& store, const std::string& id) {
  auto persons = store.registers().persons();
  if (!persons) {
    return passed_on(persons);
  }
  const auto found = std::find_if(persons->begin(), persons->end(), [&](const Person& each) { return each.id == id; });
  return found == persons->end() ? id : found->name;
}

}  // namespace

bool looks_like_code(std::string_view text) {
  constexpr std::string_view prefix = "SW1:";
  return without_ends(text).substr(0, prefix.size()) == prefix;
}

Result<ScannedCode> read_scanned_code(Store& store, std::string_view text) {
  auto code = record::read_seal_code(without_ends(text));
  if (!code) {
    return passed_on(code);
  }
  auto sealed = sealed_here(store.connection(), code->values);
  if (!sealed) {
    return passed_on(sealed);
  }
  auto keys = signing_keys(store);
  if (!keys) {
    return passed_on(keys);
  }
  ScannedCode scanned;
  scanned.values = std::move(code->values);
  if (const std::optional<SealedHere>& here = *sealed; here) {
    scanned.job = here->job;
  }
  const auto key = std::find_if(keys->begin(), keys->end(),
                                [&](const PersonsKey& each) { return each.public_key == code->public_key; });
  if (key == keys->end()) {
    return scanned;
  }
  auto name = name_of_person(store, key->person);
  if (!name) {
    return passed_on(name);
  }
  scanned.signer = std::move(*name);
  scanned.key = standing_of(*key, *sealed);
  return scanned;
}

Result<void> same_as_here(const Store& store, const record::SignedRecord& file) {
  auto here = store.load(file.statement.job);
  if (!here) {
    return here.error().code == "unknown_job" ? Result<void>() : passed_on(here);
  }
  const std::vector<record::StoredEntry>& stored = here->stored;
  if (file.entries.size() > stored.size() || !std::equal(file.entries.begin(), file.entries.end(), stored.begin())) {
    return refuse("differs_here", file.statement.number,
                  SHIMWRIGHT_TEXT("store",
                                  "This file is whole, but this store has other entries of the job, or fewer: run the "
                                  "check of the store."));
  }
  if (file.entries.size() < stored.size()) {
    return refuse("older_than_here", file.statement.number,
                  SHIMWRIGHT_TEXT("store",
                                  "This file is whole, but what was added to the job later is not in it: take the "
                                  "newer file, or open the record here."));
  }
  return {};
}

Result<ScannedCode> check_signed_file(Store& store, const std::string& path) {
  constexpr qint64 most_bytes = qint64{64} * 1024 * 1024;
  QFile file(QString::fromStdString(path));
  if (!file.open(QIODevice::ReadOnly)) {
    return refuse("cannot_read", path, SHIMWRIGHT_TEXT("store", "This file cannot be read; choose it again."));
  }
  if (file.size() > most_bytes) {
    return refuse("too_large", path,
                  SHIMWRIGHT_TEXT("store", "This file is larger than 64 MiB: it is no signed record."));
  }
  auto sealed = record::read_signed_record(file.readAll().toStdString());
  if (!sealed) {
    return passed_on(sealed);
  }
  if (auto whole = record::check_signed_record(*sealed); !whole) {
    return passed_on(whole);
  }
  auto keys = known_keys(store);
  if (!keys) {
    return passed_on(keys);
  }
  if (auto same = same_as_here(store, *sealed); !same) {
    return passed_on(same);
  }
  auto scanned = read_scanned_code(store, sealed->code);
  if (!scanned) {
    return scanned;
  }
  // The code has one signature and no day; the file has one for each who signed, and the day that was signed.
  auto known = record::check_keys(*sealed, *keys);
  if (known) {
    scanned->key = KeyStanding::ours;
  } else {
    scanned->key = scanned->key == KeyStanding::ours ? KeyStanding::unknown : scanned->key;
    scanned->fault = known.error();
  }
  return scanned;
}

}  // namespace shimwright::store
