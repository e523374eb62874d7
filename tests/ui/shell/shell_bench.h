#pragma once

#include <QTest>

#include <memory>
#include <utility>
#include <vector>

#include <QLineEdit>
#include <QSettings>

#include "shimwright/bench/surroundings.h"
#include "shimwright/shell/equipment.h"
#include "shimwright/shell/settings.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "ui_bench.h"

/// What tests of the shell stand on: settings in a file, places in a folder, and pages that remember what came.
namespace shimwright::test {

/// A page with one field: `x` in it is refused when the page is left.
inline shell::PluggedPage typed_page(const shell::PageHouse& house) {
  auto* page = widgets::child_of<QWidget>(house.parent);
  page->setObjectName(QStringLiteral("typed-page"));
  auto* row = widgets::lay<QVBoxLayout>(page);
  auto* field = widgets::child_of<QLineEdit>(page);
  field->setObjectName(QStringLiteral("typed"));
  row->addWidget(field);
  auto* past = widgets::child_of<widgets::Button>(page, QStringLiteral("search"));
  past->setObjectName(QStringLiteral("button-search"));
  QObject::connect(past, &QPushButton::clicked, page, [links = house.links] { links.search(QStringLiteral("417")); });
  row->addWidget(past);
  shell::PluggedPage plugged;
  plugged.widget = page;
  plugged.may_leave = [field] { return field->text() != QLatin1String("x"); };
  plugged.backup_done = [page](const shell::LastBackup& backup) {
    page->setProperty("backup", static_cast<qlonglong>(backup.at_ms));
  };
  return plugged;
}

/// A page that keeps what it came about.
inline shell::PluggedPage plain_page(const shell::PageHouse& house) {
  auto* page = widgets::child_of<QWidget>(house.parent);
  page->setObjectName(QStringLiteral("plain-page"));
  shell::PluggedPage plugged;
  plugged.widget = page;
  plugged.has_unsent = [page] { return page->property("unsent").toBool(); };
  plugged.come = [page](const std::string& about) { page->setProperty("about", QString::fromStdString(about)); };
  return plugged;
}

inline shell::PluggedPage job_page(const shell::PageHouse& house) {
  shell::PluggedPage plugged;
  plugged.widget = widgets::child_of<QWidget>(house.parent);
  plugged.heading = [] {
    return shell::Heading{QStringLiteral("Job 2041"), QStringLiteral("VIN TESTVN009TA030417"),
                          QStringLiteral("VIN ends 30417"), QStringLiteral("D7, issue 2"), true};
  };
  return plugged;
}

inline std::unique_ptr<QSettings> settings_file(const QString& path) {
  return std::make_unique<QSettings>(path, QSettings::IniFormat);
}

inline shell::Equipment plain_equipment(const QString& folder) {
  using shell::PageName;
  shell::Equipment equipment;
  equipment.clock = [] { return job::Moment{1795770000000, 60, false}; };
  equipment.places = {(folder + QStringLiteral("/own/workshop.shimwright")).toStdString(),
                      (folder + QStringLiteral("/demo/workshop.shimwright")).toStdString()};
  equipment.choose_folder = [folder](QWidget*, const QString&) { return folder + QStringLiteral("/chosen"); };
  equipment.choose_photo = [](QWidget*, const QString&) { return QString(); };
  equipment.after = bench::real_surroundings().after;
  equipment.dress = [](widgets::Scheme) {};
  equipment.speak = [](const QString&) {};
  equipment.sound = [] {};
  equipment.pages = {{PageName::home, &typed_page},   {PageName::new_job, &plain_page},
                     {PageName::job, &job_page},      {PageName::past_jobs, &plain_page},
                     {PageName::record, &plain_page}, {PageName::workshop, &plain_page}};
  return equipment;
}

template <class Widget = QWidget>
Widget* named(const QWidget& window, const char* name) {
  return window.findChild<Widget*>(QLatin1String(name));
}

inline void press(const QWidget& window, const char* button) {
  auto* found = named<QPushButton>(window, button);
  REQUIRE(found != nullptr);
  REQUIRE(found->isVisibleTo(&window));
  found->click();
}

}  // namespace shimwright::test
