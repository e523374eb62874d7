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
  bool struck = false;          ///< ruled out: struck through, pale
  bool advised = false;         ///< washed blue, with `advised_word` behind the words
  bool conflicting = false;     ///< brick edge: this shim's trial contradicts another
  bool picked = false;          ///< taken by the person in place of the advised one: outlined
};

/// Shims as tall rows, thick above thin. Ruled-out rows beyond the nearest ones fold into one line. A click on a row, or
/// Up, Down and Enter or Space with the focus here, picks it where picking is allowed.
class ShimRows : public QWidget {
  Q_OBJECT

 public:
  explicit ShimRows(QWidget* parent = nullptr);
  /// Thick to thin. Rows that are struck and not next to a live row are folded: `1.80 to 2.15: ruled out by trial 1`
  /// takes `fold_words` of the first of them.
  void set_rows(const std::vector<ShimRow>& rows, const QString& advised_word);
  void set_fold_words(const QString& above, const QString& below);
  void set_pickable(bool pickable);

 signals:
  void picked(const std::string& shim);

 private:
  void build();

  std::vector<ShimRow> rows_;
  QString advised_word_;
  QString fold_above_;
  QString fold_below_;
  bool pickable_ = false;
};

}  // namespace shimwright::widgets
