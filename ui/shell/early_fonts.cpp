#include "shimwright/shell/early_fonts.h"

#ifdef SHIMWRIGHT_HAS_FONTCONFIG
#include <fontconfig/fontconfig.h>
#endif

namespace shimwright::shell {

std::future<void> read_fonts_early() {
  return std::async(std::launch::async, [] {
#ifdef SHIMWRIGHT_HAS_FONTCONFIG
    // A list that can not be read is told by whoever needs a font of it.
    static_cast<void>(FcInit());
#endif
  });
}

}  // namespace shimwright::shell
