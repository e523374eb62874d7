#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <QWidget>

#include "shimwright/bench/workbench.h"

class QBoxLayout;
class QTimer;

namespace shimwright::widgets {
class Button;
class Scroll;
class Text;
class WordField;
}  // namespace shimwright::widgets

namespace shimwright::bench {

enum class Urgency;
struct Glance;
struct Heed;

/// The bench: jobs in work as cards, what to know before starting, and the way to a new job or a past one.
class HomePage : public QWidget {
  Q_OBJECT

 public:
  explicit HomePage(Workbench& bench, QWidget* parent = nullptr);

  /// Reads the store anew. A job that has no new entry since the last time is not read again.
  void refresh();
  /// Nothing: none is known.
  void set_last_backup(const std::optional<job::Moment>& moment);
  /// To the job of the first card, else to `New job`.
  void take_focus();

 signals:
  void take_up(const std::string& job_id);
  void new_job();
  void search(const std::string& text);

 private:
  /// What was read of a job, as of its entry number `seq`.
  struct Known {
    std::int64_t seq = 0;
    Result<job::JobState> state;
  };

  void build_left(QBoxLayout* row);
  void build_right(QBoxLayout* row);
  void forget_others();
  [[nodiscard]] const Result<job::JobState>& state_of(const store::JobSummary& summary);
  void add_to_cards(QWidget* widget);
  void place_card(const Glance& glance);
  void show_more(std::size_t count);
  void show_line_below();
  void show_heeds();
  void show_backup();
  [[nodiscard]] std::vector<Heed> heeds() const;
  [[nodiscard]] QWidget* card_of(const Glance& glance);
  [[nodiscard]] std::string job_in_focus() const;
  void put_focus(const std::string& job_id);

  Workbench* bench_;
  QTimer* more_;
  std::vector<store::JobSummary> jobs_;
  std::size_t shown_ = 0;  ///< of jobs_, as cards
  std::string wanted_focus_;
  std::map<std::string, Known> known_;
  std::optional<job::Moment> last_backup_;
  std::map<std::string, widgets::Button*> take_up_buttons_;  ///< by job
  std::vector<Urgency> urgencies_;                           ///< of the cards, from above
  std::string first_job_;
  widgets::Scroll* page_ = nullptr;
  widgets::Button* new_job_ = nullptr;
  widgets::Scroll* cards_ = nullptr;
  widgets::Text* backup_ = nullptr;
  widgets::WordField* find_ = nullptr;
  widgets::Scroll* heeds_ = nullptr;
};

}  // namespace shimwright::bench
