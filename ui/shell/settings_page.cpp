#include "shimwright/shell/settings_page.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>

#include "shimwright/shell/languages.h"
#include "shimwright/shell/start_choices.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::shell {

namespace {

constexpr int widest = 900;

std::vector<ChoiceRow::Choice> size_choices() {
  std::vector<ChoiceRow::Choice> choices;
  for (const int percent : sizes_of_window()) {
    choices.push_back({QStringLiteral("size-%1").arg(percent), QStringLiteral("%1 %").arg(percent)});
  }
  return choices;
}

}  // namespace

SettingsPage::SettingsPage(const bench::Workbench& bench, Settings& settings, const Equipment& equipment,
                           QWidget* parent)
    : QWidget(parent), bench_(&bench), settings_(&settings), equipment_(&equipment) {
  auto* outer = widgets::lay<QVBoxLayout>(this);
  auto* scroll = widgets::child_of<widgets::Scroll>(this);
  outer->addWidget(scroll);
  scroll->column()->setContentsMargins(28, 20, 28, 20);
  auto* row = widgets::lay_in<QHBoxLayout>(scroll->column());
  auto* content = widgets::child_of<QWidget>(scroll->content());
  content->setMaximumWidth(widest);
  row->addWidget(content, 1);
  row->addStretch();
  auto* column = widgets::lay<QVBoxLayout>(content, 14);
  column->addWidget(widgets::child_of<widgets::Text>(content, tr("Settings"), "title"));
  build_look(column);
  build_bench(column);
  build_backup(column);
  build_store(column);
  scroll->column()->addStretch();
  refresh();
}

widgets::Box* SettingsPage::add_card(QVBoxLayout* column, const QString& heading) {
  auto* card = widgets::child_of<widgets::Box>(column->parentWidget(), heading, QString(), "card");
  card->body()->setSpacing(12);
  column->addWidget(card);
  return card;
}

void SettingsPage::build_look(QVBoxLayout* column) {
  auto* card = add_card(column, tr("Look"));
  const std::vector<ChoiceRow::Choice> schemes{{QStringLiteral("light"), tr("Light")},
                                               {QStringLiteral("dark"), tr("Dark")}};
  scheme_ = widgets::child_of<ChoiceRow>(card, tr("Brightness"), schemes);
  card->body()->addWidget(scheme_);
  connect(scheme_, &ChoiceRow::chosen, this, [this](const QString& name) {
    settings_->set_scheme(name == QLatin1String("dark") ? widgets::Scheme::dark : widgets::Scheme::light);
    emit scheme_changed();
  });
  size_ = widgets::child_of<ChoiceRow>(card, tr("Size"), size_choices());
  card->body()->addWidget(size_);
  language_ = widgets::child_of<ChoiceRow>(card, tr("Language of the window"), language_choices());
  card->body()->addWidget(language_);
  build_units(card);
  build_renewal(card);
  next_start_ = widgets::child_of<widgets::Text>(card, tr("The size takes effect at the next start."), "strong");
  next_start_->setObjectName(QStringLiteral("next-start"));
  next_start_->hide();
  card->body()->addWidget(next_start_);
  connect(size_, &ChoiceRow::chosen, this, [this](const QString& name) {
    settings_->set_size_percent(name.mid(5).toInt());
    next_start_->show();
  });
  connect(language_, &ChoiceRow::chosen, this, [this](const QString& name) {
    settings_->set_language(name.mid(9));
    renewal_->show();
  });
}

void SettingsPage::build_units(widgets::Box* card) {
  length_ = widgets::child_of<ChoiceRow>(card, tr("Lengths are shown and typed in"), length_choices());
  torque_ = widgets::child_of<ChoiceRow>(card, tr("Torques are shown and typed in"), torque_choices());
  paper_ = widgets::child_of<ChoiceRow>(card, tr("Paper of records"), paper_choices());
  for (ChoiceRow* each : {length_, torque_, paper_}) {
    card->body()->addWidget(each);
    connect(each, &ChoiceRow::chosen, this, [this](const QString& name) {
      settings_->set_units(with_choice(settings_->units(), name));
      if (const auto paper = paper_named(name)) {
        settings_->set_paper(*paper);
      }
      renewal_->show();
    });
  }
}

void SettingsPage::build_renewal(widgets::Box* card) {
  renewal_ = widgets::child_of<QWidget>(card);
  renewal_->setObjectName(QStringLiteral("renewal"));
  auto* row = widgets::lay<QHBoxLayout>(renewal_, 14);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(widgets::child_of<widgets::Text>(renewal_, tr("The window shows it once it comes up anew."), "strong"),
                 1);
  auto* now = widgets::child_of<widgets::Button>(renewal_, tr("Let it come up now"));
  now->setObjectName(QStringLiteral("button-renew-window"));
  connect(now, &QPushButton::clicked, this, &SettingsPage::renewal_wanted);
  row->addWidget(now);
  card->body()->addWidget(renewal_);
  renewal_->hide();
}

void SettingsPage::build_bench(QVBoxLayout* column) {
  auto* card = add_card(column, tr("At the bench"));
  const std::vector<ChoiceRow::Choice> tones{{QStringLiteral("tone-off"), tr("Off")},
                                             {QStringLiteral("tone-on"), tr("On")}};
  tone_ = widgets::child_of<ChoiceRow>(card, tr("A tone when a reading is saved"), tones);
  card->body()->addWidget(tone_);
  connect(tone_, &ChoiceRow::chosen, this, [this](const QString& name) {
    settings_->set_tone(name == QLatin1String("tone-on"));
    emit tone_changed(settings_->tone());
  });
  card->body()->addWidget(widgets::child_of<widgets::Text>(card, tr("Folder the camera puts its photos in"), "strong"));
  camera_ = widgets::child_of<widgets::Text>(card, QString());
  camera_->setObjectName(QStringLiteral("camera-folder"));
  card->body()->addWidget(camera_);
  auto* button = widgets::child_of<widgets::Button>(card, tr("Choose the camera's folder"));
  button->setObjectName(QStringLiteral("button-camera-folder"));
  connect(button, &QPushButton::clicked, this, [this] {
    choose(settings_->camera_folder(), [this](const QString& folder) { settings_->set_camera_folder(folder); });
  });
  card->body()->addWidget(button, 0, Qt::AlignLeft);
}

void SettingsPage::build_backup(QVBoxLayout* column) {
  auto* card = add_card(column, tr("Backup"));
  card->body()->addWidget(widgets::child_of<widgets::Text>(
      card, tr("Once a day, by itself. A folder on another disk also helps when this one breaks.")));
  backup_ = widgets::child_of<widgets::Text>(card, QString());
  backup_->setObjectName(QStringLiteral("backup-folder"));
  card->body()->addWidget(backup_);
  backup_told_ = widgets::child_of<widgets::Text>(card, QString());
  backup_told_->setObjectName(QStringLiteral("backup-told"));
  card->body()->addWidget(backup_told_);
  auto* row = widgets::lay_in<QHBoxLayout>(card->body(), 10);
  auto* folder = widgets::child_of<widgets::Button>(card, tr("Choose the backup folder"));
  folder->setObjectName(QStringLiteral("button-backup-folder"));
  connect(folder, &QPushButton::clicked, this, [this] {
    choose(settings_->backup_folder(), [this](const QString& chosen) { settings_->set_backup_folder(chosen); });
  });
  row->addWidget(folder);
  auto* now = widgets::child_of<widgets::Button>(card, tr("Back up now"));
  now->setObjectName(QStringLiteral("button-back-up-now"));
  now->setEnabled(!bench_->looks_only());
  connect(now, &QPushButton::clicked, this, &SettingsPage::backup_wanted);
  row->addWidget(now);
  row->addStretch();
}

void SettingsPage::build_store(QVBoxLayout* column) {
  auto* card = add_card(column, tr("Store"));
  card->body()->addWidget(widgets::child_of<widgets::Text>(card, widgets::qt(bench_->store().path())));
  const bool in_demo = bench_->store().path() == equipment_->places.demo;
  const std::string other = in_demo ? equipment_->places.own : equipment_->places.demo;
  const QString text = in_demo ? tr("Open this workshop's own store") : tr("Open the demonstration workshop");
  auto* button = widgets::child_of<widgets::Button>(card, text);
  button->setObjectName(QStringLiteral("button-other-store"));
  connect(button, &QPushButton::clicked, this, [this, other] { emit store_wanted(widgets::qt(other)); });
  card->body()->addWidget(button, 0, Qt::AlignLeft);
  if (!in_demo) {
    build_deleting(card);
  }
}

/// Asked twice, in place: the demonstration is made anew in a minute, but what was tried in it is gone.
void SettingsPage::build_deleting(widgets::Box* card) {
  delete_ = widgets::child_of<widgets::Button>(card, tr("Delete the demonstration workshop"));
  delete_->setObjectName(QStringLiteral("button-delete-demo"));
  card->body()->addWidget(delete_, 0, Qt::AlignLeft);
  deleting_ = widgets::child_of<QWidget>(card);
  auto* row = widgets::lay<QHBoxLayout>(deleting_, 12);
  row->addWidget(
      widgets::child_of<widgets::Text>(
          deleting_, tr("What was tried in it goes too; this workshop's own store is not touched."), "strong"),
      1);
  auto* yes = widgets::child_of<widgets::Button>(deleting_, tr("Delete it"));
  yes->setObjectName(QStringLiteral("button-delete-demo-yes"));
  row->addWidget(yes);
  auto* no = widgets::child_of<widgets::Button>(deleting_, tr("Leave it"));
  no->setObjectName(QStringLiteral("button-delete-demo-no"));
  row->addWidget(no);
  card->body()->addWidget(deleting_);
  deleted_ = widgets::child_of<widgets::Text>(card, QString());
  deleted_->setObjectName(QStringLiteral("demo-deleted"));
  card->body()->addWidget(deleted_);
  deleting_->hide();
  deleted_->hide();
  connect(delete_, &QPushButton::clicked, this, [this] { ask_deleting(true); });
  connect(no, &QPushButton::clicked, this, [this] { ask_deleting(false); });
  connect(yes, &QPushButton::clicked, this, &SettingsPage::delete_demo);
}

void SettingsPage::ask_deleting(bool ask) {
  deleting_->setVisible(ask);
  delete_->setVisible(!ask);
  QWidget* const next = ask ? deleting_->findChild<QWidget*>(QStringLiteral("button-delete-demo-no")) : delete_;
  next->setFocus();
}

void SettingsPage::delete_demo() {
  const auto deleted = delete_demo_workshop(equipment_->places);
  ask_deleting(false);
  deleted_->setText(deleted ? tr("The demonstration is deleted; it can be made anew at any time.")
                            : widgets::say(deleted.error()));
  widgets::set_part(deleted_, deleted ? "strong" : "error");
  deleted_->show();
  refresh();
}

void SettingsPage::choose(const QString& from, const std::function<void(const QString&)>& take) {
  const QString folder = equipment_->choose_folder(this, from);
  if (!folder.isEmpty()) {
    take(folder);
    refresh();
  }
}

void SettingsPage::refresh() {
  if (delete_ != nullptr && deleting_->isHidden()) {
    delete_->setVisible(QFileInfo::exists(widgets::qt(equipment_->places.demo)));
  }
  scheme_->set_chosen(settings_->scheme() == widgets::Scheme::dark ? QStringLiteral("dark") : QStringLiteral("light"));
  size_->set_chosen(QStringLiteral("size-%1").arg(settings_->size_percent()));
  language_->set_chosen(QStringLiteral("language-") + language_to_speak(settings_->language()));
  length_->set_chosen(choice_of(settings_->units()).length);
  torque_->set_chosen(choice_of(settings_->units()).torque);
  paper_->set_chosen(choice_of(settings_->paper()));
  tone_->set_chosen(settings_->tone() ? QStringLiteral("tone-on") : QStringLiteral("tone-off"));
  const QString camera = settings_->camera_folder();
  camera_->setText(camera.isEmpty() ? tr("none chosen yet") : QDir::toNativeSeparators(camera));
  backup_->setText(tr("Folder: %1").arg(QDir::toNativeSeparators(settings_->backup_folder())));
  const auto last = settings_->last_backup();
  tell_backup(last ? tr("Last verified backup: %1")
                         .arg(QDateTime::fromMSecsSinceEpoch(last->at_ms).toString(QStringLiteral("yyyy-MM-dd HH:mm")))
                   : tr("No verified backup yet."),
              false);
}

void SettingsPage::tell_backup(const QString& sentence, bool bad) {
  backup_told_->setText(sentence);
  widgets::set_part(backup_told_, bad ? "bad" : nullptr);
}

}  // namespace shimwright::shell
