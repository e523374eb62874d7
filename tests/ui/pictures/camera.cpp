#include "camera.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QPixmap>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QTest>
#include <catch2/catch.hpp>
#include <utility>

#include "come_up.h"
#include "shimwright/bench/job_page.h"

namespace shimwright::test {

namespace {

constexpr QSize smallest_screen(1366, 768);
constexpr QSize smallest_at_twice(683, 384);

print::Fonts loaded_fonts() {
  auto fonts = print::load_fonts();
  REQUIRE(fonts);
  return std::move(*fonts);
}

void settle() {
  for (int round = 0; round < 4; ++round) {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
  }
}

}  // namespace

Camera::Camera() : fonts_(loaded_fonts()) {
  widgets::dress(*qApp, widgets::Scheme::light, fonts_);
}

void Camera::shoot(QWidget& window, const QString& name) {
  shoot_in(window, name, widgets::Scheme::dark);
  shoot_in(window, name, widgets::Scheme::light);
}

void Camera::shoot_in(QWidget& window, const QString& name, widgets::Scheme scheme) {
  if (!name.contains(qApp->property("part").toString())) {
    return;
  }
  widgets::dress(*qApp, scheme, fonts_);
  const bool twice = window.devicePixelRatioF() > 1.5;
  const QString file = QStringLiteral("%1-%2%3").arg(
      name, scheme == widgets::Scheme::dark ? QStringLiteral("dark") : QStringLiteral("light"),
      twice ? QStringLiteral("-200") : QString());
  take(window, file, smallest_screen);
  if (twice) {
    // The smallest screen itself at 200 %. What gives way does so as the window becomes narrower.
    window.resize(smallest_at_twice);
    settle();
    window.resize(smallest_at_twice);
    take(window, file + QStringLiteral("-smallest"), smallest_at_twice);
    window.resize(smallest_screen);
    settle();
  }
}

void Camera::take(QWidget& window, const QString& file, const QSize& size) {
  settle();
  INFO(file.toStdString() << " " << window.width() << " by " << window.height());
  CHECK(window.size() == size);
  CHECK(window.grab().save(QDir(qApp->property("folder").toString()).filePath(file + QStringLiteral(".png"))));
}

shell::Equipment Camera::equipment(const QString& folder) {
  shell::Equipment equipment;
  equipment.clock = [] { return job::Moment{1795770000000, 60, false}; };
  equipment.places = {(folder + QStringLiteral("/own/workshop.shimwright")).toStdString(),
                      (folder + QStringLiteral("/demo/workshop.shimwright")).toStdString()};
  equipment.choose_folder = [](QWidget*, const QString&) { return QString(); };
  equipment.choose_photo = [](QWidget*, const QString&) { return QString(); };
  equipment.after = bench::real_surroundings().after;
  equipment.dress = [](widgets::Scheme) {};
  equipment.speak = [](const QString&) {};
  equipment.sound = [] {};
  equipment.pages = shell::page_table();
  return equipment;
}

void open_at_smallest(QWidget& window) {
  window.resize(smallest_screen);
  window.show();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  if (auto* main = qobject_cast<shell::MainWindow*>(&window)) {
    come_up(*main);
  }
}

void press(QWidget& window, const QString& button) {
  for (auto* found : window.findChildren<QAbstractButton*>(button)) {
    if (found->isVisible()) {
      found->click();
      settle();
      return;
    }
  }
  FAIL("no button " << button.toStdString());
}

void scroll_to_end(QWidget& window) {
  for (auto* area : window.findChildren<QAbstractScrollArea*>()) {
    QScrollBar* bar = area->verticalScrollBar();
    if (area->isVisible() && bar->maximum() > 0) {
      bar->setValue(bar->maximum());
    }
  }
  settle();
}

void type(QWidget& window, const QString& field, const QString& text) {
  for (auto* found : window.findChildren<QWidget*>(field)) {
    if (found->isVisible()) {
      found->setFocus();
      if (auto* line = qobject_cast<QLineEdit*>(found)) {
        line->selectAll();
      }
      QTest::keyClicks(found, text);
      settle();
      return;
    }
  }
  FAIL("no field " << field.toStdString());
}

JobStudio::JobStudio(const std::string& script)
    : bench_(script),
      settings_(std::make_unique<QSettings>(bench_.file(QStringLiteral("settings.ini")), QSettings::IniFormat)),
      equipment_(Camera::equipment(bench_.file(QStringLiteral("data")))) {
  settings_.use_store(bench_.store().path());
}

void JobStudio::at(const std::string& step, std::size_t further) {
  const std::string job = bench_.go_to(step, further);
  window_ = std::make_unique<shell::MainWindow>(bench_.workbench(), settings_, equipment_);
  open_at_smallest(*window_);
  REQUIRE(window_->go(shell::PageName::job, job));
  settle();
}

void JobStudio::at_page(const std::string& step, std::size_t further) {
  at(step, further);
  auto* page = window_->findChild<bench::JobPage*>();
  // From another one, as one comes to it in the course of the work.
  page->show_step(bench_.workbench().state().sheets.job->stages.front().steps.front().id);
  page->show_step(step);
  settle();
}

void JobStudio::press(const QString& button) {
  test::press(*window_, button);
}

void JobStudio::type(const QString& field, const QString& text) {
  test::type(*window_, field, text);
}

void JobStudio::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
  QWidget* focus = window_->focusWidget() == nullptr ? window_.get() : window_->focusWidget();
  QTest::keyClick(focus, key, modifiers);
  settle();
}

}  // namespace shimwright::test
