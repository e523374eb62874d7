#include "shimwright/widgets/say.h"

#include <QCoreApplication>
#include <QTranslator>
#include <catch2/catch.hpp>

using namespace shimwright;

namespace {

/// Knows one sentence of the job and one word.
class FewWords : public QTranslator {
 public:
  FewWords() { QCoreApplication::installTranslator(this); }
  [[nodiscard]] bool isEmpty() const override { return false; }
  [[nodiscard]] QString translate(const char* context, const char* text, const char* /*note*/,
                                  int /*count*/) const override {
    const QString of = QLatin1String(context) + QLatin1String(": ") + QLatin1String(text);
    if (of == QLatin1String("job: {0} wants the {1}.")) {
      return QStringLiteral("Das {1} braucht {0}.");
    }
    return of == QLatin1String("word: large bearing") ? QStringLiteral("große Lager") : QString();
  }
};

}  // namespace

TEST_CASE("a sentence is said with its arguments") {
  CHECK(widgets::say(Message{"{0} of {1}", {"2", "3"}}) == "2 of 3");
  CHECK(widgets::say(Error{"code", "place", {"Do it again.", {}}}) == "Do it again.");
}

TEST_CASE(
    "a sentence and the words filled into it are said in the language of the window, what is no word of ours as it "
    "is") {
  const FewWords german;
  CHECK(widgets::say(Message{"{0} wants the {1}.", {"1.75", "large bearing"}}) ==
        QString::fromUtf8("Das große Lager braucht 1.75."));
  CHECK(widgets::say(Message{"{0} wants the {1}.", {"Ines Halm", "my words"}}) == "Das my words braucht Ines Halm.");
  CHECK(widgets::say(Message{"large bearing", {}}) == QString::fromUtf8("große Lager"));
}

TEST_CASE("text goes both ways unchanged") {
  const std::string text = "N·m, °C, −5";
  CHECK(widgets::plain(widgets::qt(text)) == text);
  CHECK(widgets::number_text("-0.12") == QString::fromUtf8("−0.12"));
}

TEST_CASE("a moment is read by the clock of this machine") {
  CHECK(widgets::day_and_time(1795421400000) == "23 Nov 2026, 13:55");
}
