#pragma once

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/bench/job_page.h"
#include "shimwright/bench/surroundings.h"
#include "shimwright/job/command.h"

/// What the toolkit has put off until the next turn of its loop.
namespace shimwright::test {
void settle_toolkit();
}

/// A technician who has only keys: each command of a script becomes the keys a person would press for it on the job
/// screen. Nothing is called on the screen itself.
namespace shimwright::test {

/// Time and file dialog in the hands of a test.
class Hands {
 public:
  [[nodiscard]] bench::Surroundings surroundings();
  /// As long as a hand takes to the next key.
  void pause();
  void set_photo(QString file) { photo_ = std::move(file); }

 private:
  std::vector<std::function<void()>> waiting_;
  QString photo_;
};

class KeyTechnician {
 public:
  KeyTechnician(QWidget& window, bench::JobPage& page, bench::Workbench& bench, Hands& hands)
      : window_(&window), page_(&page), bench_(&bench), hands_(&hands) {}
  /// In a window that makes its job screen only when it comes to it.
  KeyTechnician(QWidget& window, bench::Workbench& bench, Hands& hands)
      : window_(&window), bench_(&bench), hands_(&hands) {}
  KeyTechnician(const KeyTechnician&) = delete;
  KeyTechnician& operator=(const KeyTechnician&) = delete;
  virtual ~KeyTechnician() = default;

  /// Presses the keys; fails the test where a key cannot be reached. `shim_to_come` is what the script takes after the
  /// pack came off; `photo` the file a script's photo names.
  void keep(const job::Command& command, const std::string& shim_to_come = {}, const QString& photo = {});

  virtual void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
  void type(const std::string& text);
  /// Tab until the widget of that name has the focus.
  virtual void fill(const QString& name, const std::string& text);
  virtual void tab_to(const QString& name);
  virtual void tab_and_press(const QString& name);
  /// Who is at the bench: the row of persons is called up.
  virtual void call_persons() { key(Qt::Key_F9); }
  [[nodiscard]] bool shows(const QString& name) const;

  void operator()(const job::OpenJob&) {}
  void operator()(const job::DoStep& command);
  void operator()(const job::CheckStep& command);
  void operator()(const job::ChooseAnswer& command);
  void operator()(const job::EnterReadings& command);
  void operator()(const job::EnterPeak& command);
  void operator()(const job::FitParts& command);
  void operator()(const job::AddPhoto& command);
  void operator()(const job::WriteText& command);
  void operator()(const job::TryShim& command);
  void operator()(const job::EnterDepths& command);
  void operator()(const job::EnterFloatRun& command);
  void operator()(const job::BeginSeries& command);
  void operator()(const job::Confirm& command);
  void operator()(const job::ChooseShim& command);
  void operator()(const job::TryTeachIn& command);
  void operator()(const job::Sign& command);
  void operator()(const job::Deviate& command);
  void operator()(const job::SayNotRequired& command);
  void operator()(const job::Withdraw& command);
  void operator()(const job::Note& command);
  void operator()(const job::Park& command);
  void operator()(const job::TakeUp& command);
  void operator()(const job::HandOver& command);
  void operator()(const job::BeginAssembly& command);
  // A seal needs a PIN, which no command holds.
  void operator()(const job::SealJob& /*command*/) {}
  void operator()(const job::AddAddendum& /*command*/) {}

 protected:
  virtual void main_key() { key(Qt::Key_Return, Qt::ControlModifier); }
  virtual void enter() { key(Qt::Key_Return); }
  /// `button`: what the number stands for on the page.
  virtual void digit(int number, const QString& button);
  /// Into the field that has the focus.
  virtual void type_number(const std::string& text) { type(text); }
  virtual void pick_shim(const std::string& text);

  [[nodiscard]] QWidget& window() const { return *window_; }
  /// Of the job screen; blank before there is one.
  [[nodiscard]] std::string step_id() const;
  [[nodiscard]] bench::JobPage* page() const;

 private:
  void go_to(const std::string& step);
  void more(const QString& pick);
  void press_in_foot(const QString& name);
  void tick_parts(const job::FitParts& command);
  void answer(const std::string& text);

  QWidget* window_;
  bench::JobPage* page_ = nullptr;
  bench::Workbench* bench_;
  Hands* hands_;
  std::string shim_to_come_;
};

}  // namespace shimwright::test
