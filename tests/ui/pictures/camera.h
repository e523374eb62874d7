#pragma once

#include <memory>
#include <string>

#include <QString>

#include "shimwright/print/fonts.h"
#include "shimwright/shell/main_window.h"
#include "shimwright/shell/program.h"
#include "ui_bench.h"

/// Pictures of the real window, for the eye.
namespace shimwright::test {

/// Writes a window to the folder of this run, light and dark: `name-light.png`, at twice the size `name-light-200.png`
/// and, as small as the smallest screen is then, `name-light-200-smallest.png`. Only pictures whose name contains the
/// part asked for. Fails where the window does not keep to the smallest screen.
class Camera {
 public:
  Camera();
  void shoot(QWidget& window, const QString& name);
  /// In one scheme, where the window itself says which one it is.
  void shoot_in(QWidget& window, const QString& name, widgets::Scheme scheme);
  /// What surrounds the window: the real pages, a fixed clock.
  [[nodiscard]] static shell::Equipment equipment(const QString& folder);

 private:
  static void take(QWidget& window, const QString& file, const QSize& size);

  print::Fonts fonts_;
};

/// A job of a demonstration script on the job screen of the real window.
class JobStudio {
 public:
  explicit JobStudio(const std::string& script = "02-bearing-not-home");
  /// Shows the job as it stands before the first command for that step, or `further` commands later.
  void at(const std::string& step, std::size_t further = 0);
  /// The same, and goes to that step's page.
  void at_page(const std::string& step, std::size_t further = 0);
  void shoot(const QString& name) { camera_.shoot(*window_, name); }
  void press(const QString& button);
  void type(const QString& field, const QString& text);
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
  [[nodiscard]] UiBench& bench() { return bench_; }
  [[nodiscard]] shell::MainWindow& window() { return *window_; }

 private:
  Camera camera_;
  UiBench bench_;
  shell::Settings settings_;
  shell::Equipment equipment_;
  std::unique_ptr<shell::MainWindow> window_;
};

/// A window as large as the smallest screen, with the focus.
void open_at_smallest(QWidget& window);
void press(QWidget& window, const QString& button);
/// Of whatever scrolls.
void scroll_to_end(QWidget& window);
void type(QWidget& window, const QString& field, const QString& text);

}  // namespace shimwright::test
