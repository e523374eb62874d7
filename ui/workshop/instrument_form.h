#pragma once

#include "form_card.h"
#include "shimwright/store/types.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/number_field.h"

class QCheckBox;

namespace shimwright::workshop {

/// One instrument of a kind: what it reads to, its calibration, what its repeat test found, and whether it is in use.
class InstrumentForm : public FormCard {
  Q_OBJECT

 public:
  InstrumentForm(const store::KeptInstrument& kept, bool is_new, QWidget* parent = nullptr);
  /// As the fields have it; nothing where a number cannot be read, and its field says so.
  [[nodiscard]] std::optional<store::KeptInstrument> instrument();
  [[nodiscard]] bool has_unsent() const override { return typed() != typed_before_; }

 signals:
  void repeat_test_wanted();

 private:
  widgets::NumberField* add_number(const QString& title, const QString& name, std::optional<std::int64_t> base,
                                   QBoxLayout* into);
  void build_dates();
  void build_repeatability(bool is_new);
  void build_use();
  [[nodiscard]] QStringList typed() const;

  store::KeptInstrument before_;
  quantity::Unit unit_;
  widgets::WordField* name_ = nullptr;
  widgets::NumberField* resolution_ = nullptr;
  widgets::NumberField* permissible_error_ = nullptr;
  widgets::NumberField* turn_ = nullptr;
  widgets::WordField* calibrated_on_ = nullptr;
  widgets::WordField* calibrated_to_ = nullptr;
  QCheckBox* in_use_ = nullptr;
  QStringList typed_before_;
};

/// `resolution 0.01 mm · error ±0.013 mm · repeatability 0.004 mm · calibrated to 31 Mar 2027, due`.
[[nodiscard]] QString instrument_words(const store::KeptInstrument& kept, const job::Moment& now);
/// Overdue, due and no date are marked.
[[nodiscard]] widgets::Mark mark_of(const store::KeptInstrument& kept, const job::Moment& now);
[[nodiscard]] QString kind_words(sheet::InstrumentKind kind);

}  // namespace shimwright::workshop
