#pragma once

#include <map>
#include <optional>
#include <string>

#include <QStackedWidget>
#include <QWidget>

#include "shimwright/shell/daily_backup.h"
#include "shimwright/shell/equipment.h"
#include "shimwright/shell/notices.h"
#include "shimwright/shell/person_row.h"
#include "shimwright/shell/photo_watch.h"
#include "shimwright/shell/settings_page.h"
#include "shimwright/shell/tone.h"
#include "shimwright/shell/top_bar.h"

namespace shimwright::shell {

/// The window over an open store: the top bar, and below it one page at a time. A page is left only when what is typed
/// on it is kept.
class MainWindow : public QWidget {
  Q_OBJECT

 public:
  /// All three must outlive it.
  MainWindow(bench::Workbench& bench, Settings& settings, const Equipment& equipment);

  /// Looks for a backup that is due; told in the background.
  /// What nobody waits for: the daily backup, and whether every photo is there.
  void start_care();
  [[nodiscard]] std::optional<PageName> page() const { return current_; }
  /// False: the page before was not left.
  bool go(PageName name, const std::string& about = {});
  void tell_refused(const Error& error);
  void tell_restored(const QString& sentence);

 signals:
  /// Painted, and with the first page on it: time for what nobody waits for.
  void came_up();
  void closed();
  void store_wanted(const QString& path);
  void restore_wanted(const QString& backup);
  /// To be made anew: what was set holds for new windows.
  void renewal_wanted();

 protected:
  void closeEvent(QCloseEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void build();
  void come_home();
  void add_keys();
  [[nodiscard]] PageLinks links();
  void choose_first_person();
  void tell_looks_only();
  PluggedPage& plugged(PageName name);
  [[nodiscard]] bool may_leave();
  void bring(PageName name, const std::string& about);
  void tell_typed();
  void show_heading();
  void take_up(const std::string& job);
  void open_settings();
  void switch_person();
  void take_person(const store::Person& person);
  void keep_person();
  /// Whether nothing typed would be lost; else its page is in front, and it is told.
  [[nodiscard]] bool may_close();
  void close_all_the_same();
  void tell_backup();
  void backup_failed(const Error& error);

  bench::Workbench* bench_;
  Settings* settings_;
  const Equipment* equipment_;
  TopBar* top_ = nullptr;
  PersonRow* persons_ = nullptr;
  Notices* notices_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  SettingsPage* settings_page_ = nullptr;
  DailyBackup* backup_ = nullptr;
  PhotoWatch* photos_ = nullptr;
  Tone* tone_ = nullptr;
  std::map<PageName, PluggedPage> pages_;
  std::optional<PageName> current_;  ///< nothing: the settings, or the window has just come up
  PageName before_ = PageName::home;
  bool closing_anyway_ = false;
  bool painted_ = false;
};

}  // namespace shimwright::shell
