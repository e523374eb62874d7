#pragma once

#include "arguments.h"

namespace shimwright::cli {

/// Before anything is done: what `--pdf`, `--slip`, `--record` and `--json` name is free, each is a place of its own,
/// and none is the store. Nothing lies there, or an older file of its kind, which is written over. Codes:
/// `file_in_the_way`, `same_place`.
[[nodiscard]] Result<void> check_outputs(const Arguments& arguments);

}  // namespace shimwright::cli
