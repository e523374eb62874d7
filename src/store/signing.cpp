#include "shimwright/store/signing.h"

#include "connection.h"
#include "register_history.h"
#include "schema.h"
#include "shimwright/job/context.h"

namespace shimwright::store {

namespace {

struct KeyRow {
  record::SealedKey sealed;
  std::optional<std::string> invalid_from;
};

Result<void> may_write_keys(const Store& store) {
  if (store.looks_only()) {
    return refuse("look_only", "",
                  SHIMWRIGHT_TEXT("store", "The store can only be looked at here; nothing was saved."));
  }
  return {};
}

/// The key a person signs with today; nothing where there is none with a PIN.
Result<std::optional<KeyRow>> present_key(Connection& connection, const std::string& person) {
  auto rows = connection.rows(
      "SELECT public_key, salt, nonce, box, passes, memory_bytes, invalid_from FROM signing_key WHERE person = ? AND "
      "box IS NOT NULL ORDER BY made_at_ms DESC, public_key LIMIT 1",
      {person});
  if (!rows) {
    return passed_on(rows);
  }
  if (rows->empty()) {
    return std::optional<KeyRow>();
  }
  const Row& row = rows->front();
  return std::optional(
      KeyRow{{text_in(row, 0),
              text_in(row, 1),
              text_in(row, 2),
              text_in(row, 3),
              {static_cast<std::uint64_t>(number_in(row, 4)), static_cast<std::uint64_t>(number_in(row, 5))}},
             optional_text_in(row, 6)});
}

/// What was done with a key, without anything secret.
Result<void> tell(Connection& connection, const std::string& person, const std::string& public_key, const char* what,
                  const By& by) {
  return add_change(connection, "signing_key", public_key,
                    {{"person", person}, {"public_key", public_key}, {"change", what}}, by);
}

Result<void> insert_key(Connection& connection, const std::string& person, const record::SealedKey& key, const By& by) {
  auto inserted = connection.execute(
      "INSERT INTO signing_key (public_key, person, made_at_ms, salt, nonce, box, passes, memory_bytes) VALUES (?, ?, "
      "?, ?, ?, ?, ?, ?)",
      {key.public_key, person, number_value(by.moment.at_ms), key.salt, key.nonce, key.box,
       number_value(static_cast<std::int64_t>(key.cost.passes)),
       number_value(static_cast<std::int64_t>(key.cost.memory_bytes))});
  return inserted ? tell(connection, person, key.public_key, "made", by) : inserted;
}

Result<void> put_attempts(Connection& connection, const std::string& person, const record::PinAttempts& attempts) {
  return connection.execute(
      "INSERT INTO pin_attempt (person, failed, not_before_ms) VALUES (?, ?, ?) ON CONFLICT (person) DO UPDATE SET "
      "failed = excluded.failed, not_before_ms = excluded.not_before_ms",
      {person, number_value(attempts.failed), number_value(attempts.not_before_ms)});
}

Result<record::PinAttempts> attempts_of(Connection& connection, const std::string& person) {
  auto rows = connection.rows("SELECT failed, not_before_ms FROM pin_attempt WHERE person = ?", {person});
  if (!rows) {
    return passed_on(rows);
  }
  return rows->empty() ? record::PinAttempts()
                       : record::PinAttempts{number_in(rows->front(), 0), number_in(rows->front(), 1)};
}

Result<record::SealedKey> new_sealed_key(const record::Pin& pin, const SigningRules& rules) {
  return record::sealed_with(record::new_key(rules.chance), pin, rules.cost, rules.chance);
}

tl::unexpected<Error> no_pin() {
  return refuse("no_pin", "pin", SHIMWRIGHT_TEXT("store", "This person has no PIN yet: set one, then sign."));
}

tl::unexpected<Error> already_ended(const std::string& day) {
  return refuse(
      "already_ended", "from",
      SHIMWRIGHT_TEXT("store", "This key ends on {0} already, and an end is not put off: give an earlier day."), {day});
}

Result<void> may_end(const Store& store, const std::string& from_day) {
  if (auto may = may_write_keys(store); !may) {
    return may;
  }
  if (!job::is_date(from_day)) {
    return refuse("bad_date", "from",
                  SHIMWRIGHT_TEXT("store", "“{0}” is no date: write year-month-day, as in 2026-11-30."), {from_day});
  }
  return {};
}

/// Writes what `write` does in one transaction.
template <class Write>
Result<void> in_one_go(Connection& connection, Write write) {
  auto transaction = Transaction::begin(connection);
  if (!transaction) {
    return passed_on(transaction);
  }
  if (Result<void> written = write(); !written) {
    return written;
  }
  return transaction->commit();
}

Result<bool> is_person(Connection& connection, const std::string& person) {
  auto found = connection.value("SELECT id FROM person WHERE id = ?", {person});
  if (!found) {
    return passed_on(found);
  }
  return *found == Value(person);
}

}  // namespace

Result<std::vector<PersonsKey>> signing_keys(const Store& store) {
  auto seals = has_seals(store.connection());
  if (!seals) {
    return passed_on(seals);
  }
  if (!*seals) {
    return std::vector<PersonsKey>();
  }
  auto rows = store.connection().rows(
      "SELECT public_key, person, made_at_ms, box IS NOT NULL, invalid_from FROM signing_key ORDER BY person, "
      "made_at_ms, public_key");
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<PersonsKey> keys;
  for (const Row& row : *rows) {
    keys.push_back(
        {text_in(row, 0), text_in(row, 1), number_in(row, 2), number_in(row, 3) != 0, optional_text_in(row, 4)});
  }
  return keys;
}

Result<std::vector<record::KnownKey>> known_keys(const Store& store) {
  auto keys = signing_keys(store);
  if (!keys) {
    return passed_on(keys);
  }
  std::vector<record::KnownKey> known;
  for (const PersonsKey& each : *keys) {
    known.push_back({each.public_key, each.invalid_from, each.person});
  }
  return known;
}

SigningState signing_state(const std::vector<PersonsKey>& keys, const std::string& person, const std::string& iso_day) {
  SigningState state = SigningState::no_key;
  for (const PersonsKey& each : keys) {
    if (each.person == person && each.has_pin) {
      if (!each.invalid_from || *each.invalid_from > iso_day) {
        return SigningState::signs;
      }
      state = SigningState::key_ended;
    }
  }
  return state;
}

Result<void> set_pin(Store& store, const std::string& person, const record::Pin& pin, const By& by,
                     const SigningRules& rules) {
  if (auto may = may_write_keys(store); !may) {
    return may;
  }
  auto there = is_person(store.connection(), person);
  if (!there) {
    return passed_on(there);
  }
  if (!*there) {
    return refuse("unknown_person", "person",
                  SHIMWRIGHT_TEXT("store", "This person is not in the workshop's list: enter them first."));
  }
  auto present = present_key(store.connection(), person);
  if (!present) {
    return passed_on(present);
  }
  const std::optional<KeyRow>& known = *present;
  if (known && (!known->invalid_from || record::date_of(by.moment) < *known->invalid_from)) {
    return refuse(
        "has_pin", "pin",
        SHIMWRIGHT_TEXT("store", "This person has a PIN: change it with the old one, or say it is forgotten."));
  }
  auto key = new_sealed_key(pin, rules);
  if (!key) {
    return passed_on(key);
  }
  return in_one_go(store.connection(), [&] { return insert_key(store.connection(), person, *key, by); });
}

Result<void> change_pin(Store& store, const std::string& person, const record::Pin& old_pin, const record::Pin& new_pin,
                        const By& by, const SigningRules& rules) {
  if (auto good = record::check_pin(new_pin); !good) {
    return good;
  }
  auto key = unlock(store, person, old_pin, by.moment, rules);
  if (!key) {
    return passed_on(key);
  }
  auto sealed = record::sealed_with(*key, new_pin, rules.cost, rules.chance);
  if (!sealed) {
    return passed_on(sealed);
  }
  return in_one_go(store.connection(), [&]() -> Result<void> {
    auto changed = store.connection().execute(
        "UPDATE signing_key SET salt = ?, nonce = ?, box = ?, passes = ?, memory_bytes = ? WHERE public_key = ?",
        {sealed->salt, sealed->nonce, sealed->box, number_value(static_cast<std::int64_t>(sealed->cost.passes)),
         number_value(static_cast<std::int64_t>(sealed->cost.memory_bytes)), sealed->public_key});
    return changed ? tell(store.connection(), person, sealed->public_key, "pin_changed", by) : changed;
  });
}

Result<void> forget_pin(Store& store, const std::string& person, const record::Pin& new_pin, const By& by,
                        const SigningRules& rules) {
  if (auto may = may_write_keys(store); !may) {
    return may;
  }
  auto present = present_key(store.connection(), person);
  if (!present) {
    return passed_on(present);
  }
  const std::optional<KeyRow>& known = *present;
  if (!known) {
    return no_pin();
  }
  auto key = new_sealed_key(new_pin, rules);
  if (!key) {
    return passed_on(key);
  }
  Connection& connection = store.connection();
  const std::string old = known->sealed.public_key;
  return in_one_go(connection, [&]() -> Result<void> {
    if (auto erased = connection.execute(
            "UPDATE signing_key SET salt = NULL, nonce = NULL, box = NULL WHERE person = ?", {person});
        !erased) {
      return erased;
    }
    if (auto told = tell(connection, person, old, "pin_forgotten", by); !told) {
      return told;
    }
    if (auto again = put_attempts(connection, person, {}); !again) {
      return again;
    }
    return insert_key(connection, person, *key, by);
  });
}

Result<void> end_key(Store& store, const std::string& public_key, const std::string& from_day, const By& by) {
  if (auto good = may_end(store, from_day); !good) {
    return good;
  }
  Connection& connection = store.connection();
  auto rows = connection.rows("SELECT person, invalid_from FROM signing_key WHERE public_key = ?", {public_key});
  if (!rows) {
    return passed_on(rows);
  }
  if (rows->empty()) {
    return refuse("unknown_key", "key",
                  SHIMWRIGHT_TEXT("store", "This key is none of the workshop's: look at its list."));
  }
  const std::string whose = text_in(rows->front(), 0);
  if (const auto ended = optional_text_in(rows->front(), 1); ended && *ended <= from_day) {
    return already_ended(*ended);
  }
  return in_one_go(connection, [&]() -> Result<void> {
    auto ended =
        connection.execute("UPDATE signing_key SET invalid_from = ? WHERE public_key = ?", {from_day, public_key});
    return ended ? tell(connection, whose, public_key, "ended", by) : ended;
  });
}

Result<void> end_keys(Store& store, const std::string& person, const std::string& from_day, const By& by) {
  if (auto good = may_end(store, from_day); !good) {
    return good;
  }
  auto keys = signing_keys(store);
  if (!keys) {
    return passed_on(keys);
  }
  std::optional<std::string> ended_on;
  bool ended_one = false;
  for (const PersonsKey& each : *keys) {
    if (each.person != person) {
      continue;
    }
    if (each.invalid_from && *each.invalid_from <= from_day) {
      ended_on = each.invalid_from;
      continue;
    }
    if (auto ended = end_key(store, each.public_key, from_day, by); !ended) {
      return ended;
    }
    ended_one = true;
  }
  if (ended_one) {
    return {};
  }
  return ended_on ? already_ended(*ended_on) : no_pin();
}

Result<record::SecretKey> unlock(Store& store, const std::string& person, const record::Pin& pin,
                                 const job::Moment& now, const SigningRules& rules) {
  if (auto may = may_write_keys(store); !may) {
    return passed_on(may);
  }
  Connection& connection = store.connection();
  auto present = present_key(connection, person);
  auto attempts = attempts_of(connection, person);
  if (!present || !attempts) {
    return present ? tl::make_unexpected(attempts.error()) : tl::make_unexpected(present.error());
  }
  const std::optional<KeyRow>& known = *present;
  if (!known) {
    return no_pin();
  }
  if (auto may = record::may_try_pin(*attempts, rules.pause, now.at_ms); !may) {
    return passed_on(may);
  }
  auto key = record::open_key(known->sealed, pin);
  const bool wrong = !key && key.error().code == "wrong_pin";
  if (key || wrong) {
    const auto then = key ? record::PinAttempts() : record::after_wrong_pin(*attempts, rules.pause, now.at_ms);
    if (auto kept = then == *attempts ? Result<void>() : put_attempts(connection, person, then); !kept) {
      return passed_on(kept);
    }
  }
  if (key && known->invalid_from && record::date_of(now) >= *known->invalid_from) {
    return refuse("key_ended", "pin",
                  SHIMWRIGHT_TEXT("store", "The key of this person is no longer valid: set a new PIN, then sign."));
  }
  return key;
}

}  // namespace shimwright::store
