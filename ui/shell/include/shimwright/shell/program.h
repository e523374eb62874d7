#pragma once

#include <memory>
#include <optional>
#include <string>

#include <QObject>

#include "shimwright/shell/equipment.h"
#include "shimwright/shell/main_window.h"
#include "shimwright/shell/settings.h"
#include "shimwright/shell/start_window.h"
#include "shimwright/shell/start_words.h"

namespace shimwright::shell {

/// From the start to the last window closed: which store, and the window that fits how it opened.
class Program : public QObject {
  Q_OBJECT

 public:
  /// Settings must outlive it.
  Program(Settings& settings, Equipment equipment);
  ~Program() override;
  Program(const Program&) = delete;
  Program& operator=(const Program&) = delete;

  void start(const StartWords& words);
  /// Nothing where the store is not open.
  [[nodiscard]] MainWindow* main_window() const { return main_.get(); }
  [[nodiscard]] StartWindow* start_window() const { return start_.get(); }

 signals:
  void finished();

 private:
  void open(const std::string& path, store::Mode mode);
  void take(std::unique_ptr<store::Store> store);
  void switch_to(const std::string& path);
  void offer_first(const QString& fault = {});
  void hinder(const Error& error);
  void try_demo();
  void begin_own(const Beginning& beginning);
  void choose_first_logo();
  void take_choice(const QString& name);
  void show_choices();
  void break_lock(const store::LockHolder& shown);
  [[nodiscard]] Result<std::unique_ptr<store::Store>> store_at(const std::string& path, store::Mode mode);
  StartWindow& start_window_shown();

  Settings* settings_;
  Equipment equipment_;
  std::string path_;
  store::Mode mode_ = store::Mode::read_write;
  std::unique_ptr<store::Store> store_;
  std::unique_ptr<bench::Workbench> bench_;
  std::unique_ptr<MainWindow> main_;
  std::unique_ptr<StartWindow> start_;
};

}  // namespace shimwright::shell
