// A unit the workshop never had: from an empty spec sheet to the first trial with the gauge, by keys alone.
#include <QComboBox>
#include <QLineEdit>
#include <catch2/catch.hpp>
#include <map>

#include "bench_window.h"
#include "shimwright/sheet/draft.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/sheet_checks.h"
#include "shimwright/store/sheet_drafts.h"
#include "shimwright/widgets/say.h"

using namespace shimwright;
using widgets::qt;

namespace {

/// What a person has on paper: the text of each field, by its name on the screen.
std::map<QString, std::string> values_on_paper() {
  QFile file(QStringLiteral(SHIMWRIGHT_DATA_DIR "/specs/D7-2.json"));
  REQUIRE(file.open(QIODevice::ReadOnly));
  std::map<QString, std::string> values;
  const sheet::SheetDraft paper{sheet::SheetKind::spec_sheet, file.readAll().toStdString()};
  for (const sheet::DraftSection& section : sheet::sections_of(paper)) {
    for (const sheet::DraftGroup& group : section.groups) {
      for (const sheet::DraftField& field : group.fields) {
        // What may be blank takes the source of the sheet.
        if (field.place.find("/source") == std::string::npos || field.place == "/source") {
          values[QStringLiteral("field-") + qt(field.place)] = field.text;
        }
      }
    }
  }
  values[QStringLiteral("field-/gearbox")] = "K9";
  values[QStringLiteral("field-/source")] = "K9 workshop manual, edition 3, May 2026, invented";
  return values;
}

class Newcomer {
 public:
  explicit Newcomer(test::BenchWindow& bench)
      : bench_(&bench), keys_(bench.window(), bench.rig().workbench(), bench.hands()), paper_(values_on_paper()) {}

  [[nodiscard]] test::KeyTechnician& keys() { return keys_; }

  void step_up(const std::string& initials) {
    if (bench_->rig().workbench().person().initials != initials) {
      keys_.call_persons();
      keys_.tab_and_press(qt("button-person-" + initials));
    }
  }

  /// Every field in sight that is blank and stands on the paper.
  void fill_part() {
    QStringList names;
    for (const QWidget* each : bench_->window().findChildren<QWidget*>()) {
      const auto* line = qobject_cast<const QLineEdit*>(each);
      const auto* pick = qobject_cast<const QComboBox*>(each);
      const bool blank = line != nullptr ? line->text().isEmpty() : pick != nullptr && pick->currentIndex() < 0;
      if (blank && each->isVisible() && paper_.count(each->objectName()) > 0) {
        names << each->objectName();
      }
    }
    for (const QString& name : names) {
      fill(name, paper_[name]);
    }
  }

  void lay_tray() {
    for (const auto& [name, text] : std::map<QString, std::string>{{"field-tray-from", "1,30"},
                                                                   {"field-tray-to", "2,15"},
                                                                   {"field-tray-step", "0,05"},
                                                                   {"field-tray-u", "0.003"}}) {
      keys_.fill(name, text);
    }
    keys_.tab_and_press("button-lay-sizes");
  }

 private:
  void fill(const QString& name, const std::string& text) {
    if (text.empty()) {
      return;
    }
    if (qobject_cast<const QComboBox*>(bench_->window().findChild<QWidget*>(name)) == nullptr) {
      keys_.fill(name, text);
    } else {
      keys_.tab_to(name);
      keys_.type(text.substr(0, 1));
    }
    keys_.key(Qt::Key_Return);
  }

  test::BenchWindow* bench_;
  test::KeyTechnician keys_;
  std::map<QString, std::string> paper_;
};

std::string checker_of(const bench::Workbench& bench) {
  for (const store::Person& each : bench.persons()) {
    if (each.id != bench.person().id) {
      return each.initials;
    }
  }
  return {};
}

void enter_sheet(Newcomer& newcomer) {
  test::KeyTechnician& keys = newcomer.keys();
  keys.key(Qt::Key_3, Qt::ControlModifier);
  keys.tab_and_press("button-new-sheet");
  constexpr int parts = 6;
  for (int part = 0; part < parts; ++part) {
    if (part == 1 || part == 2) {
      newcomer.lay_tray();
    }
    newcomer.fill_part();
    keys.tab_and_press("button-next-part");
  }
  keys.tab_and_press("button-make-issue");
}

}  // namespace

TEST_CASE("a new unit is brought in from an empty spec sheet to the first trial in the window by keys") {
  const test::InLocale in("de_DE");
  test::BenchWindow bench("02-bearing-not-home");
  Newcomer newcomer(bench);
  test::KeyTechnician& keys = newcomer.keys();
  cli::Script script = test::demo_script("02-bearing-not-home");
  const auto& opened = std::get<job::OpenJob>(script.commands.front().command);
  newcomer.step_up(script.commands[1].by);
  const std::string writer = bench.rig().workbench().person().initials;

  enter_sheet(newcomer);
  const auto issues = store::issues_of_spec_sheet(bench.rig().store(), "K9");
  const auto drafts = store::sheet_drafts(bench.rig().store(), sheet::SheetKind::spec_sheet);
  for (const store::KeptDraft& each : *drafts) {
    for (const Error& fault : sheet::faults_of(each.draft)) {
      FAIL_CHECK(fault.in_english());
    }
  }
  REQUIRE(issues->size() == 1);
  const std::string hash = issues->front().hash;

  keys.tab_and_press("button-check-sheet");
  CHECK_FALSE(*store::sheet_may_be_used(bench.rig().store(), hash));
  newcomer.step_up(checker_of(bench.rig().workbench()));
  keys.tab_and_press("button-check-sheet");
  REQUIRE(*store::sheet_may_be_used(bench.rig().store(), hash));

  newcomer.step_up(writer);
  keys.key(Qt::Key_1, Qt::ControlModifier);
  keys.tab_and_press("button-new-job");
  keys.fill("field-vehicle", opened.vehicle_typed);
  keys.fill("field-odometer", opened.odometer);
  keys.tab_to("field-gearbox");
  keys.type("K");
  keys.tab_and_press("button-open-job");
  REQUIRE(bench.window().page() == shell::PageName::job);
  REQUIRE(bench.rig().workbench().state().opened->spec_hash == hash);

  const auto first_trial = std::find_if(script.commands.begin(), script.commands.end(), [](const auto& each) {
    return std::holds_alternative<job::TryShim>(each.command);
  });
  REQUIRE(first_trial != script.commands.end());
  script.commands.erase(first_trial + 1, script.commands.end());
  test::do_script_by_keys(bench.rig(), keys, script,
                          {[&newcomer](const std::string& initials) { newcomer.step_up(initials); }, [] {}});
  const auto& entries = bench.rig().workbench().state().entries;
  CHECK(std::any_of(entries.begin(), entries.end(),
                    [](const job::Entry& each) { return std::holds_alternative<job::ShimTried>(each.body); }));
}
