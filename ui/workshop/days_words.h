#pragma once

#include <string>

#include <QString>

#include "shimwright/job/entry.h"

namespace shimwright::workshop {

/// `28 Feb 2027`, unbroken; what is no date stays as it is.
[[nodiscard]] QString day_words(const std::string& iso);
/// The local day of a moment.
[[nodiscard]] QString day_words(const job::Moment& moment);
/// Number and unit stay on one line.
[[nodiscard]] QString unbroken(QString text);

}  // namespace shimwright::workshop
