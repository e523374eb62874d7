#pragma once

#include <vector>

#include "shimwright/store/job_in_hand.h"
#include "workshop.h"

namespace shimwright::cli {

/// Whether a command is a signature and not an entry alone.
[[nodiscard]] bool needs_pin(const job::Command& command);

/// Seals the job in hand, or adds to it, with the PINs of the script; a person without one in the store is given theirs
/// first. Gives the entries that followed. Codes: as store::seal_job() and add_addendum().
[[nodiscard]] Result<std::vector<job::Entry>> sign_with_pins(store::Store& store, store::JobInHand& hand,
                                                             const job::Command& command, const KnownHere& known,
                                                             const store::By& by);

}  // namespace shimwright::cli
