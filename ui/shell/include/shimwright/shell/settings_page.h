#pragma once

#include <QWidget>

#include "shimwright/shell/choice_row.h"
#include "shimwright/shell/equipment.h"
#include "shimwright/shell/settings.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::shell {

/// The look, the bench, backups and which store is open. Each change is kept at once.
class SettingsPage : public QWidget {
  Q_OBJECT

 public:
  SettingsPage(const bench::Workbench& bench, Settings& settings, const Equipment& equipment,
               QWidget* parent = nullptr);
  void refresh();
  void tell_backup(const QString& sentence, bool bad);

 signals:
  void scheme_changed();
  void tone_changed(bool on);
  void backup_wanted();
  void store_wanted(const QString& path);
  void renewal_wanted();

 private:
  void build_look(QVBoxLayout* column);
  void build_units(widgets::Box* card);
  void build_renewal(widgets::Box* card);
  void build_bench(QVBoxLayout* column);
  void build_backup(QVBoxLayout* column);
  void build_store(QVBoxLayout* column);
  void build_deleting(widgets::Box* card);
  void ask_deleting(bool ask);
  void delete_demo();
  widgets::Box* add_card(QVBoxLayout* column, const QString& heading);
  void choose(const QString& from, const std::function<void(const QString&)>& take);

  const bench::Workbench* bench_;
  Settings* settings_;
  const Equipment* equipment_;
  ChoiceRow* scheme_ = nullptr;
  ChoiceRow* size_ = nullptr;
  ChoiceRow* language_ = nullptr;
  ChoiceRow* length_ = nullptr;
  ChoiceRow* torque_ = nullptr;
  ChoiceRow* paper_ = nullptr;
  ChoiceRow* tone_ = nullptr;
  QLabel* next_start_ = nullptr;
  QWidget* renewal_ = nullptr;
  QLabel* camera_ = nullptr;
  QLabel* backup_ = nullptr;
  QLabel* backup_told_ = nullptr;
  QWidget* deleting_ = nullptr;
  widgets::Button* delete_ = nullptr;
  QLabel* deleted_ = nullptr;
};

}  // namespace shimwright::shell
