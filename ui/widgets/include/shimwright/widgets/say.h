#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include <QString>

#include "shimwright/quantity/error.h"

namespace shimwright::widgets {

/// A sentence of the layers without a toolkit, in the language of the window and the units shown.
[[nodiscard]] QString say(const Message& message);
/// The sentence of a refusal, without its place.
[[nodiscard]] QString say(const Error& error);

/// A moment by this machine's clock: `27 Nov 2026, 14:03`.
[[nodiscard]] QString day_and_time(std::int64_t at_ms);

[[nodiscard]] QString qt(std::string_view text);
[[nodiscard]] std::string plain(const QString& text);

/// A number as files have it, with a true minus for the eye.
[[nodiscard]] QString number_text(std::string_view digits);

}  // namespace shimwright::widgets
