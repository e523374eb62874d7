#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>

#include <QObject>

#include "shimwright/shell/equipment.h"
#include "shimwright/shell/main_window.h"
#include "shimwright/shell/settings.h"
#include "shimwright/shell/start_window.h"
#include "shimwright/shell/start_words.h"
#include "shimwright/widgets/background_work.h"

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
  void dress_first();
  void bring_later_issues();
  void let_go();
  void come_up_anew();
  void switch_to(const std::string& path);
  void offer_first(const QString& fault = {});
  void hinder(const Error& error);
  void try_demo();
  void begin_own(const Beginning& beginning);
  void choose_first_logo();
  void take_choice(const QString& name);
  void ask_in_other_language(const QString& choice);
  void show_choices();
  void break_lock(const store::LockHolder& shown);
  void begin_work(widgets::BackgroundWork::Work work);
  void look_for_backup();
  void put_back(const std::string& backup);
  void restore_from(const std::string& backup);
  /// Does it in a thread while the start window says so, then opens the store and tells what came of it.
  void replace_store(const QString& doing, const std::function<Result<QString>()>& replace);
  [[nodiscard]] Result<std::unique_ptr<store::Store>> store_at(const std::string& path, store::Mode mode);
  StartWindow& start_window_shown();

  Settings* settings_;
  Equipment equipment_;
  std::string path_;
  store::Mode mode_ = store::Mode::read_write;
  bool dressed_ = false;
  std::unique_ptr<store::Store> store_;
  std::unique_ptr<bench::Workbench> bench_;
  std::unique_ptr<MainWindow> main_;
  std::unique_ptr<StartWindow> start_;
  // Last: it ends before what its outcome speaks of.
  std::unique_ptr<widgets::BackgroundWork> work_;
};

}  // namespace shimwright::shell
