#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QString>
#include <QWidget>

namespace shimwright::widgets {

struct ShimRow {
  std::string shim;             ///< `1.65`
  std::optional<double> share;  ///< 0 to 1, the length of the bar; unset: no bar
  QString words;                ///< `33 in 100`, `tight, trial 1`
  QString tray;                 ///< `1 in the tray, measured 1.652`
  QString tray_in_short;        ///< `1 in the tray`: where all of it has no room; blank: it is cut then
  bool struck = false;          ///< ruled out: struck through, pale
  bool advised = false;         ///< washed blue, with `advised_word` behind the words
  bool conflicting = false;     ///< brick edge: this shim's trial contradicts another
  bool picked = false;          ///< taken by the person in place of the advised one: outlined
};

class ShimRowButton;

/// Shims as tall rows, thick above thin. Ruled-out rows beyond the nearest ones fold into one line, and so do rows far
/// from the advised one where there is no room. A click on a row, or Up, Down and Enter or Space with the focus here,
/// picks it where picking is allowed. Each row is a child named `shim-1.65`.
class ShimRows : public QWidget {
  Q_OBJECT

 public:
  explicit ShimRows(QWidget* parent = nullptr);
  /// Thick to thin. Rows that are struck and not next to a live row are folded.
  void set_rows(const std::vector<ShimRow>& rows, const QString& advised_word);
  /// What a line of folded ruled-out shims says behind its range: `ruled out by trial 1`.
  void set_fold_words(const QString& above, const QString& below);
  void set_pickable(bool pickable);
  /// To the row that Up and Down go on from. No focus proxy: one that changes breaks the order of Tab.
  /// The row the next keys are for.
  void make_current(const std::string& shim);
  void take_focus();

  [[nodiscard]] std::vector<std::string> shown() const;  ///< the shims that stand in a row of their own
  [[nodiscard]] QString fold_above() const;              ///< the whole line, blank where nothing is folded
  [[nodiscard]] QString fold_below() const;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 signals:
  void picked(const std::string& shim);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  /// Rows [first, end) of rows_ stand for themselves, each so high.
  struct Window {
    std::size_t first = 0;
    std::size_t end = 0;
    int row_height = 50;
  };

  void build();
  void place();
  void mark_current();
  [[nodiscard]] Window window_in(int height) const;
  [[nodiscard]] QString fold_line(std::size_t first, std::size_t end, const QString& struck_words) const;
  [[nodiscard]] std::size_t position_of_current() const;

  std::vector<ShimRow> rows_;
  QString advised_word_;
  QString fold_above_;
  QString fold_below_;
  bool pickable_ = false;
  Window window_;
  std::vector<ShimRowButton*> buttons_;
  std::string current_;
};

}  // namespace shimwright::widgets
