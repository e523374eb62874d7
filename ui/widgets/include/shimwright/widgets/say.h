#pragma once

#include <string>
#include <string_view>

#include <QString>

#include "shimwright/quantity/error.h"

namespace shimwright::widgets {

/// A sentence of the layers without a toolkit, in the language of the window and the units shown.
[[nodiscard]] QString say(const Message& message);
/// The sentence of a refusal, without its place.
[[nodiscard]] QString say(const Error& error);

[[nodiscard]] QString qt(std::string_view text);
[[nodiscard]] std::string plain(const QString& text);

/// A number as files have it, with a true minus for the eye.
[[nodiscard]] QString number_text(std::string_view digits);

}  // namespace shimwright::widgets
