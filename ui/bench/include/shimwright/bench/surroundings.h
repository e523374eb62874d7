#pragma once

#include <functional>

#include <QString>

namespace shimwright::bench {

/// What the job screen takes from outside, so that a test can fix it.
struct Surroundings {
  /// Calls back after so many milliseconds.
  std::function<void(int milliseconds, std::function<void()> call)> after;
  /// Lets a person choose a picture; blank: none chosen.
  std::function<QString()> pick_photo;
  /// Where a camera lays its pictures; blank: none is set.
  std::function<QString()> camera_folder = {};
};

/// Timer and file dialog of the toolkit.
[[nodiscard]] Surroundings real_surroundings();

}  // namespace shimwright::bench
