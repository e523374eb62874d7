#include "shimwright/shell/start_window.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "shell_bench.h"

using namespace shimwright;

TEST_CASE("the start window keeps its size and says when it is closed") {
  const QTemporaryDir folder;
  shell::Settings settings(test::settings_file(folder.filePath("settings.ini")));
  {
    shell::StartWindow window(settings);
    QSignalSpy closed(&window, &shell::StartWindow::closed);
    window.show_hindrance();
    CHECK(window.hindrance()->isVisible());
    window.show_first();
    CHECK(window.first()->isVisible());
    window.resize(700, 620);
    window.close();
    CHECK(closed.count() == 1);
  }
  const shell::StartWindow window(settings);
  CHECK(window.size() == QSize(700, 620));
}
