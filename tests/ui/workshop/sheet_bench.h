#pragma once

#include <QPointer>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTest>
#include <catch2/catch.hpp>
#include <memory>

#include "shimwright/sheet/draft.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/sheet_checks.h"
#include "shimwright/workshop/workshop_page.h"
#include "ui_bench.h"
#include "workshop_texts.h"

namespace shimwright::test {

/// What a field of a draft's form shows.
inline std::string field_text(const sheet::SheetDraft& draft, const std::string& place) {
  for (const sheet::DraftSection& section : sheet::sections_of(draft)) {
    for (const sheet::DraftGroup& group : section.groups) {
      for (const sheet::DraftField& field : group.fields) {
        if (field.place == place) {
          return field.text;
        }
      }
    }
  }
  return "no such field";
}

/// The workshop's page with the sheets, a person at the bench who can be another, and files in the hands of the test.
class SheetBench {
 public:
  SheetBench() {
    const auto persons = rig.store().registers().persons();
    REQUIRE(persons->size() >= 2);
    one = persons->at(0);
    other = persons->at(1);
    at_bench = one.id;
    open();
  }

  void open() {
    workshop::WorkshopWays ways{[] { return QString(); }, [this] { return moment(); }};
    ways.by = [this] { return store::By{at_bench, moment()}; };
    ways.choose_sheet = [this] { return file_to_open; };
    ways.save_sheet = [this](const QString& suggestion) {
      suggested = suggestion;
      return file_to_save;
    };
    page = std::make_unique<workshop::WorkshopPage>(rig.store(), std::move(ways));
    page->resize(1000, 700);
    page->show();
    REQUIRE(QTest::qWaitForWindowActive(page.get()));
  }

  [[nodiscard]] job::Moment moment() const { return {now_ms, 60, false}; }

  template <class Kind = QWidget>
  [[nodiscard]] Kind* found(const QString& name) {
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    for (Kind* each : page->findChildren<Kind*>(name)) {
      if (each->isVisible()) {
        return each;
      }
    }
    FAIL("nothing in sight is called " << name.toStdString());
    return nullptr;
  }
  void press(const QString& name) {
    auto* button = found<QAbstractButton>(name);
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
  }
  void type(const QString& place, const QString& text) {
    auto* edit = found<QLineEdit>(QStringLiteral("field-") + place);
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, text);
    QTest::keyClick(edit, Qt::Key_Return);
  }
  /// From now on the store refuses to keep a draft, as on a full disk, or takes it again.
  void refuse_drafts(bool refuse) {
    {
      auto base = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("refusing"));
      base.setDatabaseName(QString::fromStdString(rig.store().path()));
      REQUIRE(base.open());
      QSqlQuery query(base);
      REQUIRE(query.exec(refuse ? QStringLiteral("CREATE TRIGGER refusing BEFORE UPDATE ON sheet_draft BEGIN SELECT "
                                                 "RAISE(ABORT, 'refused'); END")
                                : QStringLiteral("DROP TRIGGER refusing")));
    }
    QSqlDatabase::removeDatabase(QStringLiteral("refusing"));
  }
  [[nodiscard]] QString shown() {
    QCoreApplication::processEvents();
    return shown_in(*page->findChild<QStackedWidget*>()->currentWidget());
  }

  UiBench rig;
  store::Person one;
  store::Person other;
  std::string at_bench;
  std::int64_t now_ms = 1795421400000;
  QString file_to_open;
  QString file_to_save;
  QString suggested;
  std::unique_ptr<workshop::WorkshopPage> page;
};

}  // namespace shimwright::test
