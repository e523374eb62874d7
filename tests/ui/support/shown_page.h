#pragma once

#include <QApplication>
#include <QPushButton>
#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/child.h"
#include "ui_bench.h"

namespace shimwright::test {

/// A step's page in a window of the job screen's middle, with what it sends out.
struct ShownPage {
  template <class Make>
  ShownPage(UiBench& ui, const std::string& step_id, Make make) : bench(ui.workbench()) {
    window.resize(810, 600);
    const sheet::Step* step = bench.state().sheets.job->find(step_id);
    REQUIRE(step != nullptr);
    page = make(bench, *step, &window);
    widgets::lay<QVBoxLayout>(&window)->addWidget(page);
    QObject::connect(&bench, &bench::Workbench::changed, page, [this] { page->refresh(); });
    QObject::connect(page, &bench::StepPage::refused, page,
                     [this](const Error& error) { refusals.push_back(error.code); });
    QObject::connect(page, &bench::StepPage::asks, page, [this](const bench::Ask& ask) { asks.push_back(ask); });
    QObject::connect(page, &bench::StepPage::leaves, page, [this] { ++left; });
    window.show();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    page->refresh();
    page->take_focus();
  }

  /// Types into what has the focus, and Enter.
  static void enter(const QString& text) {
    QWidget* at = QApplication::focusWidget();
    REQUIRE(at != nullptr);
    QTest::keyClicks(at, text);
    QTest::keyClick(at, Qt::Key_Return);
  }
  [[nodiscard]] static QString focus() {
    return QApplication::focusWidget() == nullptr ? QString() : QApplication::focusWidget()->objectName();
  }
  void press(const QString& name) {
    auto* button = page->findChild<QPushButton*>(QStringLiteral("button-") + name);
    REQUIRE(button != nullptr);
    QTest::mouseClick(button, Qt::LeftButton);
  }
  [[nodiscard]] bool offers(const std::string& name) {
    const auto actions = page->actions();
    return std::any_of(actions.begin(), actions.end(), [&](const auto& each) { return each.name == name; });
  }
  void act(const std::string& name) {
    for (const bench::FootAction& each : page->actions()) {
      if (each.name == name) {
        each.act();
        return;
      }
    }
    FAIL("no action " << name);
  }
  [[nodiscard]] std::string main_action() {
    for (const bench::FootAction& each : page->actions()) {
      if (each.main) {
        return each.name;
      }
    }
    return {};
  }
  template <class Payload>
  [[nodiscard]] int count(const std::string& step_id) const {
    const auto entries = bench.state().live(step_id);
    return static_cast<int>(std::count_if(entries.begin(), entries.end(), [](const job::Entry* each) {
      return std::holds_alternative<Payload>(each->body);
    }));
  }

  bench::Workbench& bench;
  QWidget window;
  bench::StepPage* page = nullptr;
  std::vector<std::string> refusals;
  std::vector<bench::Ask> asks;
  int left = 0;
};

}  // namespace shimwright::test
