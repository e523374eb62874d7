#pragma once

#include <optional>
#include <vector>

#include "form_card.h"
#include "reading_list.h"
#include "shimwright/job/measured_shim.h"
#include "shimwright/store/types.h"
#include "shimwright/widgets/pick_box.h"

namespace shimwright::workshop {

/// A shim as the form has it.
struct ShimEntered {
  job::TrayShim shim;
  store::ShimStock stock;
};

/// One size of a tray: its mark, its thickness by micrometer readings or typed, how many there are, and from how few on
/// it is ordered.
class ShimForm : public FormCard {
  Q_OBJECT

 public:
  /// `micrometers` are all that were ever kept; with those in use it is measured. `now_ms` is when a count that is
  /// typed was taken.
  ShimForm(const ShimEntered& before, bool is_new, std::vector<store::KeptInstrument> micrometers, std::int64_t now_ms,
           QWidget* parent = nullptr);
  /// Nothing where a number cannot be read or is missing, and the form says so.
  [[nodiscard]] std::optional<ShimEntered> shim();
  [[nodiscard]] bool has_unsent() const override { return typed() != typed_before_; }

 signals:
  void taking_out_wanted();

 private:
  void build_readings();
  void build_typed(QBoxLayout* into);
  void build_counts(bool is_new);
  void show_result();
  [[nodiscard]] QStringList typed() const;
  [[nodiscard]] std::optional<job::MeasuredShim> measured() const;
  /// Whether the readings are others than those the thickness stands on.
  [[nodiscard]] bool read_anew() const;
  /// The number of a field that may be blank; false where it cannot be read.
  [[nodiscard]] bool read(widgets::NumberField& field, std::optional<std::int64_t>& number);
  [[nodiscard]] bool take_thickness(ShimEntered& entered);

  ShimEntered before_;
  std::vector<store::KeptInstrument> micrometers_;
  std::int64_t now_ms_;
  std::vector<store::ShimReading> readings_;  ///< as in the list, with their micrometers
  widgets::WordField* mark_ = nullptr;
  widgets::PickBox* micrometer_ = nullptr;
  ReadingList* list_ = nullptr;
  QLabel* result_ = nullptr;
  widgets::NumberField* thickness_ = nullptr;
  widgets::NumberField* uncertainty_ = nullptr;
  widgets::NumberField* count_ = nullptr;
  widgets::NumberField* reorder_ = nullptr;
  QStringList typed_before_;
};

}  // namespace shimwright::workshop
