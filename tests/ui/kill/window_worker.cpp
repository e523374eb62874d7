// window_worker FOLDER SCRIPT          works through a script's job by keys and prints a line for each entry once it
// shows window_worker FOLDER SCRIPT --again  opens the window on what is there, takes the job up and prints the step it
// stands at
#define CATCH_CONFIG_RUNNER
#include <QAbstractButton>
#include <QApplication>
#include <QRegularExpression>
#include <QStandardPaths>
#include <catch2/catch.hpp>
#include <cstdio>
#include <nlohmann/json.hpp>
#include <string>

#include "bench_window.h"

using namespace shimwright;

namespace {

std::string word(const char* name) {
  return qApp->property(name).toString().toStdString();
}

/// Prints what came to the job since the last line, as the window shows it.
class Teller {
 public:
  void tell(const bench::Workbench& workbench) {
    nlohmann::json line{{"accepted", true}, {"entries", nlohmann::json::array()}};
    const auto& entries = workbench.state().entries;
    for (; told_ < entries.size(); ++told_) {
      line["entries"].push_back(entries[told_].seq);
    }
    if (!line["entries"].empty()) {
      std::printf("%s\n", line.dump().c_str());
      std::fflush(stdout);
    }
  }

 private:
  std::size_t told_ = 0;
};

}  // namespace

TEST_CASE("work until killed", "[work]") {
  test::BenchWindow bench(word("script"), QString::fromStdString(word("folder")));
  Teller teller;
  QObject::connect(&bench.rig().workbench(), &bench::Workbench::changed, &bench.window(),
                   [&] { teller.tell(bench.rig().workbench()); });
  test::KeyTechnician technician(bench.window(), bench.rig().workbench(), bench.hands());
  bench.do_whole_job(technician, word("script"));
}

TEST_CASE("open again", "[again]") {
  test::BenchWindow bench(word("script"), QString::fromStdString(word("folder")));
  const auto buttons = bench.window().findChildren<QAbstractButton*>(QRegularExpression("button-take-up-.*"));
  REQUIRE(buttons.size() == 1);
  buttons.front()->click();
  const auto* page = bench.window().findChild<bench::JobPage*>();
  REQUIRE(page != nullptr);
  REQUIRE(page->isVisible());
  std::printf("%s\n", nlohmann::json{{"step", page->step_id()}}.dump().c_str());
}

int main(int count, char** raw_words) {
  if (count < 3) {
    std::fprintf(stderr, "window_worker FOLDER SCRIPT [--again]\n");
    return 2;
  }
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  QStandardPaths::setTestModeEnabled(true);
  QApplication application(count, raw_words);
  application.setProperty("folder", QString::fromLocal8Bit(raw_words[1]));
  application.setProperty("script", QString::fromLocal8Bit(raw_words[2]));
  Catch::Session session;
  session.configData().testsOrTags.push_back(count > 3 ? "[again]" : "[work]");
  return session.run();
}
