// What the window says comes from its language: a language that marks every sentence leaves none unmarked.
#include <QAbstractButton>
#include <QCoreApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSet>
#include <QTranslator>
#include <catch2/catch.hpp>

#include "bench_window.h"

using namespace shimwright;

namespace {

constexpr QChar mark(0xA4);

/// Says every sentence as it is written, between two marks.
class Marking : public QTranslator {
 public:
  Marking() { QCoreApplication::installTranslator(this); }
  [[nodiscard]] bool isEmpty() const override { return false; }
  [[nodiscard]] QString translate(const char* /*context*/, const char* text, const char* /*note*/,
                                  int /*count*/) const override {
    return mark + QString::fromUtf8(text) + mark;
  }
};

/// What is shown as somebody wrote it: sheets, the workshop and answers of the script, and the name of the program.
QString written(const std::string& script) {
  QString all = QStringLiteral("Shimwright");
  const QString data = QStringLiteral(SHIMWRIGHT_DATA_DIR);
  for (const QString& name : {QStringLiteral("/sheets/dry-pack-renewal.json"), QStringLiteral("/specs/D7-1.json"),
                              QStringLiteral("/demo/") + QString::fromStdString(script) + QStringLiteral(".json")}) {
    QFile file(data + name);
    REQUIRE(file.open(QIODevice::ReadOnly));
    all += QString::fromUtf8(file.readAll());
  }
  return all;
}

/// A title stands alone or with its unit, `Distance, km`.
bool stands_in(const QString& written, const QString& text) {
  const qsizetype unit = text.lastIndexOf(QLatin1String(", "));
  return written.contains(text) || (unit > 0 && written.contains(text.left(unit)));
}

QStringList texts_of(const QWidget& widget) {
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

}  // namespace

TEST_CASE("no sentence on the way through a whole job stays in English where the language has another") {
  const Marking language;
  const std::string script = "02-bearing-not-home";
  test::BenchWindow bench(script);
  const QString data = written(script);
  QSet<QString> unmarked;
  test::KeyTechnician technician(bench.window(), bench.rig().workbench(), bench.hands());
  bench.do_whole_job(technician, script, [&] {
    for (const QWidget* widget : bench.window().findChildren<QWidget*>()) {
      for (const QString& text : widget->isVisible() ? texts_of(*widget) : QStringList()) {
        const bool words = text.contains(QRegularExpression(QStringLiteral("[[:alpha:]]{3}")));
        if (words && !text.contains(mark) && !stands_in(data, text)) {
          unmarked.insert(text);
        }
      }
    }
  });
  for (const QString& each : unmarked) {
    FAIL_CHECK(each.toStdString());
  }
}
