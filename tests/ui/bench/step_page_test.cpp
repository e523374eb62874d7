#include "shimwright/bench/step_page.h"

#include <QLocale>
#include <catch2/catch.hpp>

#include "ui_bench.h"

using namespace shimwright;

namespace {

/// A page of nothing but what every page has.
class BarePage : public bench::StepPage {
 public:
  using bench::StepPage::said;
  using bench::StepPage::send;
  using bench::StepPage::StepPage;

  void refresh() override {}
  void take_focus() override {}
};

/// The bare page of the sheet's first step, with what it sends out.
struct BareStep {
  BareStep() {
    ui.go_to(step);
    const sheet::Step* found = ui.workbench().state().sheets.job->find(step);
    REQUIRE(found != nullptr);
    page = std::make_unique<BarePage>(ui.workbench(), *found, nullptr);
    QObject::connect(page.get(), &bench::StepPage::refused, page.get(),
                     [this](const Error& error) { refusals.push_back(error.code); });
    QObject::connect(page.get(), &bench::StepPage::leaves, page.get(), [this] { ++left; });
  }

  const std::string step = "complaint-read-back";
  test::UiBench ui;
  std::unique_ptr<BarePage> page;
  std::vector<std::string> refusals;
  int left = 0;
};

}  // namespace

TEST_CASE("a page of a step goes on once its step is passed") {
  BareStep bare;
  CHECK(bare.page->send(job::CheckStep{bare.step, true, ""}));
  CHECK(bare.left == 1);
  CHECK(bare.refusals.empty());
}

TEST_CASE("a page of a step stays where the step is still open, or where it is told to") {
  BareStep bare;
  CHECK(bare.page->send(job::Note{std::nullopt, "a note"}));
  CHECK(bare.left == 0);
  CHECK(bare.page->send(job::CheckStep{bare.step, true, ""}, false));
  CHECK(bare.left == 0);
}

TEST_CASE("a refusal leaves a page of a step by its signal, and nothing is gone on from") {
  BareStep bare;
  CHECK_FALSE(bare.page->send(job::CheckStep{bare.step, false, ""}));
  CHECK(bare.refusals == std::vector<std::string>{"finding_missing"});
  CHECK(bare.left == 0);
}

TEST_CASE("a text of the sheet is said in the language of the window, else in English") {
  const BareStep bare;
  const sheet::Text text{{{"en", "Hub out"}, {"de", "Nabe heraus"}}};
  for (const auto& [locale, said] : {std::pair{"de_DE", "Nabe heraus"}, std::pair{"fr_FR", "Hub out"}}) {
    QLocale::setDefault(QLocale(QLatin1String(locale)));
    CHECK(bare.page->said(text) == said);
  }
  QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
  CHECK(bench::window_language() == "de");
  QLocale::setDefault(QLocale::c());
}
