#include "register_sections.h"

#include <QCoreApplication>
#include <QDate>
#include <QLayoutItem>
#include <QLocale>
#include <algorithm>
#include <memory>

#include "shimwright/quantity/typed_number.h"
#include "shimwright/sheet/job_sheet.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "spec_values.h"
#include "value_table.h"

namespace shimwright::workshop {

namespace {

using widgets::child_of;
using widgets::qt;

struct RegisterWords {
  Q_DECLARE_TR_FUNCTIONS(workshop)
};

constexpr int heading_beside_mark = 480;  // from this width on it wraps

/// Number and unit stay on one line.
QString unbroken(QString text) {
  return text.replace(QLatin1Char(' '), QChar::Nbsp);
}

QString day_in_words(const std::string& iso) {
  const QDate day = QDate::fromString(qt(iso), Qt::ISODate);
  return day.isValid() ? unbroken(QLocale().toString(day, RegisterWords::tr("d MMM yyyy"))) : qt(iso);
}

/// What keeps a list from being read stands where the list would.
void add_refusal(widgets::Scroll& page, const Error& error) {
  page.column()->addWidget(child_of<widgets::Text>(page.content(), widgets::say(error), "error"));
}

Cell calibration_cell(const job::Instrument& instrument, const job::Moment& now) {
  if (!instrument.calibrated_to) {
    return {RegisterWords::tr("no date kept"), "soft"};
  }
  if (job::calibration_overdue(instrument, now)) {
    return {RegisterWords::tr("overdue"), "bad", widgets::Mark::held};
  }
  return {RegisterWords::tr("in date"), nullptr, widgets::Mark::within};
}

std::vector<Cell> instrument_cells(const job::Instrument& instrument, const job::Moment& now) {
  const quantity::Unit unit = quantity::default_unit(sheet::dimension_read_by(instrument.kind));
  const auto amount = [unit](std::int64_t base) { return unbroken(qt(quantity::shortest_text(base, unit))); };
  return {qt(instrument.name),
          widgets::say(Message{job::instrument_word(instrument.kind), {}}),
          amount(instrument.resolution),
          QStringLiteral("±") + QChar::Nbsp + amount(instrument.permissible_error),
          instrument.calibrated_to ? day_in_words(*instrument.calibrated_to) : QStringLiteral("–"),
          calibration_cell(instrument, now)};
}

void add_tray(widgets::Scroll& page, const store::Tray& tray) {
  add_heading(page, qt(tray.name));
  auto* table =
      child_of<ValueTable>(page.content(), std::vector<Column>{{RegisterWords::tr("Marked"), 1, false},
                                                               {RegisterWords::tr("Measured, mm"), 1, true},
                                                               {RegisterWords::tr("Standard uncertainty, mm"), 1, true},
                                                               {RegisterWords::tr("In the tray"), 1, true}});
  table->setObjectName(QStringLiteral("tray-%1").arg(qt(tray.name)));
  for (const job::TrayShim& each : tray.shims) {
    const QString count = each.count ? QString::number(*each.count) : RegisterWords::tr("not counted");
    table->add_row({Cell(qt(each.id), "strong"), qt(quantity::millimetre_text(each.thickness, 3)),
                    QString::number(each.u_mm, 'g', 6), count});
  }
  page.column()->addWidget(table);
}

void add_job_sheet(widgets::Scroll& page, const store::SheetIssue& issue,
                   const std::function<void(const sheet::JobSheet&)>& save_blank) {
  const auto sheet = sheet::read_job_sheet(issue.json);
  if (!sheet) {
    add_heading(page, qt(issue.name));
    add_refusal(page, sheet.error());
    return;
  }
  add_heading(page, RegisterWords::tr("%1, issue %2").arg(qt(sheet->title.in_english())).arg(sheet->issue),
              sheet->demonstration);
  add_text(page, RegisterWords::tr("%1 stages, %2 steps; short name %3")
                     .arg(sheet->stages.size())
                     .arg(sheet->steps().size())
                     .arg(qt(sheet->name)));
  auto* table = child_of<ValueTable>(page.content(), std::vector<Column>{{RegisterWords::tr("Stage"), 3, false},
                                                                         {RegisterWords::tr("Steps"), 1, true},
                                                                         {RegisterWords::tr("Hold points"), 1, true}});
  for (const sheet::Stage& stage : sheet->stages) {
    const auto holds =
        std::count_if(stage.steps.begin(), stage.steps.end(), [](const sheet::Step& step) { return step.hold_point; });
    table->add_row({qt(stage.title.in_english()), QString::number(stage.steps.size()), QString::number(holds)});
  }
  page.column()->addWidget(table);
  auto* save = child_of<widgets::Button>(page.content(), RegisterWords::tr("Save as a blank sheet of paper"));
  save->setObjectName(QStringLiteral("button-blank-%1").arg(qt(sheet->name)));
  page.column()->addWidget(save, 0, Qt::AlignLeft);
  QObject::connect(save, &widgets::Button::clicked, save, [save_blank, content = *sheet] { save_blank(content); });
}

}  // namespace

void clear(widgets::Scroll& page) {
  // Laid out at once when it is shown again, instead of piece by piece under the eyes.
  page.content()->hide();
  while (const auto item = std::unique_ptr<QLayoutItem>(page.column()->takeAt(0))) {
    if (QWidget* const widget = item->widget()) {
      widget->hide();
      widget->deleteLater();
    }
  }
}

void add_heading(widgets::Scroll& page, const QString& text, bool demonstration) {
  auto* line = child_of<QWidget>(page.content());
  auto* row = widgets::lay<QHBoxLayout>(line, 14);
  row->setContentsMargins(0, 8, 0, 0);
  auto* heading = child_of<widgets::Text>(line, text, "heading");
  row->addWidget(heading, demonstration ? 0 : 1);
  if (demonstration) {
    heading->ensurePolished();
    heading->setMinimumWidth(std::min(heading_beside_mark, heading->fontMetrics().horizontalAdvance(text) + 4));
    row->addWidget(widgets::demonstration_mark(line));
    row->addStretch(1);
  }
  page.column()->addWidget(line);
}

void add_text(widgets::Scroll& page, const QString& text) {
  page.column()->addWidget(child_of<widgets::Text>(page.content(), text, "soft"));
}

void end_page(widgets::Scroll& page) {
  page.column()->addStretch(1);
  page.content()->show();
}

void fill_people(widgets::Scroll& page, store::Registers& registers) {
  clear(page);
  add_heading(page, RegisterWords::tr("People"));
  const auto persons = registers.persons();
  if (!persons) {
    add_refusal(page, persons.error());
  } else {
    auto* table =
        child_of<ValueTable>(page.content(), std::vector<Column>{{RegisterWords::tr("Initials"), 1, false},
                                                                 {RegisterWords::tr("Name"), 3, false},
                                                                 {RegisterWords::tr("Signs with"), 2, false},
                                                                 {RegisterWords::tr("At work here"), 1, false}});
    for (const store::Person& each : *persons) {
      table->add_row({Cell(qt(each.initials), "strong"), qt(each.name),
                      each.pin_hash ? RegisterWords::tr("a PIN") : RegisterWords::tr("no PIN yet"),
                      each.active ? RegisterWords::tr("yes") : RegisterWords::tr("no longer")});
    }
    page.column()->addWidget(table);
  }
  end_page(page);
}

void fill_instruments(widgets::Scroll& page, store::Registers& registers, const job::Moment& now) {
  clear(page);
  add_heading(page, RegisterWords::tr("Instruments"));
  const auto instruments = registers.instruments();
  if (!instruments) {
    add_refusal(page, instruments.error());
  } else {
    auto* table =
        child_of<ValueTable>(page.content(), std::vector<Column>{{RegisterWords::tr("Name"), 4, false},
                                                                 {RegisterWords::tr("Kind"), 4, false},
                                                                 {RegisterWords::tr("Resolution"), 2, true},
                                                                 {RegisterWords::tr("Permissible error"), 3, true},
                                                                 {RegisterWords::tr("Calibrated to"), 3, false},
                                                                 {RegisterWords::tr("Calibration"), 3, false}});
    for (const job::Instrument& each : *instruments) {
      table->add_row(instrument_cells(each, now));
    }
    page.column()->addWidget(table);
  }
  end_page(page);
}

void fill_trays(widgets::Scroll& page, store::Registers& registers) {
  clear(page);
  const auto trays = registers.trays();
  if (!trays) {
    add_refusal(page, trays.error());
  } else {
    if (trays->empty()) {
      add_heading(page, RegisterWords::tr("Shim trays"));
      add_text(page, RegisterWords::tr("No tray is kept here yet: jobs take the sizes of their spec sheet."));
    }
    for (const store::Tray& each : *trays) {
      add_tray(page, each);
    }
  }
  end_page(page);
}

void fill_job_sheets(widgets::Scroll& page, store::Registers& registers,
                     const std::function<void(const sheet::JobSheet&)>& save_blank) {
  clear(page);
  const auto sheets = registers.job_sheets();
  if (!sheets) {
    add_refusal(page, sheets.error());
  } else {
    for (const store::SheetIssue& each : *sheets) {
      add_job_sheet(page, each, save_blank);
    }
  }
  end_page(page);
}

}  // namespace shimwright::workshop
