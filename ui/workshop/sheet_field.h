#pragma once

#include <string>

#include <QWidget>

#include "shimwright/sheet/draft.h"
#include "shimwright/widgets/parts.h"
#include "word_pick.h"

class QLineEdit;

namespace shimwright::workshop {

/// One value of a draft: title, what is typed, its unit, what a number was understood as, and the sentence of its
/// fault. The text is never changed by the program.
class SheetField : public QWidget {
  Q_OBJECT

 public:
  explicit SheetField(sheet::DraftField field, QWidget* parent = nullptr);
  /// Narrow enough to stand beside others of its row.
  void make_short();

  [[nodiscard]] const std::string& place() const { return field_.place; }
  [[nodiscard]] std::string text() const;
  /// Stands below in brick; blank: none.
  void set_fault(const QString& sentence);
  void take_focus();
  /// Says what is typed and not said yet.
  void commit();

 signals:
  void committed(const std::string& place, const std::string& text);
  void entered();  ///< Enter: on to the next field

 private:
  void add_line(QBoxLayout* row);
  void add_pick(QBoxLayout* row);
  void show_echo();

  sheet::DraftField field_;
  std::string said_;  ///< what was committed last
  QLineEdit* edit_ = nullptr;
  WordPick* pick_ = nullptr;
  widgets::Text* unit_ = nullptr;
  widgets::Text* echo_ = nullptr;
  widgets::Text* fault_;
};

}  // namespace shimwright::workshop
