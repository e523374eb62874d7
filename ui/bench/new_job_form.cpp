#include "new_job_form.h"

#include <QLineEdit>
#include <algorithm>
#include <map>

#include "shimwright/bench/step_page.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/number_field.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

namespace {

constexpr int complaint_height = 76;
constexpr int number_field_height = 56;

widgets::WordField* word_field(QWidget* parent, QBoxLayout* row, const QString& title, const char* name) {
  auto* field = widgets::child_of<widgets::WordField>(parent, title);
  field->edit()->setObjectName(QLatin1String(name));
  row->addWidget(field, 1, Qt::AlignTop);
  return field;
}

void move_on(QLineEdit* edit) {
  edit->setFocus(Qt::TabFocusReason);
}

std::optional<job::PrivateText> private_unless_blank(store::IdSource& ids, const std::string& text,
                                                     std::int64_t at_ms) {
  return text.empty() ? std::nullopt : std::optional(ids.private_text(text, at_ms));
}

}  // namespace

NewJobForm::NewJobForm(QWidget* parent) : QWidget(parent) {
  auto* column = widgets::lay<QVBoxLayout>(this, 10);
  build_first_rows(column);
  build_gearbox(column);
  build_last_row(column);
  chain();
}

void NewJobForm::build_first_rows(QVBoxLayout* column) {
  vehicle_ = widgets::child_of<VehicleEntry>(this);
  column->addWidget(vehicle_);
  auto* row = widgets::lay_in<QHBoxLayout>(column, 14);
  plate_ = word_field(this, row, tr("Plate"), "field-plate");
  plate_->edit()->setMinimumHeight(number_field_height);
  odometer_ = widgets::child_of<widgets::NumberField>(this, tr("Odometer"), quantity::Unit::kilometre);
  odometer_->edit()->setObjectName(QStringLiteral("field-odometer"));
  odometer_->set_may_be_blank(true);
  row->addWidget(odometer_, 1, Qt::AlignTop);
  auto* words = widgets::lay_in<QVBoxLayout>(column, 4);
  const QString title = tr("Complaint, in the customer's words");
  words->addWidget(widgets::child_of<widgets::Text>(this, title, "small"));
  complaint_ = widgets::child_of<FreeText>(this);
  complaint_->setObjectName(QStringLiteral("field-complaint"));
  complaint_->setAccessibleName(title);
  complaint_->setFixedHeight(complaint_height);
  words->addWidget(complaint_);
}

void NewJobForm::build_gearbox(QVBoxLayout* column) {
  auto* block = widgets::lay_in<QVBoxLayout>(column, 4);
  auto* head = widgets::lay_in<QHBoxLayout>(block, 12);
  const QString title = tr("Gearbox type and spec sheet");
  head->addWidget(widgets::child_of<widgets::Text>(this, title, "small"), 1);
  demonstration_ = widgets::demonstration_mark(this);
  QSizePolicy kept = demonstration_->sizePolicy();
  kept.setRetainSizeWhenHidden(true);
  demonstration_->setSizePolicy(kept);
  head->addWidget(demonstration_);
  gearbox_ = widgets::child_of<GearboxChoice>(this);
  gearbox_->setObjectName(QStringLiteral("field-gearbox"));
  gearbox_->setAccessibleName(title);
  block->addWidget(gearbox_);
  gearbox_fault_ = widgets::child_of<widgets::Text>(this, QString(), "error");
  block->addWidget(gearbox_fault_);
  const QString sheet_title = tr("Job sheet");
  job_sheet_title_ = widgets::child_of<widgets::Text>(this, sheet_title, "small");
  block->addWidget(job_sheet_title_);
  job_sheet_ = widgets::child_of<GearboxChoice>(this);
  job_sheet_->setObjectName(QStringLiteral("field-job-sheet"));
  job_sheet_->setAccessibleName(sheet_title);
  block->addWidget(job_sheet_);
  connect(gearbox_, &QComboBox::currentIndexChanged, this, [this] {
    gearbox_filled_ = false;
    show_gearbox_state({});
  });
  show_gearbox_state({});
}

void NewJobForm::build_last_row(QVBoxLayout* column) {
  auto* row = widgets::lay_in<QHBoxLayout>(column, 14);
  serial_ = word_field(this, row, tr("Gearbox serial"), "field-gearbox-serial");
  build_date_ = word_field(this, row, tr("Build date"), "field-build-date");
  build_date_->edit()->setPlaceholderText(tr("year-month-day"));
  reference_ = word_field(this, row, tr("Customer reference"), "field-customer-reference");
  build_date_fault_ = widgets::child_of<widgets::Text>(this, QString(), "error");
  build_date_fault_->hide();
  column->addWidget(build_date_fault_);
  connect(build_date_, &widgets::WordField::edited, build_date_fault_, &QWidget::hide);
}

void NewJobForm::chain() {
  connect(vehicle_, &VehicleEntry::edited, this, &NewJobForm::vehicle_edited);
  connect(odometer_, &widgets::NumberField::edited, this, &NewJobForm::odometer_edited);
  connect(vehicle_, &VehicleEntry::entered, this, [this] { move_on(plate_->edit()); });
  connect(plate_, &widgets::WordField::entered, this, [this] { odometer_->take_focus(); });
  connect(odometer_, &widgets::NumberField::entered, this, [this] { complaint_->setFocus(Qt::TabFocusReason); });
  connect(complaint_, &FreeText::entered, this, [this] { gearbox_->setFocus(Qt::TabFocusReason); });
  connect(gearbox_, &GearboxChoice::entered, this,
          [this] { job_sheet_->isVisible() ? job_sheet_->setFocus(Qt::TabFocusReason) : move_on(serial_->edit()); });
  connect(job_sheet_, &GearboxChoice::entered, this, [this] { move_on(serial_->edit()); });
  connect(serial_, &widgets::WordField::entered, this, [this] { move_on(build_date_->edit()); });
  connect(build_date_, &widgets::WordField::entered, this, [this] { move_on(reference_->edit()); });
  connect(reference_, &widgets::WordField::entered, this, &NewJobForm::finished);
}

void NewJobForm::clear(int this_year, const std::vector<store::SheetIssue>& specs,
                       const std::vector<store::SheetIssue>& job_sheets) {
  filled_.clear();
  for (widgets::WordField* each : {plate_, serial_, build_date_, reference_}) {
    each->set_text({});
  }
  odometer_->set_text({});
  complaint_->clear();
  gearbox_->set_issues(specs);
  job_sheet_->set_job_sheets(job_sheets);
  for (QWidget* each : {static_cast<QWidget*>(job_sheet_title_), static_cast<QWidget*>(job_sheet_)}) {
    each->setVisible(job_sheets.size() > 1);
  }
  gearbox_filled_ = false;
  show_gearbox_state(specs.empty() ? tr("There is no spec sheet in this workshop: add one under Workshop.")
                                   : QString());
  build_date_fault_->hide();
  vehicle_->clear(this_year);
}

std::optional<quantity::TypedNumber> NewJobForm::odometer() const {
  const auto read = odometer_->number();
  return read ? std::optional(*read) : std::nullopt;
}

bool NewJobForm::has_typed() const {
  const auto is_typed = [this](const QLineEdit* edit) {
    const bool filled = std::any_of(filled_.begin(), filled_.end(),
                                    [&](const Filled& each) { return each.edit == edit && each.text == edit->text(); });
    return !filled && !edit->text().trimmed().isEmpty();
  };
  const std::vector<const QLineEdit*> edits{plate_->edit(), serial_->edit(), build_date_->edit(), reference_->edit()};
  return !vehicle_->typed().empty() || !odometer_->blank() || !complaint_->text().empty() ||
         std::any_of(edits.begin(), edits.end(), is_typed);
}

job::OpenJob NewJobForm::command(const std::string& number, store::IdSource& ids, std::int64_t at_ms) const {
  job::OpenJob open;
  open.number = number;
  open.vehicle_typed = vehicle_->typed();
  open.chassis_reason = vehicle_->chassis_reason();
  open.plate = private_unless_blank(ids, plate_->text(), at_ms);
  open.customer_reference = private_unless_blank(ids, reference_->text(), at_ms);
  open.complaint = private_unless_blank(ids, complaint_->text(), at_ms);
  open.odometer = odometer_->text();
  open.gearbox_serial = serial_->text();
  open.build_date = build_date_->text();
  return open;
}

void NewJobForm::fill(QStringList& names, widgets::WordField* field, const std::string& text, const QString& name) {
  if (!text.empty() && field->text().empty()) {
    field->set_text(text);
    filled_.push_back({field->edit(), field->edit()->text()});
    names.append(name);
  }
}

QStringList NewJobForm::fill_from(const EarlierJob& earlier) {
  QStringList names;
  fill(names, plate_, earlier.plate.value_or(std::string()), tr("plate"));
  if (!gearbox_->chosen() && gearbox_->choose_gearbox(earlier.gearbox)) {
    gearbox_filled_ = true;
    names.append(tr("gearbox type"));
  }
  // The build date belongs to the gearbox of that serial.
  const bool same_gearbox = serial_->text().empty() || serial_->text() == earlier.gearbox_serial;
  fill(names, serial_, earlier.gearbox_serial, tr("gearbox serial"));
  if (same_gearbox) {
    fill(names, build_date_, earlier.build_date, tr("build date"));
  }
  return names;
}

void NewJobForm::take_back_filled() {
  for (const Filled& each : filled_) {
    if (each.edit->text() == each.text) {
      each.edit->clear();
    }
  }
  filled_.clear();
  if (gearbox_filled_) {
    gearbox_->choose_none();
    gearbox_filled_ = false;
  }
}

bool NewJobForm::show_refusal(const Error& error) {
  if (error.place == "vehicle") {
    vehicle_->show_refusal(error);
    vehicle_->take_focus();
  } else if (error.place == "odometer") {
    odometer_->set_fault(widgets::say(error));
    odometer_->take_focus();
  } else if (error.place == "build_date") {
    build_date_fault_->setText(widgets::say(error));
    build_date_fault_->show();
    build_date_->edit()->setFocus(Qt::OtherFocusReason);
  } else {
    if (QWidget* field = field_of(error.place); field != nullptr) {
      field->setFocus(Qt::OtherFocusReason);
    }
    return false;
  }
  return true;
}

QWidget* NewJobForm::field_of(const std::string& place) {
  const std::map<std::string, QWidget*> fields = {{"plate", plate_->edit()},
                                                  {"complaint", complaint_},
                                                  {"gearbox_serial", serial_->edit()},
                                                  {"customer_reference", reference_->edit()}};
  const auto found = fields.find(place);
  return found == fields.end() ? nullptr : found->second;
}

void NewJobForm::ask_for_gearbox() {
  show_gearbox_state(tr("Choose the gearbox type: its spec sheet holds the limits of this job."));
  gearbox_->setFocus(Qt::OtherFocusReason);
}

void NewJobForm::show_gearbox_state(const QString& fault) {
  demonstration_->setVisible(gearbox_->chosen_is_demonstration());
  gearbox_fault_->setText(fault);
  gearbox_fault_->setVisible(!fault.isEmpty());
}

}  // namespace shimwright::bench
