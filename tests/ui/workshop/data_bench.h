#pragma once

#include <QAbstractButton>
#include <QTest>
#include <catch2/catch.hpp>

#include "data_section.h"
#include "ui_bench.h"
#include "workshop_texts.h"

namespace shimwright::test {

/// The page of the data over a store of its own; what a person would choose is set beforehand.
struct DataBench {
  UiBench bench;
  QString folder;       ///< chosen for backups
  QString kept_folder;  ///< where backups go, as the window keeps it
  QString backup;       ///< chosen to look at
  QString job_file;     ///< chosen to take in
  QString export_folder;
  workshop::DataSection section{bench.store(), ways()};

  DataBench() {
    section.resize(900, 1600);
    section.show();
  }
  [[nodiscard]] workshop::WorkshopWays ways() {
    workshop::WorkshopWays made;
    made.choose_folder = [this] { return folder; };
    made.clock = [] { return job::Moment{1795421400000, 60, false}; };
    made.data.backup_folder = [this] { return kept_folder; };
    made.data.use_backup_folder = [this](const QString& chosen) { kept_folder = chosen; };
    made.data.choose_backup = [this](const QString&) { return backup; };
    made.data.choose_job_file = [this] { return job_file; };
    made.data.choose_export_folder = [this] { return export_folder; };
    made.data.by = [] { return store::By{{}, {1795421400000, 60, false}}; };
    return made;
  }
  [[nodiscard]] QAbstractButton* button(const char* name) const {
    auto* found = section.findChild<QAbstractButton*>(QLatin1String(name));
    REQUIRE(found != nullptr);
    return found;
  }
  [[nodiscard]] QString result(const char* card) const {
    return section.findChild<QLabel*>(QLatin1String(card) + QStringLiteral("-result"))->text();
  }
  /// Presses and waits until the button may be pressed again.
  void press(const char* name) const {
    QAbstractButton* pressed = button(name);
    QTest::mouseClick(pressed, Qt::LeftButton);
    REQUIRE(QTest::qWaitFor([&] { return pressed->isEnabled(); }, 60000));
  }
};

}  // namespace shimwright::test
