#include "ask_box.h"

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QTest>
#include <catch2/catch.hpp>

#include "shimwright/widgets/child.h"

using namespace shimwright;

namespace {

struct Asked {
  QWidget window;
  bench::AskBox* box = widgets::child_of<bench::AskBox>(&window);

  Asked() {
    auto* column = widgets::lay<QVBoxLayout>(&window);
    column->addWidget(box);
    window.resize(900, 500);
    window.show();
    REQUIRE(QTest::qWaitForWindowActive(&window));
  }
  template <class Widget>
  Widget* part(const char* name) {
    auto* found = window.findChild<Widget*>(name);
    REQUIRE(found != nullptr);
    return found;
  }
};

}  // namespace

TEST_CASE("a reason is asked in place: Enter leads to the button, and only that answers") {
  Asked asked;
  std::string answer;
  asked.box->ask({"Why?", "Go on", true, [&](const std::string& text) {
                    answer = text;
                    return true;
                  }});
  auto* field = asked.part<QLineEdit>("field-ask");
  CHECK(field->hasFocus());
  QTest::keyClicks(field, " worn spline ");
  QTest::keyClick(field, Qt::Key_Return);
  CHECK(answer.empty());
  auto* yes = asked.part<widgets::Button>("button-ask-yes");
  CHECK(yes->hasFocus());
  QTest::keyClick(yes, Qt::Key_Return);
  CHECK(answer == "worn spline");
  CHECK_FALSE(asked.box->asking());
}

TEST_CASE("a question whose answer is refused stands with what was typed, and the same button answers again") {
  Asked asked;
  bool accepts = false;
  asked.box->ask({"Why?", "Go on", true, [&](const std::string&) { return accepts; }});
  auto* field = asked.part<QLineEdit>("field-ask");
  QTest::keyClicks(field, "worn spline");
  QTest::keyClick(asked.part<widgets::Button>("button-ask-yes"), Qt::Key_Return);
  CHECK(asked.box->asking());
  CHECK(field->text() == "worn spline");
  accepts = true;
  QTest::keyClick(asked.part<widgets::Button>("button-ask-yes"), Qt::Key_Return);
  CHECK_FALSE(asked.box->asking());
}

TEST_CASE("no answer without words, and Escape leaves") {
  Asked asked;
  bool answered = false;
  asked.box->ask({"Why?", "Go on", true, [&](const std::string&) {
                    answered = true;
                    return true;
                  }});
  QTest::mouseClick(asked.part<widgets::Button>("button-ask-yes"), Qt::LeftButton);
  CHECK_FALSE(answered);
  CHECK(asked.box->asking());
  QTest::keyClick(asked.part<QLineEdit>("field-ask"), Qt::Key_Escape);
  CHECK_FALSE(asked.box->asking());
  CHECK_FALSE(answered);
}

TEST_CASE("parking asks what for and until when, and gives the parts to order") {
  Asked asked;
  std::string waits;
  std::string until;
  asked.box->ask_parking({"1 × pack ring, number X-1"}, [&](const std::string& waits_for, const std::string& due) {
    waits = waits_for;
    until = due;
  });
  QTest::keyClicks(asked.part<QLineEdit>("field-waits-for"), "lever set");
  QTest::keyClick(asked.part<QLineEdit>("field-waits-for"), Qt::Key_Return);
  QTest::keyClicks(asked.part<QLineEdit>("field-due"), "2026-12-01");
  QTest::mouseClick(asked.part<widgets::Button>("button-copy-parts"), Qt::LeftButton);
  CHECK(QGuiApplication::clipboard()->text().contains("X-1"));
  QTest::mouseClick(asked.part<widgets::Button>("button-ask-yes"), Qt::LeftButton);
  CHECK(waits == "lever set");
  CHECK(until == "2026-12-01");
}

TEST_CASE("one of several is picked by key or click, and a second question replaces the first") {
  Asked asked;
  std::string picked;
  asked.box->ask_pick("Who?", {{"MK", "Mara", [&] { picked = "MK"; }}, {"RT", "Rolf", [&] { picked = "RT"; }}});
  CHECK(asked.part<widgets::Button>("button-pick-MK")->hasFocus());
  QTest::mouseClick(asked.part<widgets::Button>("button-pick-RT"), Qt::LeftButton);
  CHECK(picked == "RT");
  CHECK_FALSE(asked.box->asking());
}

TEST_CASE("the button that answers names the main key, which answers too, but never picks one of several") {
  Asked asked;
  int changes = 0;
  QObject::connect(asked.box, &bench::AskBox::asking_changed, asked.box, [&] { ++changes; });
  std::string answer;
  asked.box->ask({"Why?", "Go on", true, [&](const std::string& text) {
                    answer = text;
                    return true;
                  }});
  CHECK(changes == 1);
  CHECK(asked.part<widgets::Button>("button-ask-yes")->accessibleDescription() == "Ctrl Enter");
  QTest::keyClicks(asked.part<QLineEdit>("field-ask"), "worn spline");
  asked.box->press_yes();
  CHECK(answer == "worn spline");
  CHECK_FALSE(asked.box->asking());
  CHECK(changes == 2);
  bool picked = false;
  asked.box->ask_pick("Who?", {{"MK", "Mara", [&] { picked = true; }}});
  asked.box->press_yes();
  CHECK_FALSE(picked);
  CHECK(asked.box->asking());
}

TEST_CASE("what can be picked is of one width, whatever it says") {
  Asked asked;
  asked.box->ask_pick("More", {{"a", "A", [] {}},
                               {"b", "A long one that says more than all others", [] {}},
                               {"c", "C", [] {}},
                               {"d", "D", [] {}},
                               {"e", "E", [] {}},
                               {"f", "F", [] {}}});
  QCoreApplication::processEvents();
  const int width = asked.part<widgets::Button>("button-pick-a")->width();
  for (const char* name : {"button-pick-b", "button-pick-c", "button-pick-f"}) {
    CHECK(std::abs(asked.part<widgets::Button>(name)->width() - width) <= 1);
  }
  asked.box->ask_pick("Nothing to pick", {});
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  CHECK(asked.part<widgets::Button>("button-ask-no")->accessibleName() == "Close");
}
