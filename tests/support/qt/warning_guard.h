#pragma once

#include <QString>

namespace shimwright::test {

/// From here on every warning or worse that Qt or our own code logs, from any thread, is counted and fails the test,
/// unless the test said before that it must come. Messages below a warning pass.
void watch_warnings();

/// How many unexpected ones have come so far.
[[nodiscard]] int unexpected_warnings();

/// While one lives, warnings that contain `part` are allowed. At its end at least one must have come, or the test
/// fails.
class ExpectedWarning {
 public:
  explicit ExpectedWarning(QString part);
  ~ExpectedWarning();
  ExpectedWarning(const ExpectedWarning&) = delete;
  ExpectedWarning& operator=(const ExpectedWarning&) = delete;

 private:
  QString part_;
};

}  // namespace shimwright::test
