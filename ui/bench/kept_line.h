#pragma once

#include <QFrame>
#include <QString>
#include <QWidget>

#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// What is kept for a step: a mark and its words. Hidden while there are none.
class KeptLine : public QWidget {
  Q_OBJECT

 public:
  explicit KeptLine(QWidget* parent);

  /// `bad`: in brick. No words: nothing is shown.
  void show_words(widgets::Mark mark, const QString& words, bool bad = false);
  [[nodiscard]] QString words() const { return text_->text(); }

 private:
  widgets::MarkView* mark_;
  widgets::Text* text_;
};

/// Which keys answer. It holds the focus of a page without a field, where it is seen and no Enter answers anything.
class KeyLine : public widgets::Text {
  Q_OBJECT

 public:
  explicit KeyLine(QWidget* parent);
};

/// Something is typed that the page cannot send by itself: what to do about it, and a button that clears it.
class UnsentBox : public widgets::Box {
  Q_OBJECT

 public:
  UnsentBox(const QString& sentence, QWidget* parent);

 signals:
  void cleared();
};

}  // namespace shimwright::bench
