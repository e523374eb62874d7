#pragma once

#include <memory>
#include <optional>
#include <string>

#include <QWidget>

#include "shimwright/bench/workbench.h"

class QBoxLayout;

namespace shimwright::widgets {
class Button;
class Scroll;
class Text;
}  // namespace shimwright::widgets

namespace shimwright::bench {

class NewJobForm;
struct EarlierJobs;

/// Opens a job: the vehicle, what the customer says, the gearbox and its spec sheet; beside it what the workshop
/// remembers of the vehicle. Nothing typed is lost by a refusal, nor by leaving the page.
class NewJobPage : public QWidget {
  Q_OBJECT

 public:
  explicit NewJobPage(Workbench& bench, QWidget* parent = nullptr);
  ~NewJobPage() override;

  /// Everything blank, the next number.
  void begin();
  /// The same for a vehicle that was here before.
  void begin_with(const std::string& vehicle_key);
  /// Something is typed that no entry holds.
  [[nodiscard]] bool has_unsent() const;
  void take_focus();

 signals:
  void opened();  ///< the job is stored and in the workbench's hand
  void cancelled();

 private:
  void build_body(QBoxLayout* column);
  void build_foot(QBoxLayout* column);
  void look_for_vehicle();
  void show_earlier();
  void cancel();
  void ask_before_loss(bool ask);
  void open_job();
  void show_refusal(const Error& error);
  [[nodiscard]] QString waiting_sheets(const std::vector<store::SheetIssue>& usable);

  Workbench* bench_;
  std::string number_;
  std::optional<std::string> vehicle_key_;  ///< whose earlier jobs are shown
  std::unique_ptr<EarlierJobs> earlier_;
  QString filled_words_;
  QString waiting_;                      ///< sheets that are not offered yet
  std::optional<Error> sheets_refused_;  ///< why no job sheet can be offered
  NewJobForm* form_ = nullptr;
  widgets::Scroll* body_ = nullptr;
  widgets::Scroll* beside_ = nullptr;
  widgets::Button* cancel_ = nullptr;
  widgets::Button* throw_away_ = nullptr;
  widgets::Button* go_on_ = nullptr;
  widgets::Text* said_ = nullptr;
  widgets::Button* open_ = nullptr;
};

}  // namespace shimwright::bench
