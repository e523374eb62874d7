#include "shimwright/shell/settings.h"

#include <QCryptographicHash>
#include <QFileInfo>
#include <QLocale>
#include <algorithm>

#include "shimwright/past/record_ways.h"
#include "shimwright/widgets/say.h"

namespace shimwright::shell {

namespace {

constexpr const char* scheme_key = "window/scheme";
constexpr const char* size_key = "window/size";
constexpr const char* language_key = "window/language";
constexpr const char* length_key = "window/length_unit";
constexpr const char* torque_key = "window/torque_unit";
constexpr const char* paper_key = "window/paper";
constexpr const char* geometry_key = "window/geometry";
constexpr const char* last_store_key = "window/last_store";

}  // namespace

const std::vector<int>& sizes_of_window() {
  static const std::vector<int> sizes{100, 125, 150, 175, 200};
  return sizes;
}

// What stays as it was is not written: a start would wait for the disk.
void Settings::keep(const QString& key, const QVariant& value) {
  if (file_->value(key) != value) {
    file_->setValue(key, value);
  }
}

widgets::Scheme Settings::scheme() const {
  return file_->value(scheme_key).toString() == QLatin1String("dark") ? widgets::Scheme::dark : widgets::Scheme::light;
}

void Settings::set_scheme(widgets::Scheme scheme) {
  keep(scheme_key, scheme == widgets::Scheme::dark ? QStringLiteral("dark") : QStringLiteral("light"));
}

int Settings::size_percent() const {
  const int percent = file_->value(size_key, 100).toInt();
  const auto& sizes = sizes_of_window();
  return std::find(sizes.begin(), sizes.end(), percent) == sizes.end() ? 100 : percent;
}

void Settings::set_size_percent(int percent) {
  keep(size_key, percent);
}

QString Settings::language() const {
  return file_->value(language_key).toString();
}

void Settings::set_language(const QString& language) {
  keep(language_key, language);
}

quantity::UnitsShown Settings::units() const {
  using quantity::Unit;
  return {file_->value(length_key).toString() == QLatin1String("in") ? Unit::inch : Unit::millimetre,
          file_->value(torque_key).toString() == QLatin1String("lbf ft") ? Unit::pound_foot : Unit::newton_metre};
}

void Settings::set_units(const quantity::UnitsShown& units) {
  keep(length_key, units.length == quantity::Unit::inch ? QStringLiteral("in") : QStringLiteral("mm"));
  keep(torque_key, units.torque == quantity::Unit::pound_foot ? QStringLiteral("lbf ft") : QStringLiteral("N m"));
}

record::PaperSize Settings::paper() const {
  const QString name = file_->value(paper_key).toString();
  if (name.isEmpty()) {
    return past::paper_of(QLocale::system());
  }
  return name == QLatin1String("letter") ? record::PaperSize::letter : record::PaperSize::a4;
}

void Settings::set_paper(record::PaperSize paper) {
  keep(paper_key, paper == record::PaperSize::letter ? QStringLiteral("letter") : QStringLiteral("a4"));
}

QByteArray Settings::geometry() const {
  return file_->value(geometry_key).toByteArray();
}

void Settings::set_geometry(const QByteArray& geometry) {
  keep(geometry_key, geometry);
}

QString Settings::last_store() const {
  return file_->value(last_store_key).toString();
}

void Settings::set_last_store(const QString& path) {
  keep(last_store_key, path);
}

void Settings::use_store(const std::string& path) {
  store_path_ = widgets::qt(path);
  // A path is no name for a group: its slashes would be groups of their own.
  const QByteArray hash = QCryptographicHash::hash(store_path_.toUtf8(), QCryptographicHash::Sha256).toHex();
  group_ = QStringLiteral("store-") + QString::fromLatin1(hash.left(16));
}

QString Settings::of_store(const char* key) const {
  return group_ + QLatin1Char('/') + QLatin1String(key);
}

QString Settings::person() const {
  return file_->value(of_store("person")).toString();
}

QString Settings::person_name() const {
  return file_->value(of_store("person_name")).toString();
}

void Settings::set_person(const QString& id, const QString& name) {
  keep(of_store("path"), store_path_);
  keep(of_store("person"), id);
  keep(of_store("person_name"), name);
}

QString Settings::camera_folder() const {
  return file_->value(of_store("camera_folder")).toString();
}

void Settings::set_camera_folder(const QString& folder) {
  keep(of_store("camera_folder"), folder);
}

QString Settings::backup_folder() const {
  const QString set = file_->value(of_store("backup_folder")).toString();
  return set.isEmpty() ? QFileInfo(store_path_).absolutePath() + QStringLiteral("/backups") : set;
}

void Settings::set_backup_folder(const QString& folder) {
  keep(of_store("backup_folder"), folder);
}

bool Settings::tone() const {
  return file_->value(of_store("tone"), false).toBool();
}

void Settings::set_tone(bool on) {
  keep(of_store("tone"), on);
}

std::optional<LastBackup> Settings::last_backup() const {
  if (!file_->contains(of_store("backup_at_ms"))) {
    return std::nullopt;
  }
  return LastBackup{file_->value(of_store("backup_at_ms")).toLongLong(),
                    file_->value(of_store("backup_file")).toString()};
}

void Settings::set_last_backup(const LastBackup& backup) {
  keep(of_store("backup_at_ms"), static_cast<qlonglong>(backup.at_ms));
  keep(of_store("backup_file"), backup.file);
}

}  // namespace shimwright::shell
