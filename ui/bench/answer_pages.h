#pragma once

#include <vector>

#include "kept_line.h"
#include "shimwright/bench/step_page.h"

/// Steps answered with one press: do, check, choose, sign.
namespace shimwright::bench {

/// What these pages share: the answer that is kept, and the keys that answer. The line of the keys takes the focus, so
/// that no Enter left over from the step before presses an answer.
class AnswerPage : public StepPage {
  Q_OBJECT

 public:
  AnswerPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  void take_focus() override { setFocus(Qt::OtherFocusReason); }

 protected:
  [[nodiscard]] QVBoxLayout* column() const { return column_; }
  /// The answer given last in this round; nullptr before there is one.
  [[nodiscard]] const job::Entry* answer() const;
  [[nodiscard]] bool answer_stands() const;
  /// `Answer with key 1 or key 2.`
  [[nodiscard]] virtual QString key_words() const = 0;
  /// What an answer of this page says.
  [[nodiscard]] virtual QString words_of(const job::EntryBody& body) const;

 private:
  QVBoxLayout* column_;
  KeptLine* kept_;
  KeyLine* keys_;
};

class DoPage final : public AnswerPage {
  Q_OBJECT

 public:
  DoPage(Workbench& bench, const sheet::Step& step, QWidget* parent);
  [[nodiscard]] std::vector<FootAction> actions() override;

 protected:
  [[nodiscard]] QString key_words() const override;
};

class CheckPage final : public AnswerPage {
  Q_OBJECT

 public:
  CheckPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] bool has_unsent() const override { return !words_->text().empty(); }
  [[nodiscard]] bool commit() override;
  bool take_digit(int digit) override;

 protected:
  [[nodiscard]] QString key_words() const override;

 private:
  [[nodiscard]] bool say_answer(bool is_in_order, bool go_on);
  void press(bool is_in_order);
  void say_missing_words();

  widgets::WordField* words_;
  widgets::Text* missing_;
  widgets::Button* in_order_;
  widgets::Button* not_in_order_;
  UnsentBox* unsent_;
  bool waits_for_words_ = false;  ///< "not in order" was pressed before its words were there
};

class ChoosePage final : public AnswerPage {
  Q_OBJECT

 public:
  ChoosePage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  bool take_digit(int digit) override;

 protected:
  [[nodiscard]] QString key_words() const override;
  [[nodiscard]] QString words_of(const job::EntryBody& body) const override;

 private:
  void choose(const std::string& id);

  std::vector<widgets::Button*> buttons_;
};

class SignPage final : public AnswerPage {
  Q_OBJECT

 public:
  SignPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  void refresh() override;
  [[nodiscard]] std::vector<FootAction> actions() override;

 protected:
  [[nodiscard]] QString key_words() const override;

 private:
  [[nodiscard]] bool by_checker() const;

  widgets::Text* who_;
  widgets::Text* says_;
};

}  // namespace shimwright::bench
