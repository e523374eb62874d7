#include "shimwright/shell/person_row.h"

#include <QKeyEvent>
#include <algorithm>
#include <iterator>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/keys.h"
#include "shimwright/widgets/parts.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"

namespace shimwright::shell {

namespace {

constexpr int most_by_digit = 9;

void clear(QHBoxLayout& row) {
  while (auto* item = row.takeAt(0)) {
    const std::unique_ptr<QLayoutItem> owned(item);
    if (QWidget* widget = item->widget()) {
      widget->hide();
      widget->deleteLater();
    }
  }
}

}  // namespace

PersonRow::PersonRow(QWidget* parent) : QFrame(parent), row_(nullptr) {
  widgets::set_part(this, "bar");
  setObjectName(QStringLiteral("person-row"));
  setAccessibleName(tr("Who is at the bench"));
  row_ = widgets::lay<QHBoxLayout>(this, 10);
  row_->setContentsMargins(20, 8, 20, 8);
  // Never wider than the window, whatever people are called.
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  hide();
}

void PersonRow::open(const std::vector<store::Person>& persons, const std::string& at_bench) {
  clear(*row_);
  persons_.clear();
  std::copy_if(persons.begin(), persons.end(), std::back_inserter(persons_),
               [](const store::Person& each) { return each.active; });
  question_ = widgets::child_of<QLabel>(this, tr("Who is at the bench?"));
  row_->addWidget(question_);
  buttons_.clear();
  widgets::Button* focused = nullptr;
  for (std::size_t at = 0; at < persons_.size(); ++at) {
    const store::Person& each = persons_[at];
    auto* button = widgets::child_of<widgets::Button>(this, widgets::qt(each.initials + "  " + each.name));
    button->setObjectName(QStringLiteral("button-person-%1").arg(widgets::qt(each.initials)));
    if (at < most_by_digit) {
      button->set_keys(QString::number(at + 1));
    }
    button->setCheckable(true);
    button->setChecked(each.id == at_bench);
    connect(button, &QPushButton::clicked, this, [this, at] { pick(at); });
    row_->addWidget(button);
    buttons_.push_back(button);
    focused = focused == nullptr || each.id == at_bench ? button : focused;
  }
  row_->addStretch();
  auto* leave = widgets::child_of<widgets::Button>(this, tr("Close"));
  leave->setObjectName(QStringLiteral("button-close-persons"));
  leave->set_keys(tr("Esc"));
  connect(leave, &QPushButton::clicked, this, &PersonRow::close_row);
  row_->addWidget(leave);
  show();
  give_way();
  (focused == nullptr ? leave : focused)->setFocus();
}

/// Initials alone where the names would be wider than the window; then without the question.
void PersonRow::give_way() {
  if (buttons_.empty()) {
    return;
  }
  const auto name_people = [this](bool with_name) {
    for (std::size_t at = 0; at < buttons_.size(); ++at) {
      const QString full = widgets::qt(persons_[at].initials + "  " + persons_[at].name);
      buttons_[at]->set_action_text(with_name ? full : widgets::qt(persons_[at].initials));
      buttons_[at]->setAccessibleName(full);
    }
    row_->invalidate();
  };
  question_->show();
  name_people(true);
  if (row_->sizeHint().width() > width()) {
    name_people(false);
  }
  question_->setVisible(row_->sizeHint().width() <= width());
}

void PersonRow::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  give_way();
}

void PersonRow::close_row() {
  hide();
  emit closed();
}

void PersonRow::pick(std::size_t at) {
  if (at < persons_.size()) {
    const store::Person person = persons_[at];
    hide();
    emit picked(person);
    emit closed();
  }
}

void PersonRow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    close_row();
  } else if (event->key() >= Qt::Key_1 && event->key() <= Qt::Key_9 && widgets::is_plain(*event)) {
    pick(static_cast<std::size_t>(event->key() - Qt::Key_1));
  } else {
    QFrame::keyPressEvent(event);
  }
}

}  // namespace shimwright::shell
