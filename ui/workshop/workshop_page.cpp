#include "shimwright/workshop/workshop_page.h"

#include <QKeyEvent>
#include <QStackedWidget>
#include <algorithm>
#include <utility>

#include "data_section.h"
#include "figures_section.h"
#include "instruments_section.h"
#include "own_section.h"
#include "people_section.h"
#include "register_sections.h"
#include "section_button.h"
#include "sheets_section.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "trays_section.h"

namespace shimwright::workshop {

using widgets::child_of;
using widgets::Scroll;

namespace {

constexpr int room_for_bar = 10;

}  // namespace

WorkshopPage::WorkshopPage(store::Store& store, WorkshopWays ways, QWidget* parent)
    : QWidget(parent),
      store_(&store),
      ways_(std::move(ways)),
      list_(child_of<Scroll>(this)),
      pages_(child_of<QStackedWidget>(this)) {
  auto* row = widgets::lay<QHBoxLayout>(this);
  widgets::set_part(list_, "bar-left");
  list_->setAttribute(Qt::WA_StyledBackground);
  list_->column()->setContentsMargins(0, 6, 0, 6);
  list_->column()->setSpacing(0);
  row->addWidget(list_);
  row->addWidget(pages_, 1);
  add_sheets(tr("Spec sheets"), QStringLiteral("spec-sheets"), sheet::SheetKind::spec_sheet);
  add_sheets(tr("Job sheets"), QStringLiteral("job-sheets"), sheet::SheetKind::job_sheet);
  trays_ = add_register<TraysSection>(tr("Shim trays"), QStringLiteral("trays"));
  instruments_ = add_register<InstrumentsSection>(tr("Instruments"), QStringLiteral("instruments"));
  people_ = add_register<PeopleSection>(tr("People"), QStringLiteral("people"));
  own_ = add_register<OwnSection>(tr("This workshop"), QStringLiteral("own"));
  connect(people_, &PeopleSection::changed, this, &WorkshopPage::people_changed);
  auto* figures = add_register<FiguresSection>(tr("Figures"), QStringLiteral("figures"));
  connect(figures, &FiguresSection::jobs_wanted, this, &WorkshopPage::jobs_wanted);
  add_section(tr("Data and backup"), QStringLiteral("data"), [this](Scroll&) { data_->refresh(); });
  data_ = child_of<DataSection>(sections_.back().page->content(), *store_, ways_);
  sections_.back().page->column()->addWidget(data_);
  connect(data_, &DataSection::backed_up, this, &WorkshopPage::backed_up);
  connect(data_, &DataSection::restore_wanted, this, &WorkshopPage::restore_wanted);
  list_->column()->addStretch(1);
  // As wide as its longest word, and its bar where it scrolls.
  list_->setFixedWidth(list_->content()->minimumSizeHint().width() + room_for_bar);
  choose(0);
}

void WorkshopPage::add_section(const QString& title, const QString& name, std::function<void(Scroll&)> fill) {
  auto* button = child_of<SectionButton>(list_->content(), title);
  button->setObjectName(QStringLiteral("section-%1").arg(name));
  list_->column()->addWidget(button);
  auto* page = child_of<Scroll>(pages_);
  page->let_scroll_sideways();
  page->setObjectName(QStringLiteral("page-%1").arg(name));
  page->column()->setContentsMargins(24, 14, 24, 20);
  pages_->addWidget(page);
  const std::size_t at = sections_.size();
  connect(button, &QAbstractButton::clicked, this, [this, at] { choose(at); });
  connect(button, &SectionButton::wants_neighbour, this, [this, at](int step) {
    const int wanted = static_cast<int>(at) + step;
    if (wanted >= 0 && wanted < static_cast<int>(sections_.size())) {
      SectionButton* const neighbour = sections_[static_cast<std::size_t>(wanted)].button;
      neighbour->setFocus(Qt::TabFocusReason);
      list_->show_child(neighbour);
    }
  });
  sections_.push_back({button, page, [page, fill = std::move(fill)] { fill(*page); }, nullptr});
}

template <class Section>
Section* WorkshopPage::add_register(const QString& title, const QString& name) {
  // Filled only when it is looked at.
  add_section(title, name, [](Scroll& page) {
    if (auto* section = page.findChild<Section*>()) {
      section->refresh();
    }
  });
  Scroll* page = sections_.back().page;
  auto* section = child_of<Section>(page->content(), *store_, ways_);
  page->column()->addWidget(section);
  page->column()->addStretch(1);
  return section;
}

bool WorkshopPage::has_unsent() const {
  const auto draft_is_unsent = [](const Section& each) { return each.sheets != nullptr && each.sheets->has_unsent(); };
  return std::any_of(sections_.begin(), sections_.end(), draft_is_unsent) || trays_->has_unsent() ||
         instruments_->has_unsent() || people_->has_unsent() || own_->has_unsent();
}

void WorkshopPage::choose(std::size_t section) {
  chosen_ = section;
  for (std::size_t at = 0; at < sections_.size(); ++at) {
    sections_[at].button->setChecked(at == section);
  }
  const Section& chosen = sections_[section];
  if (const QWidget* at = focusWidget(); at != nullptr && list_->isAncestorOf(at)) {
    chosen.button->setFocus(Qt::OtherFocusReason);
  }
  list_->show_child(chosen.button);
  chosen.fill();
  pages_->setCurrentWidget(chosen.page);
  chosen.page->show_top();
}

// No proxy: the section changes while the page is shown.
void WorkshopPage::focusInEvent(QFocusEvent* event) {
  sections_[chosen_].button->setFocus(event->reason());
}

void WorkshopPage::refresh() {
  // Only what is seen: the others are read when they are chosen.
  sections_[chosen_].fill();
}

void WorkshopPage::set_last_backup(std::int64_t at_ms, const QString& file) {
  data_->set_last_backup(at_ms, file);
}

void WorkshopPage::add_sheets(const QString& title, const QString& name, sheet::SheetKind kind) {
  const std::size_t at = sections_.size();
  add_section(title, name, [this, at](Scroll& /*page*/) { sections_[at].sheets->refresh(); });
  Section& section = sections_.back();
  section.sheets = child_of<SheetsSection>(this, *store_, ways_, kind, *section.page);
  connect(section.sheets, &SheetsSection::left_sheet, section.button,
          [button = section.button] { button->setFocus(); });
}

void WorkshopPage::keyPressEvent(QKeyEvent* event) {
  if (!sections_[chosen_].page->scroll_by(event->key())) {
    QWidget::keyPressEvent(event);
  }
}

}  // namespace shimwright::workshop
