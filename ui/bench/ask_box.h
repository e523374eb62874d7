#pragma once

#include <functional>
#include <vector>

#include <QFrame>
#include <QPointer>

#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// A question to the person, in place: asked one at a time, left with Escape or `Cancel`. While it is open the main key
/// answers it.
class AskBox : public QFrame {
  Q_OBJECT

 public:
  explicit AskBox(QWidget* parent);
  void ask(const Ask& ask);
  /// Park: what the job waits for, until when, and the parts that are to be ordered.
  void ask_parking(const std::vector<QString>& to_order,
                   const std::function<void(std::string waits_for, std::string due)>& answer);
  /// One of several: a row of buttons, named `button-pick-<name>`.
  struct Pick {
    std::string name;
    QString text;
    std::function<void()> act;
  };
  void ask_pick(const QString& question, const std::vector<Pick>& picks);
  [[nodiscard]] bool asking() const { return !isHidden(); }
  void leave();
  /// Without left(): what asked is gone.
  void put_away();
  /// Presses the button that answers, where there is one.
  void press_yes();

 signals:
  void left();
  void asking_changed();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QVBoxLayout* begin(const QString& question);
  void add_buttons(QVBoxLayout* column, const QString& yes, const std::function<void()>& act);

  QWidget* content_ = nullptr;
  QPointer<widgets::Button> yes_;
  QVBoxLayout* outer_;
};

}  // namespace shimwright::bench
