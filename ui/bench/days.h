#pragma once

#include <optional>
#include <string>

#include <QDate>
#include <QString>

#include "shimwright/job/entry.h"

namespace shimwright::bench {

/// The calendar day of a moment where it was.
[[nodiscard]] QDate day_of(const job::Moment& moment);
[[nodiscard]] std::optional<QDate> day_of(const std::string& iso);
/// `26 Nov 2026`, the month in the language of the window.
[[nodiscard]] QString day_text(const QDate& day);
/// The same of an ISO date; as it stands where it is none.
[[nodiscard]] QString day_text(const std::string& iso);
/// `today 07:58`, `26 Nov 2026 07:58`.
[[nodiscard]] QString moment_text(const job::Moment& moment, const job::Moment& now);

}  // namespace shimwright::bench
