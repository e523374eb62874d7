#include "shimwright/shell/first_page.h"

#include <QDir>
#include <QLineEdit>

#include "shimwright/shell/start_choices.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::shell {

FirstPage::FirstPage(QWidget* parent) : QWidget(parent) {
  auto* outer = widgets::lay<QVBoxLayout>(this);
  auto* scroll = widgets::child_of<widgets::Scroll>(this);
  outer->addWidget(scroll);
  auto* column = scroll->column();
  column->setContentsMargins(28, 20, 28, 20);
  column->addWidget(widgets::child_of<widgets::Text>(scroll->content(), tr("Shimwright"), "title"));
  column->addWidget(widgets::child_of<widgets::Text>(
      scroll->content(), tr("Shims, floats and records for the dry clutch pack of a dual-clutch gearbox.")));
  fault_ = widgets::child_of<widgets::Text>(scroll->content(), QString(), "error");
  fault_->setObjectName(QStringLiteral("start-fault"));
  fault_->hide();
  column->addWidget(fault_);
  // First of all: who does not read the language has to find it without scrolling.
  add_choice(tr("Language of the window"), language_choices(), scroll->content(), column);
  auto* row = widgets::lay_in<widgets::TurningRow>(column, 18);
  build_demo(row);
  build_own(row);
  build_choices(column);
  column->addStretch();
}

void FirstPage::build_demo(QBoxLayout* row) {
  demo_ = widgets::child_of<widgets::Box>(
      row->parentWidget(), tr("To look around"),
      tr("A made-up workshop with jobs in work. It lies in a folder of its own and never mixes with yours."), "card");
  demo_->body()->setSpacing(14);
  try_ = widgets::child_of<widgets::Button>(demo_, tr("Try the demonstration workshop"));
  try_->setObjectName(QStringLiteral("button-demo"));
  connect(try_, &QPushButton::clicked, this, &FirstPage::demo_wanted);
  demo_->body()->addWidget(try_, 0, Qt::AlignLeft);
  demo_->body()->addWidget(widgets::demonstration_mark(demo_), 0, Qt::AlignLeft);
  demo_->body()->addStretch();
  row->addWidget(demo_, 2);
}

void FirstPage::build_own(QBoxLayout* row) {
  own_ = widgets::child_of<widgets::Box>(row->parentWidget(), QString(), QString(), "card");
  widgets::Box* const own = own_;
  own->body()->setSpacing(10);
  const auto add = [own](widgets::WordField*& field, const QString& title, const char* name, QBoxLayout* into) {
    field = widgets::child_of<widgets::WordField>(own, title);
    field->edit()->setObjectName(QLatin1String(name));
    into->addWidget(field);
  };
  add(workshop_, tr("Name of the workshop"), "field-workshop", own->body());
  add(address_, tr("Address, as on the record"), "field-address", own->body());
  auto* pair = widgets::lay_in<QHBoxLayout>(own->body(), 12);
  add(person_, tr("Name of the first person"), "field-person", pair);
  add(initials_, tr("Initials"), "field-initials", pair);
  pair->setStretch(0, 3);
  pair->setStretch(1, 1);
  build_logo(own);
  path_ = widgets::child_of<widgets::Text>(own, QString(), "small");
  path_->setObjectName(QStringLiteral("start-path"));
  own->body()->addWidget(path_);
  auto* button = widgets::child_of<widgets::Button>(own, tr("Begin this workshop"), widgets::Button::Kind::main);
  button->setObjectName(QStringLiteral("button-begin"));
  own->body()->addWidget(button, 0, Qt::AlignLeft);
  row->addWidget(own, 3);
  connect(button, &QPushButton::clicked, this, &FirstPage::begin);
  connect(workshop_, &widgets::WordField::entered, address_, [this] { address_->setFocus(); });
  connect(address_, &widgets::WordField::entered, person_, [this] { person_->setFocus(); });
  connect(person_, &widgets::WordField::entered, initials_, [this] { initials_->setFocus(); });
  connect(initials_, &widgets::WordField::entered, button, [button] { button->setFocus(); });
}

void FirstPage::build_logo(widgets::Box* own) {
  auto* row = widgets::lay_in<QHBoxLayout>(own->body(), 12);
  choose_logo_ = widgets::child_of<widgets::Button>(own, tr("Choose a logo for the record"));
  choose_logo_->setObjectName(QStringLiteral("button-first-logo"));
  row->addWidget(choose_logo_);
  logo_told_ = widgets::child_of<widgets::Text>(own, QString(), "soft");
  logo_told_->setObjectName(QStringLiteral("first-logo"));
  row->addWidget(logo_told_, 1);
  no_logo_ = widgets::child_of<widgets::Button>(own, tr("Remove the logo"));
  no_logo_->setObjectName(QStringLiteral("button-no-logo"));
  row->addWidget(no_logo_);
  connect(choose_logo_, &QPushButton::clicked, this, &FirstPage::logo_wanted);
  connect(no_logo_, &QPushButton::clicked, this, [this] {
    set_logo(std::nullopt);
    set_fault({});
    choose_logo_->setFocus();
  });
  set_logo(std::nullopt);
}

void FirstPage::add_choice(const QString& title, const std::vector<ChoiceRow::Choice>& choices, QWidget* parent,
                           QBoxLayout* into) {
  auto* row = widgets::child_of<ChoiceRow>(parent, title, choices);
  into->addWidget(row);
  choices_.push_back(row);
  connect(row, &ChoiceRow::chosen, this, &FirstPage::choice_made);
}

void FirstPage::build_choices(QVBoxLayout* column) {
  auto* card = widgets::child_of<widgets::Box>(column->parentWidget(), tr("On this machine"),
                                               tr("All of it can be changed later in the settings."), "card");
  card->body()->setSpacing(12);
  column->addWidget(card);
  add_choice(tr("Lengths are shown and typed in"), length_choices(), card, card->body());
  add_choice(tr("Torques are shown and typed in"), torque_choices(), card, card->body());
  add_choice(tr("Paper of records"), paper_choices(), card, card->body());
}

void FirstPage::show_choices(const QStringList& names) {
  for (ChoiceRow* row : choices_) {
    for (const QString& name : names) {
      if (row->offers(name)) {
        row->set_chosen(name);
      }
    }
  }
}

void FirstPage::set_logo(const std::optional<store::Logo>& logo, const QString& name) {
  logo_ = logo;
  logo_told_->setText(logo ? name : tr("none; it can come later"));
  no_logo_->setVisible(logo.has_value());
}

void FirstPage::show_workshop_fields(bool shown) {
  for (QWidget* each : std::initializer_list<QWidget*>{workshop_, address_, choose_logo_, logo_told_}) {
    each->setVisible(shown);
  }
  no_logo_->setVisible(shown && logo_);
}

void FirstPage::ask_for_person_only(const QString& workshop) {
  show_workshop_fields(false);
  own_->set_heading(workshop);
  own_->set_text(tr("Nobody is at work here yet. Enter who is; all else of this workshop stays as it is."));
  person_->setFocus();
}

void FirstPage::set_offer(const QString& path, bool with_demo) {
  demo_->setVisible(with_demo);
  show_workshop_fields(true);
  own_->set_heading(tr("Your own workshop"));
  own_->set_text(
      tr("Job sheet and spec sheets come with the program; their limits are demonstration values until your own "
         "are entered."));
  path_->setText(tr("It will lie here: %1").arg(QDir::toNativeSeparators(path)));
  set_fault({});
}

void FirstPage::set_fault(const QString& sentence) {
  fault_->setText(sentence);
  fault_->setVisible(!sentence.isEmpty());
}

void FirstPage::take_focus() {
  if (demo_->isHidden()) {
    workshop_->setFocus();
  } else {
    try_->setFocus();
  }
}

void FirstPage::begin() {
  for (widgets::WordField* field : {workshop_, person_, initials_}) {
    if (!field->isHidden() && field->text().empty()) {
      set_fault(tr("%1: nothing is written here yet.").arg(field->edit()->accessibleName()));
      field->setFocus();
      return;
    }
  }
  set_fault({});
  Beginning beginning = typed().beginning;
  if (workshop_->isHidden()) {
    beginning = {{}, {}, beginning.person, beginning.initials, std::nullopt};
  }
  emit begin_wanted(beginning);
}

FirstTyped FirstPage::typed() const {
  return {{workshop_->text(), address_->text(), person_->text(), initials_->text(), logo_}, logo_told_->text()};
}

void FirstPage::put_typed(const FirstTyped& typed) {
  const Beginning& beginning = typed.beginning;
  for (const auto& [field, text] : {std::pair{workshop_, beginning.workshop},
                                    {address_, beginning.address},
                                    {person_, beginning.person},
                                    {initials_, beginning.initials}}) {
    field->set_text(text);
  }
  if (beginning.logo) {
    set_logo(beginning.logo, typed.logo_name);
  }
}

void FirstPage::take_focus_at(const QString& choice) {
  if (auto* button = findChild<QWidget*>(QStringLiteral("button-") + choice); button != nullptr) {
    button->setFocus();
  }
}

}  // namespace shimwright::shell
