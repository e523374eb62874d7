#pragma once

#include <optional>

#include "form_card.h"
#include "reading_list.h"
#include "shimwright/metrology/repeat.h"

namespace shimwright::workshop {

/// The guided repeat test: the same thing is read ten times, and what the readings scatter by is said as they come in.
class RepeatCard : public FormCard {
  Q_OBJECT

 public:
  enum class Of { instrument, feel };
  /// `told` says what to do; of a feel the step between the shims offered is asked for too.
  RepeatCard(Of of, const QString& heading, const QString& told, quantity::Unit unit, QWidget* parent = nullptr);
  [[nodiscard]] bool has_unsent() const override { return !list_->readings().empty() || list_->has_unsent(); }
  void take_focus();

 signals:
  /// In thousandths of a base unit.
  void found(qint64 deviation);

 private:
  void show_result();
  void keep();
  /// Of the readings so far, in thousandths of a base unit; nothing for too few, or without a step.
  [[nodiscard]] std::optional<qint64> deviation() const;

  Of of_;
  quantity::Unit unit_;
  ReadingList* list_ = nullptr;
  widgets::NumberField* step_ = nullptr;
  QLabel* result_ = nullptr;
};

/// `0.0042 mm`: thousandths of a base unit in the unit shown, two figures of a deviation.
[[nodiscard]] QString deviation_words(qint64 thousandths, quantity::Unit unit);

}  // namespace shimwright::workshop
