#pragma once

#include <string>
#include <vector>

#include "shimwright/job/context.h"
#include "shimwright/widgets/pick_box.h"

namespace shimwright::bench {

/// Which instrument of a kind a reading is taken with, and how long it is good for. The first of the kind that is not
/// overdue is chosen to begin with; `no instrument` where the workshop has none. The wheel changes nothing.
class InstrumentBox : public widgets::PickBox {
  Q_OBJECT

 public:
  InstrumentBox(const QString& title, sheet::InstrumentKind kind, QWidget* parent = nullptr);

  /// Those of the kind are offered; the one chosen stays chosen where it is still there.
  void set_instruments(const std::vector<job::Instrument>& instruments) { offer(instruments, {}); }
  /// The same, and what is overdue on that day says so.
  void offer(const std::vector<job::Instrument>& instruments, const job::Moment& now);
  /// The box offers no instrument: there is none of the kind.
  [[nodiscard]] bool none() const { return id().empty(); }

 private:
  sheet::InstrumentKind kind_;
};

}  // namespace shimwright::bench
