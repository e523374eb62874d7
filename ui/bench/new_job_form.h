#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QWidget>

#include "earlier_jobs.h"
#include "new_job_fields.h"
#include "shimwright/job/command.h"
#include "shimwright/store/ids.h"
#include "vehicle_entry.h"

class QBoxLayout;
class QLabel;
class QVBoxLayout;

namespace shimwright::widgets {
class NumberField;
class Text;
class WordField;
}  // namespace shimwright::widgets

namespace shimwright::bench {

/// The fields of a new job in the order they are asked.
class NewJobForm : public QWidget {
  Q_OBJECT

 public:
  explicit NewJobForm(QWidget* parent = nullptr);

  void clear(int this_year, const std::vector<store::SheetIssue>& specs,
             const std::vector<store::SheetIssue>& job_sheets);
  [[nodiscard]] VehicleEntry& vehicle() const { return *vehicle_; }
  [[nodiscard]] std::optional<std::string> spec_hash() const { return gearbox_->chosen(); }
  /// Asked only where the workshop has several.
  [[nodiscard]] std::optional<std::string> sheet_hash() const { return job_sheet_->chosen(); }
  /// Nothing while it is blank or cannot be read.
  [[nodiscard]] std::optional<quantity::TypedNumber> odometer() const;
  /// Something was typed that was not filled in by the program.
  [[nodiscard]] bool has_typed() const;
  [[nodiscard]] job::OpenJob command(const std::string& number, store::IdSource& ids, std::int64_t at_ms) const;

  /// Fills what is blank from an earlier job of the vehicle and names what was filled.
  QStringList fill_from(const EarlierJob& earlier);
  /// Takes back what was filled in and not changed since.
  void take_back_filled();

  /// Puts the sentence at its field and the focus there. False: it belongs to no field.
  bool show_refusal(const Error& error);
  void ask_for_gearbox();

 signals:
  void vehicle_edited();
  void odometer_edited();
  void finished();  ///< Enter in the last field

 private:
  struct Filled {
    QLineEdit* edit = nullptr;
    QString text;
  };

  [[nodiscard]] QWidget* field_of(const std::string& place);
  void build_first_rows(QVBoxLayout* column);
  void build_gearbox(QVBoxLayout* column);
  void build_last_row(QVBoxLayout* column);
  void chain();
  void fill(QStringList& names, widgets::WordField* field, const std::string& text, const QString& name);
  void show_gearbox_state(const QString& fault);

  VehicleEntry* vehicle_ = nullptr;
  widgets::WordField* plate_ = nullptr;
  widgets::NumberField* odometer_ = nullptr;
  FreeText* complaint_ = nullptr;
  GearboxChoice* gearbox_ = nullptr;
  GearboxChoice* job_sheet_ = nullptr;
  widgets::Text* job_sheet_title_ = nullptr;
  QLabel* demonstration_ = nullptr;
  widgets::Text* gearbox_fault_ = nullptr;
  widgets::WordField* serial_ = nullptr;
  widgets::WordField* build_date_ = nullptr;
  widgets::WordField* reference_ = nullptr;
  widgets::Text* build_date_fault_ = nullptr;
  std::vector<Filled> filled_;
  bool gearbox_filled_ = false;
};

}  // namespace shimwright::bench
