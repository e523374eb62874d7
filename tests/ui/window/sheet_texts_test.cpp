// What a sheet says is read in the language of the window: at no step and in no list is there an English text of a
// shipped sheet that has another one in that language.
#include <QAbstractButton>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSet>
#include <catch2/catch.hpp>
#include <map>
#include <set>
#include <vector>

#include "bench_window.h"
#include "cut_texts.h"
#include "shimwright/job/codec.h"
#include "shimwright/shell/languages.h"

using namespace shimwright;

namespace {

QByteArray data_file(const QString& name) {
  QFile file(QStringLiteral(SHIMWRIGHT_DATA_DIR "/") + name);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

/// English texts below a value that are others in the language.
void add_english(const QJsonValue& value, const QString& language, QSet<QString>& english) {
  const QJsonArray list = value.toArray();
  for (int at = 0; at < list.size(); ++at) {
    add_english(list.at(at), language, english);
  }
  const QJsonObject object = value.toObject();
  if (object.contains("en")) {
    if (object.value("en") != object.value(language)) {
      english.insert(object.value("en").toString());
    }
    return;
  }
  for (const QString& key : object.keys()) {
    add_english(object.value(key), language, english);
  }
}

/// What no window in that language shows; but what the script types is shown as it was typed.
QSet<QString> english_texts(const QString& language, const std::string& script) {
  QSet<QString> english;
  for (const char* sheet : {"sheets/dry-pack-renewal.json", "specs/D6-2.json", "specs/D7-3.json"}) {
    add_english(QJsonDocument::fromJson(data_file(QLatin1String(sheet))).object(), language, english);
  }
  REQUIRE(english.size() > 300);
  const QString typed = QString::fromUtf8(data_file(QStringLiteral("demo/%1.json").arg(script.c_str())));
  english.removeIf([&](const QString& text) { return typed.contains(QStringLiteral("\"%1\"").arg(text)); });
  return english;
}

QStringList texts_shown_by(const QWidget& widget) {
  QStringList texts{widget.accessibleName(), widget.accessibleDescription()};
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
    texts << label->text();
  } else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
    texts << button->text();
  } else if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
    texts << line->placeholderText();
  }
  return texts;
}

QStringList all_shown(const QWidget& window) {
  QStringList shown;
  for (const auto* each : window.findChildren<QWidget*>()) {
    shown += each->isVisible() ? texts_shown_by(*each) : QStringList();
  }
  return shown;
}

/// Short ones, as “none”, only where they are all that is said: a longer word may hold them.
bool says(const QString& shown, const QString& text) {
  constexpr qsizetype long_enough = 12;
  return shown == text || (text.size() >= long_enough && shown.contains(text));
}

class EnglishLeft {
 public:
  EnglishLeft(const QString& language, const std::string& script) : english_(english_texts(language, script)) {}

  void look_at(const QWidget& window, const std::string& where) {
    QCoreApplication::processEvents();  // what was made just now is shown then
    for (const QString& shown : all_shown(window)) {
      for (const QString& text : english_) {
        if (says(shown, text) && !found_.contains(text)) {
          found_.insert(text);
          FAIL_CHECK(where << ": " << text.toStdString());
        }
      }
    }
  }

 private:
  QSet<QString> english_;
  QSet<QString> found_;
};

/// Ids and what is salted differ from one store to the next. A reason is in the language of who gives it.
std::string without_ids(const std::string& bytes) {
  static const QRegularExpression drawn(
      R"([0-9a-f]{64}|[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}|"reason":"[^"]*")");
  return QString::fromStdString(bytes).replace(drawn, "drawn").toStdString();
}

void look_at_every_step(const QString& language, const std::string& script) {
  INFO(language.toStdString() << ", " << script);
  const shell::Spoken spoken(language);
  test::BenchWindow bench(script);
  bench.rig().go_to("sign-technician");
  REQUIRE(bench.window().go(shell::PageName::job, bench.rig().workbench().job_id()));
  auto* page = bench.window().findChild<bench::JobPage*>();
  REQUIRE(page != nullptr);
  EnglishLeft english(language, script);
  const job::JobState& state = bench.rig().workbench().state();
  for (const sheet::Step* step : state.sheets.job->steps()) {
    if (std::holds_alternative<job::NotAsked>(state.step(step->id))) {
      continue;
    }
    page->show_step(step->id);
    QCoreApplication::processEvents();  // what was laid anew has its size in the next turn
    QCoreApplication::processEvents();
    english.look_at(bench.window(), step->id);
    for (const QString& cut : test::cut_texts(bench.window())) {
      FAIL_CHECK(step->id << ": " << cut.toStdString());
    }
    const QString title = QString::fromStdString(step->title.by_language.at(language.toStdString()));
    CHECK(all_shown(bench.window()).contains(title));
    for (const sheet::Caution& each : step->cautions) {
      const QString hazard = QString::fromStdString(each.hazard.by_language.at(language.toStdString()));
      const QStringList shown = all_shown(bench.window()).filter(hazard);
      CHECK_FALSE(shown.isEmpty());
    }
  }
}

}  // namespace

TEST_CASE("a whole job in German and in French shows no text of its sheets in English, and its entries are the same") {
  const std::string script = "02-bearing-not-home";
  std::vector<std::vector<std::string>> said;
  for (const char* language : {"de", "fr"}) {
    INFO(language);
    const shell::Spoken spoken(QString::fromLatin1(language));
    test::BenchWindow bench(script);
    EnglishLeft english(QString::fromLatin1(language), script);
    test::KeyTechnician technician(bench.window(), bench.rig().workbench(), bench.hands());
    bench.do_whole_job(technician, script, [&] {
      // The record itself stays in English.
      if (bench.window().page() != shell::PageName::record) {
        english.look_at(bench.window(), "on the way");
      }
    });
    CHECK(bench.rig().workbench().state().opened->language == "en");
    said.emplace_back();
    for (const job::Entry& each : bench.rig().workbench().state().entries) {
      said.back().push_back(without_ids(job::encode(each.body).bytes));
    }
  }
  REQUIRE(said[0].size() == said[1].size());
  for (std::size_t at = 0; at < said[0].size(); ++at) {
    CHECK(said[0][at] == said[1][at]);
  }
}

TEST_CASE("every step by gauge and by depth is shown whole in German and in French, with its cautions") {
  for (const char* language : {"de", "fr"}) {
    for (const char* script : {"02-bearing-not-home", "03-sum-on-the-border"}) {
      look_at_every_step(QString::fromLatin1(language), script);
    }
  }
}

TEST_CASE("the sheets of the workshop are shown in German and in French") {
  for (const char* language : {"de", "fr"}) {
    INFO(language);
    const shell::Spoken spoken(QString::fromLatin1(language));
    const std::string script = "02-bearing-not-home";
    test::BenchWindow bench(script);
    EnglishLeft english(QString::fromLatin1(language), script);
    REQUIRE(bench.window().go(shell::PageName::workshop));
    for (const auto& [section, sheet] : {std::pair{"section-job-sheets", "button-open-dry-pack-renewal"},
                                         std::pair{"section-spec-sheets", "button-open-D7"}}) {
      for (const char* button : {section, sheet}) {
        auto* pressed = bench.window().findChild<QAbstractButton*>(QLatin1String(button));
        INFO(button);
        REQUIRE(pressed != nullptr);
        pressed->click();
        english.look_at(bench.window(), button);
      }
    }
    REQUIRE(bench.window().go(shell::PageName::new_job));
    english.look_at(bench.window(), "new job");
  }
}

TEST_CASE("a refusal names its step in the language of the window") {
  const shell::Spoken german(QStringLiteral("de"));
  test::BenchWindow bench("02-bearing-not-home");
  bench.rig().go_to("diagnosis");
  REQUIRE(bench.window().go(shell::PageName::job, bench.rig().workbench().job_id()));
  auto* page = bench.window().findChild<bench::JobPage*>();
  REQUIRE(page != nullptr);
  page->show_step("battery-off");
  auto* done = bench.window().findChild<QAbstractButton*>("button-take");
  REQUIRE(done != nullptr);
  done->click();
  EnglishLeft(QStringLiteral("de"), "02-bearing-not-home").look_at(bench.window(), "refusal");
  const QString comes_first = QStringLiteral("Paket, Steller oder Steuerung: woran liegt es?“");
  CHECK_FALSE(all_shown(bench.window()).filter(comes_first).isEmpty());
}
