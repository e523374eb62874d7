#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/bench/workbench.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/widgets/strip.h"

namespace shimwright::bench {

/// A button in the foot bar of the job screen.
struct FootAction {
  std::string name;  ///< of the button in tests: `take`, `measure-again`
  QString text;
  std::function<void()> act;
  bool main = false;  ///< Ctrl+Enter; one at most
  bool enabled = true;
  bool on_left = false;  ///< with Back and Note; else on the right
};

/// What a page asks the job screen to ask a person, in place: one line of text, or a yes.
struct Ask {
  QString question;
  QString button;  ///< what happens: `Go on with this reason`
  bool needs_text = true;
  /// Called with the trimmed text; false: it was refused, so the question stands with its text.
  std::function<bool(std::string)> answer;
};

/// How one kind of step is done. Draws the state of the job and sends commands; no rule lives here. The job screen
/// shows title, text, cautions, strip, open questions and what holds the job around it.
class StepPage : public QWidget {
  Q_OBJECT

 public:
  StepPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  /// Draws the state as it is now; what is typed and not sent stays.
  virtual void refresh() = 0;
  /// Nothing large to say: the job screen takes the step's title.
  [[nodiscard]] virtual widgets::StripText strip() const { return {}; }
  [[nodiscard]] virtual std::vector<FootAction> actions() { return {}; }
  /// The page says by itself what is to be done now: title and text of the step would stand between.
  [[nodiscard]] virtual bool says_what_to_do() const { return false; }
  /// Puts the focus where the next key should go.
  virtual void take_focus() = 0;
  /// Something is typed that no entry holds.
  [[nodiscard]] virtual bool has_unsent() const { return false; }
  /// Sends what is typed before the page is left. False: it was refused, the sentence stands on the page.
  [[nodiscard]] virtual bool commit() { return true; }
  /// A burst of keys that ended in Enter while no field had the focus: a gauge or a scanner. False: not taken.
  virtual bool take_burst(const std::string& /*text*/) { return false; }
  /// A single key, 1 to 9, that no further key followed. False: not taken.
  virtual bool take_digit(int /*digit*/) { return false; }

  [[nodiscard]] const sheet::Step& step() const { return *step_; }

 signals:
  void look_changed();                           ///< strip or actions are others now
  void refused(const shimwright::Error& error);  ///< a command was; the job screen shows the sentence
  void asks(const shimwright::bench::Ask& ask);
  void leaves();  ///< the step is answered: go on to the next one

 protected:
  [[nodiscard]] Workbench& bench() const { return *bench_; }
  [[nodiscard]] const job::JobState& state() const { return bench_->state(); }
  [[nodiscard]] const sheet::SpecSheet& spec() const { return *bench_->state().sheets.spec; }
  [[nodiscard]] const job::StepState& step_state() const { return state().step(step_->id); }
  /// A text of the sheet in the language of the window.
  [[nodiscard]] QString said(const sheet::Text& text) const;
  /// Sends; a refusal goes out by refused(). True: entries followed. Where the step is passed then, leaves() follows.
  bool send(const job::Command& command, bool go_on = true);

 private:
  Workbench* bench_;
  const sheet::Step* step_;
};

/// The page for a step's kind. The step must belong to the sheet of the job in hand, which keeps it.
[[nodiscard]] StepPage* make_step_page(Workbench& bench, const sheet::Step& step, QWidget* parent);

/// Language of the window, as texts of sheets are named: `en`, `de`.
[[nodiscard]] std::string window_language();

}  // namespace shimwright::bench
