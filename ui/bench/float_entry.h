#pragma once

#include <string>
#include <vector>

#include <QFrame>

#include "instrument_box.h"
#include "shimwright/quantity/error.h"
#include "shimwright/widgets/number_field.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// One lift: rest, lifted, zero after, the dial, and at which spot.
class FloatEntry : public QFrame {
  Q_OBJECT

 public:
  FloatEntry(int spots, QWidget* parent);

  void show_spot(int spot, int run, int least_runs);
  /// What to know of the dial stands there until the first run is kept.
  void set_hint_shown(bool shown);
  void offer(const std::vector<job::Instrument>& instruments, const job::Moment& now, const std::string& used_last);
  [[nodiscard]] std::string rest() const { return rest_->text(); }
  [[nodiscard]] std::string lifted() const { return lifted_->text(); }
  [[nodiscard]] std::string zero_after() const { return zero_->text(); }
  [[nodiscard]] std::string instrument() const { return dial_->id(); }
  [[nodiscard]] bool blank() const { return rest_->blank() && lifted_->blank() && zero_->blank(); }
  [[nodiscard]] bool faulty() const { return rest_->faulty() || lifted_->faulty() || zero_->faulty(); }
  /// Whether what stands in the fields can be read; where not, its sentence stands there.
  [[nodiscard]] bool readable();
  void clear();
  void take_focus();
  /// Puts the sentence below the field it is about.
  void show_refusal(const Error& error);

 signals:
  void edited();
  void completed();  ///< Enter in the last field
  void spot_wanted(int spot);

 private:
  void build_head(QVBoxLayout* column, int spots);
  void build_fields(QVBoxLayout* column);
  void show_hint();

  std::vector<job::Instrument> instruments_;
  widgets::Text* heading_ = nullptr;
  std::vector<widgets::Button*> spots_;
  InstrumentBox* dial_ = nullptr;
  widgets::NumberField* rest_ = nullptr;
  widgets::NumberField* lifted_ = nullptr;
  widgets::NumberField* zero_ = nullptr;
  widgets::Text* hint_ = nullptr;
};

}  // namespace shimwright::bench
