#pragma once

#include <string>
#include <vector>

#include <QWidget>

#include "shimwright/bench/step_page.h"
#include "shimwright/bench/surroundings.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

class AskBox;
class FootBar;
class PackPanel;
class QuestionBox;
class SheetList;
class StandBox;

/// What the top bar says while a job is shown.
struct JobHeading {
  QString job;               ///< `Job 2041`
  QString vehicle;           ///< `VIN TESTVN009TA030417 · 121400 km`, to be compared
  QString vehicle_in_short;  ///< `VIN ends 30417 · 121400 km`
  QString spec;              ///< `Spec sheet D7, issue 2`
  bool demonstration = false;
};

/// The job screen: the sheet on the left, one step in the middle, the pack on the right. Draws the job in hand and
/// sends what the person does.
class JobPage : public QWidget {
  Q_OBJECT

 public:
  /// Narrower than this the drawing gives way.
  static constexpr int width_with_drawing = 1100;

  JobPage(Workbench& bench, Surroundings surroundings, QWidget* parent);
  ~JobPage() override;

  /// Shows the job in hand at its place: the step that is next.
  void show_job();
  /// Goes to a step; what is typed is kept first. Nothing happens where that is refused.
  void show_step(const std::string& step_id);
  [[nodiscard]] JobHeading heading() const;
  /// Keeps what is typed. False: it was refused, the sentence stands on the page.
  [[nodiscard]] bool may_leave();
  [[nodiscard]] std::string step_id() const { return step_id_; }
  [[nodiscard]] StepPage* page() const { return page_; }

 signals:
  void heading_changed();
  void left();  ///< back to the bench
  void record_wanted(const std::string& job);
  void accepted();      ///< something was kept: for the tone
  void strip_wanted();  ///< F2

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void build_middle(QHBoxLayout* row);
  void connect_parts();
  void connect_page();
  void add_keys();
  void press_main();
  void open_page(const std::string& step_id);
  void show_head(const sheet::Step* step);
  void show_banner();
  void take_up_here();
  void make_room();
  void refresh();
  void show_actions();
  [[nodiscard]] widgets::StripText own_strip() const;
  [[nodiscard]] std::vector<FootAction> actions();
  void add_left_actions(std::vector<FootAction>& actions);
  void add_step_actions(std::vector<FootAction>& actions);
  void go_on();
  void put_focus();
  void keep_field_in_sight();
  void say_refusal(const Error& error);
  bool send(const job::Command& command);
  bool send_and_go_on(const job::Command& command);
  void ask_more();
  void ask_taking_back();
  void show_hours();
  void show_parts();
  void ask_handing_over();
  void ask_reason();
  void ask_not_required();
  void ask_note();
  void ask_parking();
  void add_photo();
  void show_keypad();
  void fill_window_with_strip();
  [[nodiscard]] const sheet::Step* step() const;

  Workbench* bench_;
  Surroundings surroundings_;
  std::string step_id_;
  bool returning_ = false;  ///< the job was just taken in hand: last done and next are told

  SheetList* sheet_;
  PackPanel* panel_;
  FootBar* foot_;
  widgets::Scroll* middle_ = nullptr;
  QFrame* keypad_;
  widgets::Strip* strip_ = nullptr;
  widgets::Strip* filling_strip_;
  AskBox* ask_ = nullptr;
  QuestionBox* questions_ = nullptr;
  StandBox* banner_ = nullptr;
  widgets::Text* refusal_ = nullptr;
  widgets::Text* title_ = nullptr;
  widgets::Text* text_ = nullptr;
  QVBoxLayout* cautions_ = nullptr;
  QVBoxLayout* page_place_ = nullptr;
  QWidget* caution_place_ = nullptr;
  StepPage* page_ = nullptr;
};

}  // namespace shimwright::bench
