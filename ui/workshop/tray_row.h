#pragma once

#include <vector>

#include "sheet_field.h"

namespace shimwright::workshop {

/// Lays all sizes of a tray at once: from, to, in steps of.
class TrayRow : public QWidget {
  Q_OBJECT

 public:
  explicit TrayRow(QWidget* parent = nullptr);
  /// What of it cannot be.
  void set_fault(const QString& sentence);

 signals:
  void laid(const std::string& from, const std::string& to, const std::string& step, const std::string& u_mm);

 private:
  std::vector<SheetField*> fields_;
};

}  // namespace shimwright::workshop
