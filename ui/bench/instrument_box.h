#pragma once

#include <string>
#include <vector>

#include <QComboBox>

#include "shimwright/job/context.h"

namespace shimwright::bench {

/// Which instrument of a kind a reading is taken with. The first of the kind is chosen to begin with; `none` where the
/// workshop has none. The wheel changes nothing.
class InstrumentBox : public QComboBox {
  Q_OBJECT

 public:
  InstrumentBox(const QString& title, sheet::InstrumentKind kind, QWidget* parent = nullptr);

  /// Those of the kind are offered; the one chosen stays chosen where it is still there.
  void set_instruments(const std::vector<job::Instrument>& instruments);
  [[nodiscard]] std::string id() const;  ///< blank: none
  void choose(const std::string& id);

 protected:
  void wheelEvent(QWheelEvent* event) override;

 private:
  sheet::InstrumentKind kind_;
};

}  // namespace shimwright::bench
