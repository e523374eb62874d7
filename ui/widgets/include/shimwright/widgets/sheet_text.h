#pragma once

#include <QString>

#include "shimwright/job/state.h"
#include "shimwright/quantity/error.h"
#include "shimwright/sheet/text.h"

namespace shimwright::widgets {

/// A text of a sheet in the language of the window, else in English.
[[nodiscard]] QString say(const sheet::Text& text);

/// As say(message). Titles of a step, a channel or a part, which the layers fill in in English, stand in the language
/// of the window as well: “{0}” with `Free movement`, or a list of several, each in “ ”.
[[nodiscard]] QString say(const Message& message, const job::Sheets& sheets);
[[nodiscard]] QString say(const Error& error, const job::Sheets& sheets);

}  // namespace shimwright::widgets
