#include "shimwright/widgets/sheet_text.h"

#include <QLocale>
#include <catch2/catch.hpp>
#include <memory>
#include <utility>

#include "shimwright/sheet/job_sheet.h"
#include "shimwright/sheet/spec_sheet.h"

using namespace shimwright;

namespace {

sheet::Step step_called(const std::string& id, const std::string& english, const std::string& german) {
  sheet::Step step;
  step.id = id;
  step.title.by_language = {{"en", english}, {"de", german}};
  return step;
}

job::Sheets two_steps_and_a_part() {
  sheet::JobSheet job;
  job.stages.emplace_back();
  job.stages.front().steps = {step_called("hub", "Hub out", "Nabe heraus"), step_called("lid", "Lid off", "Deckel ab")};
  sheet::Channel channel;
  channel.title.by_language = {{"en", "Depth"}, {"de", "Tiefe"}};
  job.stages.front().steps.back().body = sheet::ReadStep{{channel}};
  sheet::SpecSheet spec;
  spec.parts.emplace_back();
  spec.parts.front().title.by_language = {{"en", "Ring"}, {"de", "Sicherungsring"}};
  return {std::make_shared<const sheet::JobSheet>(std::move(job)), "",
          std::make_shared<const sheet::SpecSheet>(std::move(spec)), ""};
}

/// The locale of a window in that language while this lives.
class WindowIn {
 public:
  explicit WindowIn(const char* locale) { QLocale::setDefault(QLocale(QLatin1String(locale))); }
  WindowIn(const WindowIn&) = delete;
  WindowIn& operator=(const WindowIn&) = delete;
  ~WindowIn() { QLocale::setDefault(QLocale::c()); }
};

}  // namespace

TEST_CASE("a text of a sheet is said in the language of the window, else in English") {
  const sheet::Text text{{{"en", "Hub out"}, {"de", "Nabe heraus"}}};
  for (const auto& [locale, said] : {std::pair{"de_DE", "Nabe heraus"}, std::pair{"fr_FR", "Hub out"}}) {
    const WindowIn language(locale);
    CHECK(widgets::say(text) == said);
  }
  CHECK(widgets::say(sheet::Text()).isEmpty());
}

TEST_CASE("a title that a sentence fills in is said in the language of the window") {
  const job::Sheets sheets = two_steps_and_a_part();
  const Message one{"“{0}” comes first.", {"Hub out"}};
  CHECK(widgets::say(one, sheets) == QString::fromUtf8("“Hub out” comes first."));
  const WindowIn german("de_DE");
  CHECK(widgets::say(one, sheets) == QString::fromUtf8("“Nabe heraus” comes first."));
  CHECK(widgets::say(Error{"code", "hub", one}, sheets) == QString::fromUtf8("“Nabe heraus” comes first."));
  CHECK(widgets::say(Message{"{0} missing", {"Ring"}}, sheets) == "Sicherungsring missing");
  CHECK(widgets::say(Message{"{0}: {1}", {"Lid off", "Depth"}}, sheets) == "Deckel ab: Tiefe");
}

TEST_CASE("a list of titles is said in the language of the window, what a person typed as it is") {
  const job::Sheets sheets = two_steps_and_a_part();
  const WindowIn german("de_DE");
  CHECK(widgets::say(Message{"Open: {0}.", {"“Hub out”, “Lid off”"}}, sheets) ==
        QString::fromUtf8("Open: “Nabe heraus”, “Deckel ab”."));
  CHECK(widgets::say(Message{"{0}", {"Hub out again, by MK"}}, sheets) == "Hub out again, by MK");
}
