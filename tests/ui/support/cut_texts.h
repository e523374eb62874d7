#pragma once

#include <QStringList>
#include <QWidget>

/// What a window shows less of than it says.
namespace shimwright::test {

/// One line for each visible label or button too small for its text, hint of a field that is cut, and widget that
/// sticks out of what it lies in: in another language words are longer.
[[nodiscard]] QStringList cut_texts(const QWidget& window);

}  // namespace shimwright::test
