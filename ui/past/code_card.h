#pragma once

#include <QFrame>

#include "shimwright/store/scanned_code.h"

class QGridLayout;

namespace shimwright::widgets {
class Text;
}

namespace shimwright::past {

/// What a scanned code or a signed file says by its signature, large enough to be held beside the paper.
class CodeCard : public QFrame {
  Q_OBJECT

 public:
  explicit CodeCard(QWidget* parent = nullptr);

  void show_code(const store::ScannedCode& scanned);
  void show_fault(const Error& error);

 private:
  void add_value(const QString& what, const QString& value, const char* name);
  void clear_values();

  widgets::Text* standing_;
  widgets::Text* compare_;
  QGridLayout* values_;
};

}  // namespace shimwright::past
