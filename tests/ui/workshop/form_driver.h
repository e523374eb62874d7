#pragma once

#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include <catch2/catch.hpp>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/workshop/workshop_ways.h"
#include "ui_bench.h"

/// A section of the workshop in a window of its own, gone through by keys and clicks.
namespace shimwright::test {

template <class Section>
struct SectionBench {
  UiBench bench;
  QString picture;
  QWidget window;
  Section* section = nullptr;

  explicit SectionBench(const std::string& script = "02-bearing-not-home") : bench(script) {
    workshop::WorkshopWays ways;
    ways.clock = [this] { return bench.workbench().now(); };
    ways.by = [this] { return store::By{"", bench.workbench().now()}; };
    ways.signing.cost = {1, 8192};
    ways.choose_picture = [this] { return picture; };
    auto* scroll = widgets::child_of<widgets::Scroll>(&window);
    widgets::lay<QVBoxLayout>(&window)->addWidget(scroll);
    section = widgets::child_of<Section>(scroll->content(), bench.store(), ways);
    scroll->column()->addWidget(section);
    section->refresh();
    window.resize(760, 600);
    window.show();
    REQUIRE(QTest::qWaitForWindowActive(&window));
  }

  template <class Widget = QWidget>
  [[nodiscard]] Widget* there(const QString& name) const {
    // What was thrown away is found until its time comes.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    auto* found = window.findChild<Widget*>(name);
    INFO(name.toStdString());
    REQUIRE(found != nullptr);
    return found;
  }
  [[nodiscard]] bool is_there(const QString& name) const {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    return window.findChild<QWidget*>(name) != nullptr;
  }
  void press(const QString& button) const {
    auto* found = there<QAbstractButton>(button);
    REQUIRE(found->isEnabled());
    found->click();
    QCoreApplication::processEvents();
  }
  /// In place of what stands there.
  void type(const QString& field, const QString& text) const {
    auto* edit = there<QLineEdit>(field);
    edit->setFocus();
    edit->selectAll();
    text.isEmpty() ? QTest::keyClick(edit, Qt::Key_Delete) : QTest::keyClicks(edit, text);
  }
  void enter(const QString& field, const QString& text) const {
    type(field, text);
    QTest::keyClick(there<QLineEdit>(field), Qt::Key_Return);
  }
  [[nodiscard]] QString said(const QString& label) const { return there<QLabel>(label)->text(); }
  [[nodiscard]] QString row(const QString& name) const {
    return there<QAbstractButton>("row-" + name)->accessibleName();
  }
  [[nodiscard]] store::Registers& registers() { return bench.store().registers(); }
  /// Whatever is pressed is at least as high as a finger in a glove.
  void all_fit_gloves() const {
    QCoreApplication::processEvents();
    for (const auto* each : window.findChildren<QAbstractButton*>()) {
      if (each->isVisible()) {
        INFO(each->objectName().toStdString());
        CHECK(each->height() >= 48);
        CHECK_FALSE(each->accessibleName().isEmpty());
      }
    }
    for (const auto* each : window.findChildren<QLineEdit*>()) {
      if (each->isVisible()) {
        CHECK(each->height() >= 48);
        CHECK_FALSE(each->accessibleName().isEmpty());
      }
    }
  }
};

}  // namespace shimwright::test
