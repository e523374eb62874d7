#pragma once

#include <string>
#include <string_view>

#include "shimwright/job/entry.h"

namespace shimwright::job {

/// An entry's body as stored: the bytes that are hashed.
struct EncodedBody {
  std::string kind;
  int kind_version = 1;
  std::string bytes;  ///< canonical JSON
};

[[nodiscard]] EncodedBody encode(const EntryBody& body);

/// Reads every kind in every version there ever was. Refused: `unknown_kind` (written by a newer program), `bad_body`.
[[nodiscard]] Result<EntryBody> decode(std::string_view kind, int kind_version, std::string_view bytes);

}  // namespace shimwright::job
