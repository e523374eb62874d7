#pragma once

#include <future>

namespace shimwright::shell {

/// Has the machine's list of fonts read on another thread: where that list is fontconfig's, it takes a third of what
/// the first window takes, and nothing of it needs the application. The future waits for its end when it goes; nothing
/// has to ask it. Called before the application is made, once the environment has been set.
[[nodiscard]] std::future<void> read_fonts_early();

}  // namespace shimwright::shell
