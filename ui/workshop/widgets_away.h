#pragma once

#include <QWidget>

namespace shimwright::workshop {

/// Takes every widget out of a widget's column.
void empty_column(QWidget& holder);
/// Scrolls the page a form stands on to its head, and on as far as needed for the field that has the focus to be seen.
void show_form(QWidget& form);
/// Scrolls the page something stands on as far as needed for it to be seen.
void bring_into_sight(QWidget& what);

}  // namespace shimwright::workshop
