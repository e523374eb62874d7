#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QCoreApplication>
#include <QLineEdit>
#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/child.h"
#include "ui_bench.h"

namespace shimwright::test {

/// One step's page in a window of its own, as the job screen would hold it.
class PageDriver {
 public:
  explicit PageDriver(const std::string& step) {
    bench_.go_to(step);
    for (const store::Person& person : bench_.workbench().persons()) {
      if (person.initials == "MK") {
        bench_.workbench().set_person(person);
      }
    }
    open(step);
  }

  /// Goes to another step's page.
  void open(const std::string& step) {
    const sheet::Step* found = bench_.workbench().state().sheets.job->find(step);
    REQUIRE(found != nullptr);
    window_ = std::make_unique<QWidget>();
    window_->resize(858, 560);
    page_ = bench::make_step_page(bench_.workbench(), *found, window_.get());
    REQUIRE(page_ != nullptr);
    widgets::lay<QVBoxLayout>(window_.get())->addWidget(page_);
    step_ = step;
    QObject::connect(page_, &bench::StepPage::leaves, page_, [this] { ++left; });
    QObject::connect(page_, &bench::StepPage::refused, page_,
                     [this](const Error& error) { refusals.push_back(error.code); });
    QObject::connect(&bench_.workbench(), &bench::Workbench::changed, page_, [this] { page_->refresh(); });
    window_->show();
    REQUIRE(QTest::qWaitForWindowActive(window_.get()));
    page_->take_focus();
  }

  [[nodiscard]] bench::StepPage& page() { return *page_; }
  [[nodiscard]] bench::Workbench& workbench() { return bench_.workbench(); }
  [[nodiscard]] UiBench& bench() { return bench_; }
  [[nodiscard]] std::string state() { return std::string(job::name_of(workbench().state().step(step_))); }

  template <class Widget = QLineEdit>
  [[nodiscard]] Widget* part(const char* name) {
    auto* found = page_->findChild<Widget*>(QLatin1String(name));
    REQUIRE(found != nullptr);
    return found;
  }
  void type(const char* field, const char* text) { QTest::keyClicks(part(field), QLatin1String(text)); }
  void enter(const char* field) { QTest::keyClick(part(field), Qt::Key_Return); }
  void press(const char* button) { QTest::mouseClick(part<QAbstractButton>(button), Qt::LeftButton); }

  /// The main action of the foot; its text.
  [[nodiscard]] std::string main_text() {
    for (const bench::FootAction& action : page_->actions()) {
      if (action.main) {
        return action.text.toStdString();
      }
    }
    return {};
  }
  void take() {
    for (const bench::FootAction& action : page_->actions()) {
      if (action.name == "take" && action.main) {
        const auto act = action.act;
        act();
        return;
      }
    }
    FAIL("no main action");
  }

  /// All that can be read on the page.
  [[nodiscard]] std::string shown() {
    QString all;
    for (const QLabel* label : page_->findChildren<QLabel*>()) {
      all += label->isVisible() ? label->text() + QLatin1Char('\n') : QString();
    }
    return all.replace(QChar(0x00A0), QLatin1Char(' ')).toStdString();
  }
  [[nodiscard]] bool shows(const std::string& words) { return shown().find(words) != std::string::npos; }

  template <class Payload>
  [[nodiscard]] const Payload* latest() {
    return job::latest<Payload>(workbench().state(), step_);
  }

  int left = 0;
  std::vector<std::string> refusals;

 private:
  UiBench bench_;
  std::unique_ptr<QWidget> window_;
  bench::StepPage* page_ = nullptr;
  std::string step_;
};

}  // namespace shimwright::test
