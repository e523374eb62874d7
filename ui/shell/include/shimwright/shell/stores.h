#pragma once

#include <memory>
#include <optional>
#include <string>

#include "shimwright/bench/workbench.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/store.h"

/// Where a workshop's store lies, and how one begins.
namespace shimwright::shell {

struct StorePlaces {
  std::string own;
  std::string demo;  ///< in a folder of its own
};

/// In the folder for this person's data.
[[nodiscard]] StorePlaces places_of_this_person();

/// What a new workshop is begun with.
struct Beginning {
  std::string workshop;  ///< blank: the one that is known stays
  std::string address;
  std::string person;
  std::string initials;
  std::optional<store::Logo> logo = std::nullopt;
};

/// Enters workshop, first person and the sheets that come with the program. May be repeated after a refusal: what is
/// there already is not entered twice. Codes: those of store::Registers.
[[nodiscard]] Result<void> begin_workshop(store::Store& store, const Beginning& beginning, store::IdSource& ids,
                                          const job::Moment& now);

/// Enters each later issue, that came with the program, of the sheets a workshop has. Its own issues stay, and its jobs
/// keep theirs; nothing where the workshop's own issue has that number or a higher one. Codes: those of
/// store::Registers.
[[nodiscard]] Result<void> add_later_issues(store::Store& store, const job::Moment& now);

/// Makes the demonstration workshop with jobs in work and one that is done, at a place where nothing lies. All or
/// nothing. Times are moved so that the latest lies before `now`.
[[nodiscard]] Result<void> make_demo_workshop(const std::string& path, const job::Moment& now);

/// Takes the demonstration's folder away, and nothing else; fine where there is none. Codes: `demo_not_apart` (the
/// workshop's own store lies in that folder), `not_the_demo` (another workshop lies there), `locked`, `cannot_delete`.
[[nodiscard]] Result<void> delete_demo_workshop(const StorePlaces& places);

/// Whether this store began as the demonstration, whatever its workshop is called now.
[[nodiscard]] bool is_demo_workshop(store::Store& store);

}  // namespace shimwright::shell
