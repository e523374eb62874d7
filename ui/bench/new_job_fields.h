#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QPlainTextEdit>

#include "shimwright/store/types.h"
#include "shimwright/widgets/pick_box.h"

namespace shimwright::bench {

/// Several lines of words in which Enter moves on, as in every other field.
class FreeText : public QPlainTextEdit {
  Q_OBJECT

 public:
  explicit FreeText(QWidget* parent = nullptr);
  [[nodiscard]] std::string text() const;

 signals:
  void entered();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
};

/// One of the spec sheets, latest issues. The arrow keys and letters go through them; Enter moves on; the wheel does
/// nothing.
class GearboxChoice : public widgets::PickBox {
  Q_OBJECT

 public:
  explicit GearboxChoice(QWidget* parent = nullptr);

  /// The only one there is, is chosen.
  void set_issues(const std::vector<store::SheetIssue>& issues);
  /// The same for job sheets; the one added last is chosen.
  void set_job_sheets(const std::vector<store::SheetIssue>& issues);
  /// Hash of the chosen issue.
  [[nodiscard]] std::optional<std::string> chosen() const;
  [[nodiscard]] bool chosen_is_demonstration() const;
  /// False: there is no such gearbox.
  bool choose_gearbox(const std::string& gearbox);
  /// Back to where set_issues() left it.
  void choose_none();

 signals:
  void entered();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Issue {
    std::string hash;
    std::string gearbox;
    bool demonstration = false;
  };
  [[nodiscard]] const Issue* chosen_issue() const;
  void add_issue(const store::SheetIssue& issue, const QString& title, bool demonstration);

  std::vector<Issue> issues_;
};

}  // namespace shimwright::bench
