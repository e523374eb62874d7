#include "shimwright/shell/main_window.h"

#include <QCloseEvent>
#include <QScreen>
#include <QShortcut>
#include <algorithm>
#include <utility>

#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/giving.h"
#include "shimwright/widgets/say.h"

namespace shimwright::shell {

MainWindow::MainWindow(bench::Workbench& bench, Settings& settings, const Equipment& equipment)
    : bench_(&bench), settings_(&settings), equipment_(&equipment) {
  setObjectName(QStringLiteral("main-window"));
  setWindowTitle(QStringLiteral("Shimwright"));
  build();
  add_keys();
  choose_first_person();
  tell_looks_only();
  resize(QSize(1366, 768).boundedTo(screen()->availableSize()));
  restoreGeometry(settings.geometry());
  top_->show_place(PageName::home);
}

// The window itself first, and then what takes a moment to read.
void MainWindow::paintEvent(QPaintEvent* event) {
  QWidget::paintEvent(event);
  if (!painted_) {
    painted_ = true;
    QMetaObject::invokeMethod(this, &MainWindow::come_home, Qt::QueuedConnection);
  }
}

void MainWindow::come_home() {
  top_->set_demo_workshop(is_demo_workshop(bench_->store()));
  if (stack_->count() == 0) {
    bring(PageName::home, {});
  }
  keep_person();
  emit came_up();
}

void MainWindow::build() {
  auto* column = widgets::lay<QVBoxLayout>(this);
  top_ = widgets::child_of<TopBar>(this);
  column->addWidget(top_);
  auto* rule = widgets::child_of<QFrame>(this);
  widgets::set_part(rule, "rule");
  rule->setFixedHeight(1);
  column->addWidget(rule);
  persons_ = widgets::child_of<PersonRow>(this);
  column->addWidget(persons_);
  notices_ = widgets::child_of<Notices>(this);
  column->addWidget(notices_);
  stack_ = widgets::child_of<widgets::PageStack>(this);
  column->addWidget(stack_, 1);
  backup_ = widgets::child_of<DailyBackup>(this, bench_->store().path(), equipment_->clock, *settings_);
  photos_ = widgets::child_of<PhotoWatch>(this, bench_->store(), *settings_, *notices_);
  tone_ = widgets::child_of<Tone>(this, *bench_, equipment_->sound);
  tone_->set_on(settings_->tone());

  connect(top_, &TopBar::place_wanted, this, [this](PageName place) {
    if (!go(place)) {
      show_heading();
    }
  });
  connect(top_, &TopBar::settings_wanted, this, &MainWindow::open_settings);
  connect(top_, &TopBar::person_wanted, this, &MainWindow::switch_person);
  connect(persons_, &PersonRow::picked, this, &MainWindow::take_person);
  connect(bench_, &bench::Workbench::person_changed, this,
          [this] { top_->set_person(widgets::qt(bench_->person().initials)); });
  connect(backup_, &DailyBackup::failed, this, &MainWindow::backup_failed);
  connect(backup_, &DailyBackup::done, this, &MainWindow::tell_backup);
}

void MainWindow::add_keys() {
  const std::vector<PageName> places{PageName::home, PageName::past_jobs, PageName::workshop};
  for (std::size_t at = 0; at < places.size(); ++at) {
    for (const Qt::Modifier modifier : {Qt::ALT, Qt::CTRL}) {
      const auto key = static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(at));
      auto* shortcut = widgets::child_of<QShortcut>(this, QKeySequence(modifier | key));
      connect(shortcut, &QShortcut::activated, this, [this, place = places[at]] { go(place); });
    }
  }
  auto* person = widgets::child_of<QShortcut>(this, QKeySequence(Qt::Key_F9));
  connect(person, &QShortcut::activated, this, &MainWindow::switch_person);
  auto* settings = widgets::child_of<QShortcut>(this, QKeySequence(Qt::CTRL | Qt::Key_Comma));
  connect(settings, &QShortcut::activated, this, &MainWindow::open_settings);
}

PageLinks MainWindow::links() {
  PageLinks links;
  links.home = [this] { go(PageName::home); };
  links.new_job = [this](const std::string& vehicle_key) { go(PageName::new_job, vehicle_key); };
  links.take_up = [this](const std::string& job) { take_up(job); };
  links.job_opened = [this] { bring(PageName::job, bench_->job_id()); };
  links.search = [this](const QString& text) { go(PageName::past_jobs, widgets::plain(text)); };
  links.open_record = [this](const std::string& job) { go(PageName::record, job); };
  links.open_vehicle = [this](const std::string& vehicle_key) { go(PageName::vehicle, vehicle_key); };
  links.past_jobs = [this] { go(PageName::past_jobs); };
  links.show_jobs = [this](const QString& heading, const std::vector<std::string>& jobs) {
    if (go(PageName::past_jobs)) {
      const PluggedPage& page = plugged(PageName::past_jobs);
      if (page.show_jobs) {
        page.show_jobs(heading, jobs);
      }
    }
  };
  links.back = [this] { go(before_ == PageName::record ? PageName::home : before_); };
  links.heading_changed = [this] { show_heading(); };
  links.backed_up = [this](const LastBackup& backup) {
    settings_->set_last_backup(backup);
    tell_backup();
  };
  links.use_backup_folder = [this](const QString& folder) { settings_->set_backup_folder(folder); };
  links.restore = [this](const QString& backup) {
    if (may_close()) {
      emit restore_wanted(backup);
    } else {
      tell_typed();
    }
  };
  links.refused = [this](const Error& error) { tell_refused(error); };
  return links;
}

void MainWindow::choose_first_person() {
  if (auto read = bench_->read_persons(); !read) {
    tell_refused(read.error());
  }
  const auto& all = bench_->persons();
  const std::string last = widgets::plain(settings_->person());
  auto found = std::find_if(all.begin(), all.end(), [&](const auto& each) { return each.active && each.id == last; });
  if (found == all.end()) {
    found = std::find_if(all.begin(), all.end(), [](const auto& each) { return each.active; });
  }
  if (found != all.end()) {
    bench_->set_person(store::Person(*found));
  }
}

void MainWindow::tell_looks_only() {
  if (!bench_->looks_only()) {
    return;
  }
  const auto& why = bench_->store().why_look_only();
  const QString looking = tr("This store is open for looking only: nothing can be entered.");
  notices_->tell(QStringLiteral("looks-only"), why ? widgets::say(*why) + QLatin1Char(' ') + looking : looking, true);
}

void MainWindow::start_care() {
  photos_->look();
  if (!bench_->looks_only()) {
    backup_->start_if_due();
  }
}

PluggedPage& MainWindow::plugged(PageName name) {
  const auto found = pages_.find(name);
  if (found != pages_.end()) {
    return found->second;
  }
  PluggedPage page;
  for (const PageFactory& each : equipment_->pages) {
    if (each.name == name) {
      page = each.make({bench_, settings_, equipment_, links(), stack_});
    }
  }
  if (page.widget == nullptr) {
    page.widget = widgets::child_of<QWidget>(stack_);
  }
  stack_->addWidget(page.widget);
  const auto last = settings_->last_backup();
  if (last && page.backup_done) {
    page.backup_done(*last);
  }
  return pages_.emplace(name, std::move(page)).first->second;
}

bool MainWindow::may_leave() {
  if (!current_) {
    return true;
  }
  const PluggedPage& page = plugged(*current_);
  if (page.may_leave && !page.may_leave()) {
    tell_typed();
    return false;
  }
  notices_->clear(QStringLiteral("typed"));
  return true;
}

bool MainWindow::go(PageName name, const std::string& about) {
  if (!may_leave()) {
    return false;
  }
  bring(name, about);
  return true;
}

void MainWindow::bring(PageName name, const std::string& about) {
  PluggedPage& page = plugged(name);
  if (current_ && *current_ != name) {
    before_ = *current_;
  }
  current_ = name;
  notices_->clear(QStringLiteral("refused"));
  stack_->setCurrentWidget(page.widget);
  if (page.come) {
    page.come(about);
  }
  show_heading();
}

void MainWindow::tell_refused(const Error& error) {
  notices_->tell(QStringLiteral("refused"), widgets::say(error));
}

void MainWindow::tell_restored(const QString& sentence) {
  notices_->tell(QStringLiteral("restored"), sentence);
}

void MainWindow::tell_typed() {
  notices_->tell(QStringLiteral("typed"), tr("What is typed here is not saved yet: mend it, or empty the field."));
}

void MainWindow::show_heading() {
  if (!current_) {
    top_->show_settings();
    return;
  }
  const PluggedPage& page = plugged(*current_);
  if (page.heading) {
    top_->show_job(page.heading());
  } else {
    const bool past =
        *current_ == PageName::record || *current_ == PageName::past_jobs || *current_ == PageName::vehicle;
    const bool workshop = *current_ == PageName::workshop;
    top_->show_place(past ? PageName::past_jobs : workshop ? PageName::workshop : PageName::home);
  }
}

void MainWindow::take_up(const std::string& job) {
  if (!may_leave()) {
    return;
  }
  if (auto taken = bench_->take(job); !taken) {
    tell_refused(taken.error());
    return;
  }
  bring(PageName::job, job);
}

void MainWindow::open_settings() {
  if (!may_leave()) {
    return;
  }
  if (settings_page_ == nullptr) {
    settings_page_ = widgets::child_of<SettingsPage>(stack_, *bench_, *settings_, *equipment_);
    stack_->addWidget(settings_page_);
    connect(settings_page_, &SettingsPage::scheme_changed, this, [this] { equipment_->dress(settings_->scheme()); });
    connect(settings_page_, &SettingsPage::tone_changed, this, [this](bool on) { tone_->set_on(on); });
    connect(settings_page_, &SettingsPage::backup_wanted, this, [this] {
      settings_page_->tell_backup(tr("The backup is being made and checked."), false);
      backup_->start();
    });
    connect(settings_page_, &SettingsPage::renewal_wanted, this, [this] {
      if (may_close()) {
        emit renewal_wanted();
      } else {
        tell_typed();
      }
    });
    connect(settings_page_, &SettingsPage::store_wanted, this, [this](const QString& path) {
      if (may_close()) {
        emit store_wanted(path);
      } else {
        tell_typed();
      }
    });
  }
  current_ = std::nullopt;
  settings_page_->refresh();
  stack_->setCurrentWidget(settings_page_);
  show_heading();
  settings_page_->setFocus();
}

void MainWindow::switch_person() {
  if (persons_->isVisible()) {
    persons_->close_row();
    return;
  }
  if (auto read = bench_->read_persons(); !read) {
    tell_refused(read.error());
    return;
  }
  if (QWidget* before = focusWidget(); before != nullptr) {
    connect(
        persons_, &PersonRow::closed, before, [before] { before->setFocus(); }, Qt::SingleShotConnection);
  }
  persons_->open(bench_->persons(), bench_->person().id);
}

void MainWindow::take_person(const store::Person& person) {
  bench_->set_person(person);
  keep_person();
}

void MainWindow::keep_person() {
  const store::Person& person = bench_->person();
  if (!person.id.empty()) {
    settings_->set_person(widgets::qt(person.id), widgets::qt(person.name));
  }
}

void MainWindow::tell_backup() {
  const auto last = settings_->last_backup();
  if (!last) {
    return;
  }
  notices_->clear(QStringLiteral("backup"));
  for (const auto& named : pages_) {
    if (named.second.backup_done) {
      named.second.backup_done(*last);
    }
  }
  if (settings_page_ != nullptr) {
    settings_page_->refresh();
  }
}

void MainWindow::backup_failed(const Error& error) {
  const QString sentence = tr("The backup was not made. %1").arg(widgets::say(error));
  notices_->tell(QStringLiteral("backup"), sentence);
  if (settings_page_ != nullptr) {
    settings_page_->tell_backup(sentence, true);
  }
}

void MainWindow::close_all_the_same() {
  closing_anyway_ = true;
  close();
}

bool MainWindow::may_close() {
  if (!may_leave()) {
    return false;
  }
  for (const auto& [name, page] : pages_) {
    if (page.has_unsent && page.has_unsent()) {
      bring(name, {});
      return false;
    }
  }
  return true;
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!closing_anyway_ && !may_close()) {
    notices_->offer(QStringLiteral("typed"), tr("What is typed here is not saved yet: mend it, or empty the field."),
                    tr("Close without it"), [this] { close_all_the_same(); });
    event->ignore();
    return;
  }
  settings_->set_geometry(saveGeometry());
  settings_->sync();
  event->accept();
  emit closed();
}

}  // namespace shimwright::shell
