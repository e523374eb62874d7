#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "shimwright/record/pin_pause.h"
#include "shimwright/record/signed_record.h"
#include "shimwright/record/signing_key.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/store.h"

/// Who may sign, and with what. PINs are asked for nothing else.
namespace shimwright::store {

/// What tests make small: each part is kept or used as it is here.
struct SigningRules {
  record::PinCost cost;
  record::PinPause pause;
  Chance chance = system_chance();
};

/// A key as anybody may see it.
struct PersonsKey {
  std::string public_key;
  std::string person;
  std::int64_t made_at_ms = 0;
  bool has_pin = false;                     ///< false: forgotten, it signs nothing any more
  std::optional<std::string> invalid_from;  ///< ISO date
  friend bool operator==(const PersonsKey&, const PersonsKey&) = default;
};

/// All keys of the workshop, by person, oldest first.
[[nodiscard]] Result<std::vector<PersonsKey>> signing_keys(const Store& store);
/// The same as record::check_keys() wants them.
[[nodiscard]] Result<std::vector<record::KnownKey>> known_keys(const Store& store);

/// Whether a person can sign on a day.
enum class SigningState { no_key, signs, key_ended };
[[nodiscard]] SigningState signing_state(const std::vector<PersonsKey>& keys, const std::string& person,
                                         const std::string& iso_day);

/// Gives a person a first PIN and with it a key. Codes: `bad_pin`, `has_pin` (a key is still valid on that day: change
/// its PIN, or say it is forgotten),
/// `unknown_person`, those of Store.
[[nodiscard]] Result<void> set_pin(Store& store, const std::string& person, const record::Pin& pin, const By& by,
                                   const SigningRules& rules = {});
/// Puts the same key under another PIN. Codes: as unlock(), `bad_pin`.
[[nodiscard]] Result<void> change_pin(Store& store, const std::string& person, const record::Pin& old_pin,
                                      const record::Pin& new_pin, const By& by, const SigningRules& rules = {});
/// Nobody opens the old key any more: its secret part is erased, its public part stays for what it signed, and a new
/// one is made. Codes: `bad_pin`, `no_pin`.
[[nodiscard]] Result<void> forget_pin(Store& store, const std::string& person, const record::Pin& new_pin, const By& by,
                                      const SigningRules& rules = {});
/// What a key signs from that day on (ISO date) does not hold. An end is brought forward, never put off. Codes:
/// `unknown_key`, `bad_date`, `already_ended` (by that day it has).
[[nodiscard]] Result<void> end_key(Store& store, const std::string& public_key, const std::string& from_day,
                                   const By& by);
/// The same of all keys of a person, those with a forgotten PIN too: a copy of the store and that PIN still open them.
/// Codes: `bad_date`, `already_ended` (all have by that day), `no_pin` (there is none).
[[nodiscard]] Result<void> end_keys(Store& store, const std::string& person, const std::string& from_day, const By& by);

/// Opens the key of a person. A wrong PIN is counted, on the disk before this returns. Codes: `no_pin`, `wrong_pin`,
/// `pin_pause`, `key_damaged`, `key_ended`.
[[nodiscard]] Result<record::SecretKey> unlock(Store& store, const std::string& person, const record::Pin& pin,
                                               const job::Moment& now, const SigningRules& rules = {});

}  // namespace shimwright::store
