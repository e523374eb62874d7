#pragma once

#include <functional>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/shell/page_table.h"
#include "shimwright/shell/stores.h"
#include "shimwright/store/signing.h"
#include "shimwright/widgets/style.h"

namespace shimwright::shell {

/// What the window takes from outside, so that a test can hand in its own.
struct Equipment {
  bench::Workbench::Clock clock;
  StorePlaces places;
  /// Asks a person for a folder, beginning there; blank where none was chosen.
  std::function<QString(QWidget* over, const QString& from)> choose_folder;
  /// Asks a person for a picture, beginning in that folder; blank where none was chosen.
  std::function<QString(QWidget* over, const QString& folder)> choose_photo;
  /// Calls back after so many milliseconds.
  std::function<void(int milliseconds, std::function<void()> call)> after;
  std::function<void(widgets::Scheme scheme)> dress;
  /// Windows made from now on speak this language, `de`.
  std::function<void(const QString& language)> speak;
  std::function<void()> sound;
  std::vector<PageFactory> pages;
  /// What a PIN costs to try.
  store::SigningRules signing = {};
};

}  // namespace shimwright::shell
