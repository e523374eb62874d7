#pragma once

#include <QString>
#include <QWidget>

#include "shimwright/widgets/marks.h"

namespace shimwright::widgets {

/// What the stand-back strip says: one instruction or verdict and one value.
struct StripText {
  Mark mark = Mark::none;
  QString large;     ///< `Try 1.65`, `0.93 too large`
  QString small;     ///< `large bearing, trial 3`
  bool bad = false;  ///< in brick
  friend bool operator==(const StripText&, const StripText&) = default;
};

/// The strip on top of every step, readable at 1.5 m. Where the words do not fit into one line the type gets smaller,
/// then they wrap into two, but capitals never get lower than 7 mm at 112 dots per inch; only then are words left out.
class Strip final : public QWidget {
  Q_OBJECT

 public:
  explicit Strip(QWidget* parent = nullptr);
  void set_text(const StripText& text);
  [[nodiscard]] const StripText& text() const { return text_; }
  /// Fills whatever room there is, with the type as large as fits.
  void set_filling(bool filling);
  [[nodiscard]] int cap_height() const;           ///< of the large type as it is painted, pixels
  [[nodiscard]] QStringList large_lines() const;  ///< as they are painted
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return !filling_; }
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void settle();

  StripText text_;
  bool filling_ = false;
};

}  // namespace shimwright::widgets
