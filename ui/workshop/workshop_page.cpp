#include "shimwright/workshop/workshop_page.h"

#include <QKeyEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <utility>

#include "blank_sheet.h"
#include "data_section.h"
#include "register_sections.h"
#include "section_button.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "spec_sections.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::Scroll;

WorkshopPage::WorkshopPage(store::Store& store, WorkshopWays ways, QWidget* parent)
    : QWidget(parent),
      store_(&store),
      ways_(std::move(ways)),
      list_(child_of<QWidget>(this)),
      pages_(child_of<QStackedWidget>(this)) {
  auto* row = widgets::lay<QHBoxLayout>(this);
  widgets::set_part(list_, "bar-left");
  list_->setAttribute(Qt::WA_StyledBackground);
  list_->setFixedWidth(214);
  auto* list = widgets::lay<QVBoxLayout>(list_);
  list->setContentsMargins(0, 6, 0, 6);
  row->addWidget(list_);
  row->addWidget(pages_, 1);
  add_section(tr("Spec sheets"), QStringLiteral("spec-sheets"), [this](Scroll& page) { show_spec_sheets(page); });
  add_section(tr("Job sheets"), QStringLiteral("job-sheets"), [this](Scroll& page) { show_job_sheets(page); });
  add_section(tr("Shim trays"), QStringLiteral("trays"),
              [this](Scroll& page) { fill_trays(page, store_->registers()); });
  add_section(tr("Instruments"), QStringLiteral("instruments"),
              [this](Scroll& page) { fill_instruments(page, store_->registers(), ways_.clock()); });
  add_section(tr("People"), QStringLiteral("people"), [this](Scroll& page) { fill_people(page, store_->registers()); });
  add_section(tr("Data and backup"), QStringLiteral("data"), [this](Scroll&) { data_->refresh(); });
  data_ = child_of<DataSection>(sections_.back().page->content(), *store_, ways_);
  sections_.back().page->column()->addWidget(data_);
  connect(data_, &DataSection::backed_up, this, &WorkshopPage::backed_up);
  connect(data_, &DataSection::restore_wanted, this, &WorkshopPage::restore_wanted);
  list->addStretch(1);
  setFocusProxy(sections_.front().button);
  choose(0);
}

void WorkshopPage::add_section(const QString& title, const QString& name, std::function<void(Scroll&)> fill) {
  auto* button = child_of<SectionButton>(list_, title);
  button->setObjectName(QStringLiteral("section-%1").arg(name));
  list_->layout()->addWidget(button);
  auto* page = child_of<Scroll>(pages_);
  page->setObjectName(QStringLiteral("page-%1").arg(name));
  page->column()->setContentsMargins(24, 14, 24, 20);
  pages_->addWidget(page);
  const std::size_t at = sections_.size();
  connect(button, &QAbstractButton::clicked, this, [this, at] { choose(at); });
  connect(button, &SectionButton::wants_neighbour, this, [this, at](int step) {
    const int wanted = static_cast<int>(at) + step;
    if (wanted >= 0 && wanted < static_cast<int>(sections_.size())) {
      sections_[static_cast<std::size_t>(wanted)].button->setFocus(Qt::TabFocusReason);
    }
  });
  sections_.push_back({button, page, [page, fill = std::move(fill)] { fill(*page); }});
}

void WorkshopPage::choose(std::size_t section) {
  chosen_ = section;
  for (std::size_t at = 0; at < sections_.size(); ++at) {
    sections_[at].button->setChecked(at == section);
  }
  const Section& chosen = sections_[section];
  chosen.fill();
  pages_->setCurrentWidget(chosen.page);
  chosen.page->show_top();
}

void WorkshopPage::refresh() {
  // Only what is seen: the others are read when they are chosen.
  sections_[chosen_].fill();
}

void WorkshopPage::set_last_backup(std::int64_t at_ms, const QString& file) {
  data_->set_last_backup(at_ms, file);
}

void WorkshopPage::show_spec_sheets(Scroll& page) {
  fill_spec_sheets(page, store_->registers(), [this, &page](const std::string& hash) { show_spec_sheet(page, hash); });
}

void WorkshopPage::show_job_sheets(Scroll& page) {
  fill_job_sheets(page, store_->registers(), [this, &page](const sheet::JobSheet& sheet) {
    const QString file =
        ways_.choose_file ? ways_.choose_file(widgets::qt(sheet.name) + QStringLiteral(".pdf")) : QString();
    if (file.isEmpty()) {
      return;
    }
    const auto saved = save_blank_sheet(*store_, sheet, widgets::plain(file), ways_.paper);
    auto* told = page.content()->findChild<widgets::Text*>(QStringLiteral("blank-sheet-told"));
    if (told == nullptr) {
      told = child_of<widgets::Text>(page.content(), QString());
      told->setObjectName(QStringLiteral("blank-sheet-told"));
      page.column()->insertWidget(page.column()->count() - 1, told);
    }
    told->setText(saved ? tr("Written: %1").arg(file) : widgets::say(saved.error()));
    widgets::set_part(told, saved ? "strong" : "error");
    told->show();
    page.show_child(told);
  });
}

void WorkshopPage::show_spec_sheet(Scroll& page, const std::string& hash) {
  fill_spec_sheet(page, store_->registers(), hash, [this, &page] {
    show_spec_sheets(page);
    page.show_top();
    sections_[chosen_].button->setFocus();
  });
  page.show_top();
  if (auto* back = page.findChild<QWidget*>(QStringLiteral("button-all-spec-sheets"))) {
    back->setFocus();
  }
}

void WorkshopPage::keyPressEvent(QKeyEvent* event) {
  const auto* area = sections_[chosen_].page->findChild<QScrollArea*>();
  QScrollBar* const scroll = area->verticalScrollBar();
  switch (event->key()) {
    case Qt::Key_PageUp:
      scroll->setValue(scroll->sliderPosition() - scroll->pageStep());
      break;
    case Qt::Key_PageDown:
      scroll->setValue(scroll->sliderPosition() + scroll->pageStep());
      break;
    case Qt::Key_Home:
      scroll->setValue(scroll->minimum());
      break;
    case Qt::Key_End:
      scroll->setValue(scroll->maximum());
      break;
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace shimwright::workshop
