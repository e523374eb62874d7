#pragma once

#include <QWidget>

namespace shimwright::workshop {

/// Takes every widget out of a widget's column.
void empty_column(QWidget& holder);
/// Scrolls the page a form stands on as far as needed for it to be seen.
void show_form(QWidget& form);

}  // namespace shimwright::workshop
