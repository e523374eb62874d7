#include "shimwright/shell/program.h"

#include <QFileInfo>
#include <QPointer>
#include <algorithm>
#include <utility>

#include "shimwright/shell/languages.h"
#include "shimwright/shell/start_choices.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/rescue.h"
#include "shimwright/store/restore.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"
#include "shimwright/workshop/logo.h"
#include "workshop.h"

namespace shimwright::shell {

namespace {

constexpr int before_care_ms = 5000;

bool is_there(const std::string& path) {
  return QFileInfo::exists(widgets::qt(path));
}

/// The one that was open last, else the workshop's own, else the demonstration; own where none is there yet.
std::string store_to_open(const StorePlaces& places, const std::string& last) {
  if ((last == places.own || last == places.demo) && is_there(last)) {
    return last;
  }
  return !is_there(places.own) && is_there(places.demo) ? places.demo : places.own;
}

}  // namespace

Program::Program(Settings& settings, Equipment equipment) : settings_(&settings), equipment_(std::move(equipment)) {}

Program::~Program() = default;

void Program::start(const StartWords& words) {
  if (words.demo) {
    try_demo();
    return;
  }
  const std::string path = words.store.empty()
                               ? store_to_open(equipment_.places, widgets::plain(settings_->last_store()))
                               : cli::absolute(words.store);
  open(path, words.look ? store::Mode::look_only : store::Mode::read_write);
}

Result<std::unique_ptr<store::Store>> Program::store_at(const std::string& path, store::Mode mode) {
  return store::Store::open(path, {mode, widgets::plain(settings_->person_name()), equipment_.clock().at_ms});
}

void Program::open(const std::string& path, store::Mode mode) {
  path_ = path;
  mode_ = mode;
  settings_->use_store(path);
  if (mode == store::Mode::read_write && !is_there(path)) {
    offer_first();
    return;
  }
  auto store = store_at(path, mode);
  if (!store) {
    hinder(store.error());
    return;
  }
  auto persons = (*store)->registers().persons();
  if (!persons) {
    hinder(persons.error());
    return;
  }
  const bool somebody = std::any_of(persons->begin(), persons->end(), [](const auto& each) { return each.active; });
  if (!somebody && !(*store)->looks_only()) {
    // Begun and cut off before the first person was entered, or all have left: what is known is not asked again.
    const auto known = (*store)->registers().workshop();
    offer_first();
    const auto workshop = known ? *known : std::nullopt;
    if (workshop) {
      start_->first()->ask_for_person_only(widgets::qt(workshop->name));
    }
    return;
  }
  take(*std::move(store));
}

// Not before: what it waits for is read while the store is opened.
void Program::dress_first() {
  if (!dressed_) {
    dressed_ = true;
    equipment_.dress(settings_->scheme());
  }
}

void Program::take(std::unique_ptr<store::Store> store) {
  dress_first();
  main_.reset();
  bench_.reset();
  widgets::show_in(settings_->units());
  equipment_.speak(language_to_speak(settings_->language()));
  store_ = std::move(store);
  if (path_ == equipment_.places.own || path_ == equipment_.places.demo) {
    settings_->set_last_store(widgets::qt(path_));
  }
  bench_ = std::make_unique<bench::Workbench>(*store_, equipment_.clock, store::IdSource());
  main_ = std::make_unique<MainWindow>(*bench_, *settings_, equipment_);
  connect(main_.get(), &MainWindow::closed, this, &Program::finished);
  connect(main_.get(), &MainWindow::came_up, this, &Program::bring_later_issues);
  // Later: the window that asks is gone then.
  connect(
      main_.get(), &MainWindow::store_wanted, this, [this](const QString& path) { switch_to(widgets::plain(path)); },
      Qt::QueuedConnection);
  connect(main_.get(), &MainWindow::renewal_wanted, this, &Program::come_up_anew, Qt::QueuedConnection);
  connect(
      main_.get(), &MainWindow::restore_wanted, this,
      [this](const QString& backup) { restore_from(widgets::plain(backup)); }, Qt::QueuedConnection);
  main_->show();
  // Not while the window comes up: a person waits for that, and for no backup.
  equipment_.after(before_care_ms, [window = QPointer<MainWindow>(main_.get())] {
    if (window) {
      window->start_care();
    }
  });
  if (start_) {
    start_->hide();
  }
}

void Program::bring_later_issues() {
  if (store_->looks_only()) {
    return;
  }
  if (auto added = add_later_issues(*store_, equipment_.clock()); !added) {
    main_->tell_refused(added.error());
  }
}

void Program::let_go() {
  settings_->set_geometry(main_->saveGeometry());
  main_.reset();
  bench_.reset();
  store_.reset();
}

void Program::come_up_anew() {
  if (main_) {
    let_go();
    open(std::string(path_), mode_);
  }
}

void Program::switch_to(const std::string& path) {
  if (!main_) {
    return;
  }
  if (path == equipment_.places.demo && !is_there(path)) {
    if (auto made = make_demo_workshop(path, equipment_.clock()); !made) {
      main_->tell_refused(made.error());
      return;
    }
  }
  let_go();
  open(path, store::Mode::read_write);
}

StartWindow& Program::start_window_shown() {
  if (!start_) {
    dress_first();
    start_ = std::make_unique<StartWindow>(*settings_);
    connect(start_.get(), &StartWindow::closed, this, &Program::finished);
    const FirstPage* first = start_->first();
    connect(first, &FirstPage::demo_wanted, this, &Program::try_demo);
    connect(first, &FirstPage::begin_wanted, this, &Program::begin_own);
    connect(first, &FirstPage::logo_wanted, this, &Program::choose_first_logo);
    connect(first, &FirstPage::choice_made, this, &Program::take_choice);
    const HindrancePage* hindrance = start_->hindrance();
    connect(hindrance, &HindrancePage::retry_wanted, this, [this] { open(std::string(path_), mode_); });
    connect(hindrance, &HindrancePage::look_wanted, this, [this] { open(std::string(path_), store::Mode::look_only); });
    connect(hindrance, &HindrancePage::break_wanted, this, &Program::break_lock);
    // Later: the page that asks stays until then.
    connect(
        hindrance, &HindrancePage::rescue_wanted, this,
        [this](const QString& backup) { put_back(widgets::plain(backup)); }, Qt::QueuedConnection);
  }
  return *start_;
}

void Program::offer_first(const QString& fault) {
  StartWindow& window = start_window_shown();
  window.first()->set_offer(widgets::qt(path_), path_ == equipment_.places.own);
  window.first()->set_fault(fault);
  show_choices();
  window.show_first();
}

void Program::hinder(const Error& error) {
  StartWindow& window = start_window_shown();
  window.hindrance()->show_hindrance(error, widgets::qt(path_), store::Store::lock_holder(path_));
  window.show_hindrance();
  // What cannot even be told for a store may be another program's file, unless it was backed up from here before.
  if (error.code == "store_damaged" || (error.code == "not_a_store" && settings_->last_backup())) {
    look_for_backup();
  }
}

void Program::begin_work(widgets::BackgroundWork::Work work) {
  // An outcome may begin the next work: only what still runs is waited for and dropped.
  if (!work_ || work_->runs()) {
    work_.reset();
    work_ = std::make_unique<widgets::BackgroundWork>();
  }
  work_->begin(std::move(work));
}

void Program::look_for_backup() {
  const QString folder = settings_->backup_folder();
  start_->hindrance()->show_search(folder);
  begin_work([this, folder, path = path_](const store::BackupWatch& watch) {
    auto found = store::last_whole_backup(path, widgets::plain(folder), watch);
    return [this, folder, found = std::move(found)] { start_->hindrance()->show_offer(found, folder); };
  });
}

void Program::put_back(const std::string& backup) {
  const store::Opening opening{store::Mode::read_write, widgets::plain(settings_->person_name()),
                               equipment_.clock().at_ms};
  replace_store(tr("The backup is being put in the place of the damaged store"),
                [path = path_, backup, opening]() -> Result<QString> {
                  auto kept = store::put_back(path, backup, opening);
                  if (!kept) {
                    return tl::make_unexpected(kept.error());
                  }
                  return tr("This is the last whole backup. The damaged store is kept: %1").arg(widgets::qt(*kept));
                });
}

void Program::restore_from(const std::string& backup) {
  if (!main_) {
    return;
  }
  settings_->set_geometry(main_->saveGeometry());
  main_.reset();
  bench_.reset();
  store_.reset();
  const store::Opening opening{store::Mode::read_write, widgets::plain(settings_->person_name()),
                               equipment_.clock().at_ms};
  replace_store(tr("The store is going back to the backup"), [path = path_, backup, opening]() -> Result<QString> {
    auto report = store::restore(path, backup, opening);
    if (!report) {
      return tl::make_unexpected(report.error());
    }
    const QString told =
        tr("This is the backup. Jobs: %1, entries found equal one by one: %2. What was here before is kept: %3")
            .arg(report->jobs)
            .arg(report->entries)
            .arg(widgets::qt(report->kept));
    return report->photos_gone == 0
               ? told
               : told + QLatin1Char('\n') + tr("Photos that are gone: %1.").arg(report->photos_gone);
  });
}

void Program::replace_store(const QString& doing, const std::function<Result<QString>()>& replace) {
  start_window_shown().show_wait(doing);
  begin_work([this, replace](const store::BackupWatch& /*watch*/) {
    auto done = replace();
    return [this, done = std::move(done)] {
      open(std::string(path_), store::Mode::read_write);
      if (!main_) {
        if (!done) {
          start_->hindrance()->tell_refused(done.error());
        }
        return;
      }
      // What is refused is cleared as the bench comes up; this has to stay in sight.
      main_->tell_restored(done ? *done : widgets::say(done.error()));
    };
  });
}

void Program::try_demo() {
  const std::string& path = equipment_.places.demo;
  if (!is_there(path)) {
    if (auto made = make_demo_workshop(path, equipment_.clock()); !made) {
      offer_first(widgets::say(made.error()));
      return;
    }
  }
  open(path, store::Mode::read_write);
}

void Program::begin_own(const Beginning& beginning) {
  auto store = store_at(path_, store::Mode::read_write);
  if (!store) {
    hinder(store.error());
    return;
  }
  store::IdSource ids;
  if (auto begun = begin_workshop(**store, beginning, ids, equipment_.clock()); !begun) {
    start_window_shown().first()->set_fault(widgets::say(begun.error()));
    return;
  }
  take(*std::move(store));
}

void Program::choose_first_logo() {
  FirstPage* const first = start_window_shown().first();
  const QString file = equipment_.choose_photo(start_.get(), QString());
  if (file.isEmpty()) {
    return;
  }
  const auto logo = workshop::logo_from(file);
  if (!logo) {
    first->set_fault(tr("This picture cannot be read; choose it again."));
  } else if (const auto checked = store::check_logo(*logo); !checked) {
    first->set_fault(widgets::say(checked.error()));
  } else {
    first->set_fault({});
    first->set_logo(*logo, QFileInfo(file).fileName());
  }
}

/// Held by the window over the store that is opened next.
void Program::take_choice(const QString& name) {
  settings_->set_units(with_choice(settings_->units(), name));
  if (const auto paper = paper_named(name)) {
    settings_->set_paper(*paper);
  }
  if (name.startsWith(QLatin1String("language-"))) {
    settings_->set_language(name.mid(9));
    // Later: the button that was pressed is of the window that goes.
    QMetaObject::invokeMethod(
        this, [this, name] { ask_in_other_language(name); }, Qt::QueuedConnection);
  }
}

void Program::ask_in_other_language(const QString& choice) {
  if (!start_ || start_->isHidden()) {
    return;
  }
  const FirstTyped typed = start_->first()->typed();
  settings_->set_geometry(start_->saveGeometry());
  start_.reset();
  equipment_.speak(language_to_speak(settings_->language()));
  open(std::string(path_), mode_);
  if (start_) {
    start_->first()->put_typed(typed);
    start_->first()->take_focus_at(choice);
  }
}

void Program::show_choices() {
  const UnitChoice units = choice_of(settings_->units());
  start_->first()->show_choices({QStringLiteral("language-") + language_to_speak(settings_->language()), units.length,
                                 units.torque, choice_of(settings_->paper())});
}

void Program::break_lock(const store::LockHolder& shown) {
  if (auto broken = store::Store::break_lock(path_, shown); !broken) {
    hinder(broken.error());
    return;
  }
  open(std::string(path_), store::Mode::read_write);
}

}  // namespace shimwright::shell
