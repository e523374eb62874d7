#pragma once

#include <chrono>
#include <memory>
#include <random>
#include <string>

#include <QObject>
#include <QSettings>
#include <QWidget>

#include "shimwright/print/fonts.h"
#include "shimwright/shell/languages.h"
#include "shimwright/shell/program.h"
#include "watch.h"

namespace shimwright::test {

/// A person who types, clicks, pastes and closes at random, over the program as it is shipped. One action in each turn
/// of the event loop, also while a dialog stands over the window.
class RestlessUser : public QObject {
  Q_OBJECT

 public:
  /// `folder`: everything of the program's lies in it, and it is where the program runs.
  RestlessUser(QString folder, std::uint64_t seed, std::chrono::seconds long_enough, Watch& watch, print::Fonts fonts);
  ~RestlessUser() override;
  RestlessUser(const RestlessUser&) = delete;
  RestlessUser& operator=(const RestlessUser&) = delete;

  void begin();
  [[nodiscard]] shell::StorePlaces places() const;
  [[nodiscard]] int windows_opened() const { return windows_opened_; }

 signals:
  /// The time is over, and the last window is closed.
  void done();

 private:
  void act();
  void act_once();
  void come_to_an_end();
  void start_program();
  [[nodiscard]] shell::Equipment equipment();
  [[nodiscard]] QWidget* window_in_front() const;

  void press_a_key(QWidget& window);
  void type_a_burst(QWidget& window);
  void click(QWidget& window);
  void paste(QWidget& window);
  void resize(QWidget& window);
  void close(QWidget& window);
  void turn_the_wheel(QWidget& window);
  void answer(QWidget& dialog);

  [[nodiscard]] QString a_file();
  [[nodiscard]] int below(int end);
  template <class List>
  [[nodiscard]] const auto& one_of(const List& list) {
    return list[static_cast<std::size_t>(below(static_cast<int>(list.size())))];
  }

  QString folder_;
  std::mt19937_64 chance_;
  std::chrono::seconds long_enough_;
  std::chrono::steady_clock::time_point end_;
  Watch* watch_;
  print::Fonts fonts_;
  shell::Settings settings_;
  std::unique_ptr<shell::Spoken> spoken_;
  std::unique_ptr<shell::Program> program_;
  int depth_ = 0;  ///< dialogs have event loops of their own
  int windows_opened_ = 0;
  bool closed_ = true;
};

}  // namespace shimwright::test
