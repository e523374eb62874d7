#pragma once

#include <functional>
#include <map>
#include <string>

#include "shimwright/record/record.h"

namespace shimwright::print {

/// The photos of a record as they go on paper, by the hash of their file: turned upright, no larger than paper shows,
/// and without what the camera wrote beside the picture. A file that is missing, was changed, or is no picture is left
/// out. `path_of` says where the file of a hash lies; blank: it is left out.
[[nodiscard]] std::map<std::string, std::string> pictures_for_paper(
    const record::Record& record, const std::function<std::string(const std::string& sha256)>& path_of);

}  // namespace shimwright::print
