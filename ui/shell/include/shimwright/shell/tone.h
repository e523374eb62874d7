#pragma once

#include <cstdint>
#include <functional>
#include <string>

#include <QObject>

#include "shimwright/bench/workbench.h"

namespace shimwright::shell {

/// Sounds once for each reading that is on the disk, for who looks at the gauge and not at the screen. Off until it is
/// wanted.
class Tone : public QObject {
  Q_OBJECT

 public:
  Tone(const bench::Workbench& bench, std::function<void()> sound, QObject* parent = nullptr);
  void set_on(bool on) { on_ = on; }
  [[nodiscard]] bool is_on() const { return on_; }

 private:
  void hear();

  const bench::Workbench* bench_;
  std::function<void()> sound_;
  bool on_ = false;
  std::string job_;
  std::int64_t last_seq_ = 0;
};

}  // namespace shimwright::shell
