#pragma once

#include <QLocale>
#include <QSettings>
#include <QTemporaryDir>
#include <functional>
#include <memory>
#include <string>

#include "key_technician.h"
#include "painted.h"
#include "script_by_keys.h"
#include "shimwright/bench/job_page.h"
#include "shimwright/shell/main_window.h"
#include "ui_bench.h"

namespace shimwright::test {

/// The language of a region's numbers while this lives.
class InLocale {
 public:
  explicit InLocale(const char* name) { QLocale::setDefault(QLocale(QString::fromLatin1(name))); }
  InLocale(const InLocale&) = delete;
  InLocale& operator=(const InLocale&) = delete;
  ~InLocale() { QLocale::setDefault(QLocale::c()); }
};

/// The program's main window as it is shipped, over a workshop in which no job was opened yet, with the time between
/// two keys and the file dialog in the hands of the test.
class BenchWindow {
 public:
  /// `place`: as for UiBench.
  explicit BenchWindow(const std::string& script, const QString& place = {});

  [[nodiscard]] shell::MainWindow& window() { return *window_; }
  [[nodiscard]] UiBench& rig() { return rig_; }
  [[nodiscard]] Hands& hands() { return hands_; }

  /// From the home page through a new job and its whole sheet to its record, in sight. `before_each`: called before
  /// each of its answers and at the end.
  void do_whole_job(
      KeyTechnician& technician, const std::string& script, const std::function<void()>& before_each = [] {});

 private:
  [[nodiscard]] shell::Equipment equipment();
  void open_job(KeyTechnician& technician, const job::OpenJob& as_scripted);

  Dressed dressed_{widgets::Scheme::light};
  UiBench rig_;
  Hands hands_;
  shell::Settings settings_;
  shell::Equipment equipment_;
  std::unique_ptr<shell::MainWindow> window_;
};

/// The job in hand against the same one replayed from its script, without a window.
void check_as_replayed(const job::JobState& by_hand, const std::string& script);

}  // namespace shimwright::test
