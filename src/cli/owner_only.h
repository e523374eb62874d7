#pragma once

namespace shimwright::cli {

/// From here on, files and folders this program makes are for their owner alone, whatever the shell's mask says, and a
/// crash leaves no image of its memory behind: a PIN may be in it. To be called first of all.
void keep_to_owner();

}  // namespace shimwright::cli
