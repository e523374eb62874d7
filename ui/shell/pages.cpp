#include "pages.h"

#include <QLocale>
#include <utility>

#include "shimwright/bench/home_page.h"
#include "shimwright/bench/job_page.h"
#include "shimwright/bench/new_job_page.h"
#include "shimwright/bench/surroundings.h"
#include "shimwright/past/past_jobs.h"
#include "shimwright/past/record_view.h"
#include "shimwright/past/record_ways.h"
#include "shimwright/past/vehicle_page.h"
#include "shimwright/shell/equipment.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/workshop/workshop_page.h"

namespace shimwright::shell {

PluggedPage plug_home(const PageHouse& house) {
  auto* page = widgets::child_of<bench::HomePage>(house.parent, *house.bench);
  QObject::connect(page, &bench::HomePage::take_up, page, house.links.take_up);
  QObject::connect(page, &bench::HomePage::new_job, page, [links = house.links] { links.new_job({}); });
  QObject::connect(page, &bench::HomePage::search, page,
                   [links = house.links](const std::string& text) { links.search(widgets::qt(text)); });
  PluggedPage plugged;
  plugged.widget = page;
  plugged.come = [page](const std::string& /*about*/) {
    page->refresh();
    page->take_focus();
  };
  plugged.backup_done = [page, clock = house.equipment->clock](const LastBackup& backup) {
    page->set_last_backup(job::Moment{backup.at_ms, clock().offset_min, false});
  };
  return plugged;
}

PluggedPage plug_new_job(const PageHouse& house) {
  auto* page = widgets::child_of<bench::NewJobPage>(house.parent, *house.bench);
  QObject::connect(page, &bench::NewJobPage::opened, page, house.links.job_opened);
  QObject::connect(page, &bench::NewJobPage::cancelled, page, house.links.home);
  PluggedPage plugged;
  plugged.widget = page;
  plugged.come = [page, links = house.links](const std::string& vehicle_key) {
    // What was typed before the page was left is still there.
    if (page->has_unsent() && !vehicle_key.empty()) {
      const char* sentence = QT_TRANSLATE_NOOP(
          "shell", "Another new job is typed here and not opened yet: open it, or cancel it, then begin this one.");
      links.refused(Error{"unsent", "", Message{sentence, {}}});
    } else if (!page->has_unsent()) {
      vehicle_key.empty() ? page->begin() : page->begin_with(vehicle_key);
    }
    page->take_focus();
  };
  plugged.has_unsent = [page] { return page->has_unsent(); };
  return plugged;
}

PluggedPage plug_job(const PageHouse& house) {
  bench::Surroundings surroundings;
  surroundings.after = house.equipment->after;
  surroundings.pick_photo = [choose = house.equipment->choose_photo, settings = house.settings, parent = house.parent] {
    return choose(parent, settings->camera_folder());
  };
  surroundings.camera_folder = [settings = house.settings] { return settings->camera_folder(); };
  auto* page = widgets::child_of<bench::JobPage>(house.parent, *house.bench, std::move(surroundings));
  QObject::connect(page, &bench::JobPage::heading_changed, page, house.links.heading_changed);
  QObject::connect(page, &bench::JobPage::left, page, house.links.home);
  QObject::connect(page, &bench::JobPage::record_wanted, page, house.links.open_record);
  PluggedPage plugged;
  plugged.widget = page;
  plugged.come = [page](const std::string& /*job*/) { page->show_job(); };
  plugged.may_leave = [page] { return page->may_leave(); };
  plugged.heading = [page] {
    const bench::JobHeading heading = page->heading();
    return Heading{heading.job, heading.vehicle, heading.vehicle_in_short, heading.spec, heading.demonstration};
  };
  return plugged;
}

PluggedPage plug_past_jobs(const PageHouse& house) {
  auto* page = widgets::child_of<past::PastJobs>(house.parent, house.bench->store());
  QObject::connect(page, &past::PastJobs::open_record, page, house.links.open_record);
  QObject::connect(page, &past::PastJobs::take_up, page, house.links.take_up);
  QObject::connect(page, &past::PastJobs::new_job_for, page, house.links.new_job);
  QObject::connect(page, &past::PastJobs::open_vehicle, page, house.links.open_vehicle);
  PluggedPage plugged;
  plugged.widget = page;
  plugged.come = [page](const std::string& text) {
    if (text.empty()) {
      page->refresh();
    } else {
      page->search(widgets::qt(text));
    }
  };
  plugged.show_jobs = [page](const QString& heading, const std::vector<std::string>& jobs) {
    page->show_jobs(heading, jobs);
  };
  return plugged;
}

PluggedPage plug_vehicle(const PageHouse& house) {
  auto* page = widgets::child_of<past::VehiclePage>(house.parent, house.bench->store(), past::usual_vehicle_ways());
  QObject::connect(page, &past::VehiclePage::back, page, house.links.past_jobs);
  QObject::connect(page, &past::VehiclePage::open_record, page, house.links.open_record);
  QObject::connect(page, &past::VehiclePage::new_job_for, page, house.links.new_job);
  PluggedPage plugged;
  plugged.widget = page;
  plugged.come = [page](const std::string& vehicle_key) {
    vehicle_key.empty() ? page->refresh() : page->show_vehicle(vehicle_key);
    page->setFocus();
  };
  return plugged;
}

PluggedPage plug_record(const PageHouse& house) {
  past::RecordWays ways = past::usual_record_ways();
  ways.paper = house.settings->paper();
  ways.seal.by = [bench = house.bench] { return store::By{bench->person().id, bench->now()}; };
  ways.seal.rules = house.equipment->signing;
  ways.seal.folder = [settings = house.settings] { return widgets::plain(settings->backup_folder()); };
  auto* page = widgets::child_of<past::RecordView>(house.parent, house.bench->store(), std::move(ways));
  QObject::connect(page, &past::RecordView::back, page, house.links.back);
  PluggedPage plugged;
  plugged.widget = page;
  plugged.come = [page](const std::string& job) {
    if (!job.empty()) {
      page->show_job(job);
    }
  };
  return plugged;
}

PluggedPage plug_workshop(const PageHouse& house) {
  workshop::WorkshopWays ways = workshop::usual_workshop_ways();
  ways.clock = house.equipment->clock;
  ways.paper = house.settings->paper();
  ways.by = [bench = house.bench] { return bench->by(); };
  ways.choose_picture = [choose = house.equipment->choose_photo, parent = house.parent] {
    return choose(parent, QString());
  };
  ways.data.by = [bench = house.bench] { return store::By{bench->person().id, bench->now()}; };
  ways.data.backup_folder = [settings = house.settings] { return settings->backup_folder(); };
  ways.data.use_backup_folder = house.links.use_backup_folder;
  auto* page = widgets::child_of<workshop::WorkshopPage>(house.parent, house.bench->store(), std::move(ways));
  QObject::connect(page, &workshop::WorkshopPage::backed_up, page,
                   [links = house.links](qint64 at_ms, const QString& file) {
                     links.backed_up(LastBackup{at_ms, file});
                   });
  QObject::connect(page, &workshop::WorkshopPage::restore_wanted, page, house.links.restore);
  QObject::connect(page, &workshop::WorkshopPage::jobs_wanted, page, house.links.show_jobs);
  PluggedPage plugged;
  plugged.widget = page;
  QObject::connect(page, &workshop::WorkshopPage::people_changed, page, [bench = house.bench, links = house.links] {
    if (auto read = bench->read_persons(); !read) {
      links.refused(read.error());
    }
  });
  plugged.come = [page](const std::string& /*about*/) { page->refresh(); };
  plugged.has_unsent = [page] { return page->has_unsent(); };
  plugged.backup_done = [page](const LastBackup& backup) { page->set_last_backup(backup.at_ms, backup.file); };
  return plugged;
}

const std::vector<PageFactory>& page_table() {
  static const std::vector<PageFactory> table{
      {PageName::home, &plug_home},           {PageName::new_job, &plug_new_job}, {PageName::job, &plug_job},
      {PageName::past_jobs, &plug_past_jobs}, {PageName::vehicle, &plug_vehicle}, {PageName::record, &plug_record},
      {PageName::workshop, &plug_workshop}};
  return table;
}

}  // namespace shimwright::shell
