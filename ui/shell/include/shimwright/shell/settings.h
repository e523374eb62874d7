#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <QByteArray>
#include <QSettings>
#include <QString>

#include "shimwright/quantity/units_shown.h"
#include "shimwright/record/page.h"
#include "shimwright/widgets/style.h"

namespace shimwright::shell {

/// The last backup that was checked.
struct LastBackup {
  std::int64_t at_ms = 0;
  QString file;
};

/// What the program keeps between two starts. The look is this person's on this machine; folders, person and backup
/// belong to a store. Nothing of a job is kept here.
class Settings {
 public:
  explicit Settings(std::unique_ptr<QSettings> file) : file_(std::move(file)) {}

  [[nodiscard]] widgets::Scheme scheme() const;
  void set_scheme(widgets::Scheme scheme);
  /// 100, 125, 150, 175 or 200.
  [[nodiscard]] int size_percent() const;
  void set_size_percent(int percent);
  /// `en`, `de`; blank where none was chosen.
  [[nodiscard]] QString language() const;
  void set_language(const QString& language);
  /// The units lengths and torques are shown and typed in.
  [[nodiscard]] quantity::UnitsShown units() const;
  void set_units(const quantity::UnitsShown& units);
  /// Of records and blank sheets; where none was set, that of this machine's country.
  [[nodiscard]] record::PaperSize paper() const;
  void set_paper(record::PaperSize paper);
  [[nodiscard]] QByteArray geometry() const;
  void set_geometry(const QByteArray& geometry);
  [[nodiscard]] QString last_store() const;
  void set_last_store(const QString& path);

  /// What follows is of this store from now on.
  void use_store(const std::string& path);
  [[nodiscard]] QString person() const;  ///< id
  [[nodiscard]] QString person_name() const;
  void set_person(const QString& id, const QString& name);
  [[nodiscard]] QString camera_folder() const;
  void set_camera_folder(const QString& folder);
  /// Where none was set: `backups` beside the store.
  [[nodiscard]] QString backup_folder() const;
  void set_backup_folder(const QString& folder);
  [[nodiscard]] bool tone() const;
  void set_tone(bool on);
  [[nodiscard]] std::optional<LastBackup> last_backup() const;
  void set_last_backup(const LastBackup& backup);

  /// Brings what was set to the disk.
  void sync() { file_->sync(); }

 private:
  void keep(const QString& key, const QVariant& value);
  [[nodiscard]] QString of_store(const char* key) const;

  std::unique_ptr<QSettings> file_;
  QString store_path_;
  QString group_;
};

/// The sizes a window can have.
[[nodiscard]] const std::vector<int>& sizes_of_window();

}  // namespace shimwright::shell
