#include "register_sections.h"

#include <QCoreApplication>
#include <QLayoutItem>
#include <algorithm>
#include <memory>

#include "shimwright/sheet/job_sheet.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "value_table.h"

namespace shimwright::workshop {

namespace {

using widgets::child_of;
using widgets::qt;

struct RegisterWords {
  Q_DECLARE_TR_FUNCTIONS(workshop)
};

constexpr int heading_beside_mark = 480;  // from this width on it wraps

/// What keeps a list from being read stands where the list would.
void add_refusal(widgets::Scroll& page, const Error& error) {
  page.column()->addWidget(child_of<widgets::Text>(page.content(), widgets::say(error), "error"));
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
