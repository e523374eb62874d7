#pragma once

#include <functional>
#include <string>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/bench/workbench.h"
#include "shimwright/shell/settings.h"

/// How the window and its pages speak to each other. The window knows no page by its class.
namespace shimwright::shell {

struct Equipment;

enum class PageName { home, new_job, job, past_jobs, vehicle, record, workshop };

/// What the top bar says of the job in hand.
struct Heading {
  QString job;
  QString vehicle;
  QString vehicle_in_short;  ///< where there is no room for the whole
  QString spec;
  bool demonstration = false;
  friend bool operator==(const Heading&, const Heading&) = default;
};

/// What pages ask of the window.
struct PageLinks {
  std::function<void()> home;
  std::function<void(const std::string& vehicle_key)> new_job;  ///< blank: a vehicle not known yet
  std::function<void(const std::string& job_id)> take_up;
  std::function<void()> job_opened;  ///< the job in hand is a new one
  std::function<void(const QString& text)> search;
  std::function<void(const std::string& job_id)> open_record;
  std::function<void(const std::string& vehicle_key)> open_vehicle;
  std::function<void()> past_jobs;  ///< as they were left
  std::function<void(const QString& heading, const std::vector<std::string>& jobs)> show_jobs;
  std::function<void()> back;  ///< to the page before
  std::function<void()> heading_changed;
  std::function<void(const Error& error)> refused;
  std::function<void(const LastBackup& backup)> backed_up;  ///< a page made a backup, which was checked
  std::function<void(const QString& folder)> use_backup_folder;
  std::function<void(const QString& backup)> restore;  ///< a person looked at it and wants to go back to it
};

/// What a page is built from. All but the links outlive it.
struct PageHouse {
  bench::Workbench* bench = nullptr;
  const Settings* settings = nullptr;
  const Equipment* equipment = nullptr;
  PageLinks links;
  QWidget* parent = nullptr;
};

/// A page, and what the window may ask of it; what it does not answer is left empty.
struct PluggedPage {
  QWidget* widget = nullptr;
  /// It comes to the front: it reads what it shows anew. `about` is a job, a vehicle or a text to search for.
  std::function<void(const std::string& about)> come = {};
  /// Sends what is typed. False: it was refused and stays typed; the page stays.
  std::function<bool()> may_leave = {};
  /// Something is typed that would be gone with the window.
  std::function<bool()> has_unsent = {};
  std::function<Heading()> heading = {};
  std::function<void(const LastBackup& backup)> backup_done = {};
  /// Of the past jobs: shows these and no others.
  std::function<void(const QString& heading, const std::vector<std::string>& jobs)> show_jobs = {};
};

struct PageFactory {
  PageName name;
  PluggedPage (*make)(const PageHouse& house);
};

/// The pages of the program.
[[nodiscard]] const std::vector<PageFactory>& page_table();

}  // namespace shimwright::shell
