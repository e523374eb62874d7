#pragma once

#include <future>
#include <optional>

#include "shimwright/print/fonts.h"
#include "shimwright/widgets/style.h"

namespace shimwright::shell {

/// Has the machine's list of fonts read on another thread: where that list is fontconfig's, it takes a third of what
/// the first window takes, and nothing of it needs the application. Called before the application is made, once the
/// environment has been set.
[[nodiscard]] std::future<void> read_fonts_early();

/// The fonts of the program: nobody waits for them before the first window is made, so that a store is opened
/// meanwhile. Made once the application is there, and goes before it.
class EarlyFonts {
 public:
  /// The toolkit makes its own list of what is being read, on another thread as well.
  explicit EarlyFonts(std::future<void> being_read);

  /// Dresses the application; the first time it loads the program's own fonts. Refused with `font_missing` where they
  /// cannot be read.
  [[nodiscard]] Result<void> dress(QApplication& application, widgets::Scheme scheme);

 private:
  std::future<void> listed_;
  std::optional<print::Fonts> own_;
};

}  // namespace shimwright::shell
