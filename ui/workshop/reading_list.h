#pragma once

#include <vector>

#include <QWidget>

#include "shimwright/widgets/number_field.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::workshop {

/// Readings of one thing, one after the other: Enter adds what is typed and the field is free for the next.
class ReadingList : public QWidget {
  Q_OBJECT

 public:
  /// `unit` as the reader takes it; lengths are typed in the unit shown.
  ReadingList(const QString& title, quantity::Unit unit, QWidget* parent = nullptr);
  [[nodiscard]] const std::vector<quantity::TypedNumber>& readings() const { return readings_; }
  void set_readings(const std::vector<quantity::TypedNumber>& readings);
  /// Something is typed that is not in the list yet.
  [[nodiscard]] bool has_unsent() const { return !field_->blank(); }
  /// Adds what is typed. False: it cannot be read, and the field says so; a blank field adds nothing.
  [[nodiscard]] bool take_typed();
  [[nodiscard]] widgets::NumberField* field() const { return field_; }

 signals:
  void changed();

 private:
  void show_readings();

  QString title_;
  std::vector<quantity::TypedNumber> readings_;
  widgets::NumberField* field_;
  QLabel* list_;
  widgets::Button* take_back_;
};

}  // namespace shimwright::workshop
