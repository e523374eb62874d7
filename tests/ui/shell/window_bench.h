#pragma once

#include <QTest>

#include <memory>
#include <string>

#include <QSettings>

#include "come_up.h"
#include "painted.h"
#include "shell_bench.h"
#include "shimwright/shell/main_window.h"

/// The real window with its real pages, for what is looked at on every screen.
namespace shimwright::test {

inline constexpr QSize smallest_screen(1366, 768);

inline void settle() {
  for (int round = 0; round < 4; ++round) {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
  }
}

struct WindowBench {
  Dressed dressed{widgets::Scheme::light};
  UiBench bench;
  shell::Settings settings{settings_file(bench.file("settings.ini"))};
  shell::Equipment equipment = plain_equipment(bench.file("data"));
  std::unique_ptr<shell::MainWindow> window;

  explicit WindowBench(const std::string& script = "02-bearing-not-home") : bench(script) {
    settings.use_store(bench.store().path());
    equipment.pages = shell::page_table();
  }
  void open() {
    window = std::make_unique<shell::MainWindow>(bench.workbench(), settings, equipment);
    window->resize(smallest_screen);
    come_up(*window);
  }
};

}  // namespace shimwright::test
