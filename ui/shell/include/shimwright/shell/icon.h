#pragma once

#include <QIcon>

namespace shimwright::shell {

/// The program's icon, painted as in data/desktop/shimwright.svg: where no plugin draws that file, the window has it
/// all the same.
[[nodiscard]] QIcon program_icon();

}  // namespace shimwright::shell
