#pragma once

#include <functional>

#include <QBoxLayout>
#include <QFrame>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QString>

class QLineEdit;
class QScrollArea;

/// The small parts every page is put together from.
namespace shimwright::widgets {

/// A button that answers to a click, Space, and Enter while it has the focus; never a default button. Its name for
/// tests and for those who do not see it is its text; `keys` (`Ctrl Enter`) stand behind the text, small.
class Button : public QPushButton {
  Q_OBJECT

 public:
  enum class Kind { plain, main, answer, quiet };

  explicit Button(const QString& text, QWidget* parent = nullptr) : Button(text, Kind::plain, parent) {}
  Button(const QString& text, Kind kind, QWidget* parent = nullptr);

  /// What the button does, without the keys.
  void set_action_text(const QString& text);
  void set_keys(const QString& keys);
  /// A second, smaller line: `will not enter · key 1`.
  void set_second_line(const QString& text);
  [[nodiscard]] Kind kind() const { return kind_; }
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] QFont first_font() const;
  [[nodiscard]] QFont second_font() const;

  Kind kind_ = Kind::plain;
  QString action_;
  QString keys_;
  QString second_;
};

/// Text that wraps; `part` as in set_part(). Plain text only.
class Text : public QLabel {
  Q_OBJECT

 public:
  explicit Text(const QString& text, QWidget* parent = nullptr) : Text(text, nullptr, parent) {}
  Text(const QString& text, const char* part, QWidget* parent = nullptr);
  /// A number stays on one line with its ± and its unit.
  void setText(const QString& text);
};

/// A box with an amber edge: `Caution` and what to heed.
class CautionBox : public QFrame {
  Q_OBJECT

 public:
  CautionBox(const QString& word, const QString& text, QWidget* parent = nullptr);
};

/// A box with heading and text; further rows and buttons go into body(). Parts: `card`, `notice` (amber edge).
class Box : public QFrame {
  Q_OBJECT

 public:
  Box(const QString& heading, const QString& text, const char* part, QWidget* parent = nullptr);
  void set_heading(const QString& heading);
  void set_text(const QString& text);
  [[nodiscard]] QVBoxLayout* body() const { return body_; }

 private:
  QVBoxLayout* body_;
  Text* heading_;
  Text* text_;
};

/// `demonstration values`.
[[nodiscard]] QLabel* demonstration_mark(QWidget* parent);

/// A line edit of 54 pixels with its title above; for words, not for numbers.
class WordField : public QWidget {
  Q_OBJECT

 public:
  explicit WordField(const QString& title, QWidget* parent = nullptr);
  [[nodiscard]] std::string text() const;
  void set_text(const std::string& text);
  [[nodiscard]] QLineEdit* edit() const { return edit_; }

 signals:
  void edited();
  void entered();  ///< Enter was pressed

 private:
  QLineEdit* edit_;
};

/// A column that scrolls up and down only, for content that may be higher than the window. The content's layout is
/// column().
class Scroll : public QFrame {
  Q_OBJECT

 public:
  explicit Scroll(QWidget* parent = nullptr);
  [[nodiscard]] QVBoxLayout* column() const { return column_; }
  [[nodiscard]] QWidget* content() const { return content_; }
  void show_top();
  /// For what cannot wrap, such as a table.
  void let_scroll_sideways();
  /// Scrolls as far as needed for it to be seen, once everything has its place.
  void show_child(QWidget* child);
  /// By Page Up and Down, Home and End; false for another key.
  bool scroll_by(int key);
  /// Whether the content is higher than what is shown of it.
  [[nodiscard]] bool overflows() const;

 private:
  void show_wanted();

  QScrollArea* area_;
  QWidget* content_;
  QVBoxLayout* column_;
  QPointer<QWidget> wanted_;  ///< to be kept in sight
};

}  // namespace shimwright::widgets
