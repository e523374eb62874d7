#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QLabel>
#include <QLineEdit>
#include <QString>
#include <QWidget>

#include "shimwright/quantity/typed_number.h"

namespace shimwright::widgets {

class Text;

/// A number as it is typed: title above, what was understood beside it, limit and question below. The text is never
/// changed by the program. Enter reads it: where it cannot be read the reader's sentence stands below and the focus
/// stays; else entered() is sent. Wheel and arrow keys do nothing.
class NumberField : public QWidget {
  Q_OBJECT

 public:
  /// Lengths and torques are typed in the units shown (units.h), whatever unit is asked for.
  NumberField(const QString& title, quantity::Unit unit, QWidget* parent = nullptr);

  /// As typed, for the reader of whoever asked: with its unit where that is another than the one asked for.
  [[nodiscard]] std::string text() const;
  /// The same of another text typed here, as one without its sign.
  [[nodiscard]] std::string with_unit(const std::string& typed) const;
  [[nodiscard]] bool blank() const;
  void set_text(const std::string& text);
  /// A number kept before: its digits, or digits and unit where it was typed in another.
  void set_number(const quantity::TypedNumber& number);
  /// As the reader has it; of a blank field the refusal `empty`.
  [[nodiscard]] Result<quantity::TypedNumber> number() const;
  /// The one it is typed in.
  [[nodiscard]] quantity::Unit unit() const { return unit_; }

  void set_title(const QString& title);
  /// Stands below, soft: `0.25 to 0.85 mm`.
  void set_hint(const QString& hint);
  /// Stands below, in brick, until the text is changed.
  void set_fault(const QString& sentence);
  [[nodiscard]] bool faulty() const { return !fault_.isEmpty(); }
  /// Where the number cannot be read its sentence stands below then.
  [[nodiscard]] bool readable();
  /// Whether a blank field may be left with Enter.
  void set_may_be_blank(bool may) { may_be_blank_ = may; }

  /// As wide as there is room for, what was understood below and not beside it: for two fields side by side.
  void set_narrow();

  void take_focus();
  [[nodiscard]] QLineEdit* edit() const { return edit_; }

 signals:
  void edited();   ///< the text changed, by hand or by set_text()
  void entered();  ///< Enter, and the text can be read or may be blank

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void show_echo();
  void read_it();

  quantity::Unit asked_;
  quantity::Unit unit_;
  bool may_be_blank_ = false;
  bool newly_there_ = false;  ///< the focus came, and neither key nor click since
  QString hint_text_;
  QString fault_;
  Text* title_;
  QLineEdit* edit_;
  Text* echo_;
  Text* below_;
};

/// Enter in each field moves to the next one; `after_last` is called at the last. The fields must live as long as
/// their parent does.
void chain_fields(const std::vector<NumberField*>& fields, const std::function<void()>& after_last);

}  // namespace shimwright::widgets
