#pragma once

#include <vector>

#include "shimwright/widgets/background_work.h"
#include "shimwright/widgets/parts.h"

class QProgressBar;

namespace shimwright::workshop {
class FlowRow;
}

namespace shimwright::workshop {

/// A card with buttons for work that takes its time: progress, stop, and what came of it stand below them.
class WorkCard : public widgets::Box {
  Q_OBJECT

 public:
  /// `name` is the start of the names of its parts: `backup` gives `backup-result`.
  WorkCard(const QString& heading, const QString& name, QWidget* parent);

  [[nodiscard]] bool works() const { return work_->runs(); }

 protected:
  /// Above the progress; not to be pressed while the card works.
  widgets::Button* add_button(const QString& text, const QString& name,
                              widgets::Button::Kind kind = widgets::Button::Kind::plain);
  /// Not to be pressed at all: the store can only be looked at.
  void switch_off(widgets::Button* button);
  widgets::Text* add_text(const QString& text, const char* part = nullptr);
  /// To be called once all above it is there.
  void add_progress();
  void run(const QString& saying, widgets::BackgroundWork::Work work);
  void tell(const QString& text, bool good);
  void tell_refused(const Error& error);

 private:
  void show_run(bool runs);

  QString name_;
  widgets::BackgroundWork* work_;
  std::vector<widgets::Button*> buttons_;
  widgets::Button* pressed_ = nullptr;
  QProgressBar* progress_ = nullptr;
  FlowRow* row_ = nullptr;  ///< of the buttons that are being added
  bool asked_ = false;      ///< by a press, and not answered yet
  widgets::Button* stop_ = nullptr;
  widgets::Text* outcome_ = nullptr;
};

}  // namespace shimwright::workshop
