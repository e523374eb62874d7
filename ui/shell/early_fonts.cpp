#include "shimwright/shell/early_fonts.h"

#ifdef SHIMWRIGHT_HAS_FONTCONFIG
#include <fontconfig/fontconfig.h>
#endif

#include <QFontDatabase>
#include <utility>

namespace shimwright::shell {

std::future<void> read_fonts_early() {
  return std::async(std::launch::async, [] {
#ifdef SHIMWRIGHT_HAS_FONTCONFIG
    // A list that can not be read is told by whoever needs a font of it.
    static_cast<void>(FcInit());
#endif
  });
}

EarlyFonts::EarlyFonts(std::future<void> being_read)
    : listed_(std::async(std::launch::async, [being_read = std::move(being_read)] {
        being_read.wait();  // two that read the list at once read all of it twice
        static_cast<void>(QFontDatabase::families());
      })) {}

Result<void> EarlyFonts::dress(QApplication& application, widgets::Scheme scheme) {
  listed_.wait();
  if (!own_) {
    auto loaded = print::load_fonts();
    if (!loaded) {
      return tl::make_unexpected(loaded.error());
    }
    own_.emplace(std::move(*loaded));
  }
  widgets::dress(application, scheme, *own_);
  return {};
}

}  // namespace shimwright::shell
