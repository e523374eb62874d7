#include "own_section.h"

#include <QLineEdit>
#include <QPixmap>
#include <utility>

#include "shimwright/store/registers.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/workshop/logo.h"

namespace shimwright::workshop {

using widgets::child_of;

OwnSection::OwnSection(store::Store& store, WorkshopWays ways, QWidget* parent)
    : QWidget(parent), store_(&store), ways_(std::move(ways)) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(child_of<widgets::Text>(this, tr("This workshop"), "heading"));
  told_ = child_of<widgets::Text>(this, QString(), "strong");
  told_->setObjectName(QStringLiteral("own-told"));
  told_->hide();
  column->addWidget(told_);
  build_form(column);
  show_logo();
}

void OwnSection::build_form(QVBoxLayout* column) {
  form_ = child_of<FormCard>(this, tr("As it stands on every record"), tr("Keep"));
  form_->setObjectName(QStringLiteral("form-own"));
  form_->setEnabled(!store_->looks_only());
  name_ = form_->add_word(tr("Name"), QStringLiteral("name"));
  address_ = form_->add_word(tr("Address, on one line"), QStringLiteral("address"));
  build_logo();
  form_->finish();
  column->addWidget(form_);
  connect(form_, &FormCard::keep_wanted, this, &OwnSection::keep);
  connect(form_, &FormCard::leave_wanted, this, [this] {
    name_->set_text(before_.name);
    address_->set_text(before_.address);
    logo_ = before_.logo;
    show_logo();
    form_->clear_told();
  });
}

void OwnSection::build_logo() {
  form_->body()->addWidget(child_of<widgets::Text>(
      form_, tr("Logo for the head of the record: PNG or JPEG, at most 500 kB. It is printed on white paper."),
      "small"));
  picture_ = child_of<QLabel>(form_);
  picture_->setObjectName(QStringLiteral("logo"));
  form_->body()->addWidget(picture_, 0, Qt::AlignLeft);
  auto* row = widgets::lay_in<QHBoxLayout>(form_->body(), 10);
  auto* choose = child_of<widgets::Button>(form_, tr("Choose a logo"));
  choose->setObjectName(QStringLiteral("button-logo"));
  row->addWidget(choose);
  remove_ = child_of<widgets::Button>(form_, tr("Remove the logo"));
  remove_->setObjectName(QStringLiteral("button-no-logo"));
  row->addWidget(remove_);
  row->addStretch();
  form_->add_place(choose, QStringLiteral("logo"));
  connect(choose, &QPushButton::clicked, this, &OwnSection::choose_logo);
  connect(remove_, &QPushButton::clicked, this, [this] {
    logo_.reset();
    show_logo();
  });
}

store::Workshop OwnSection::typed() const {
  store::Workshop workshop = before_;
  workshop.name = name_->text();
  workshop.address = address_->text();
  workshop.logo = logo_;
  return workshop;
}

bool OwnSection::has_unsent() const {
  return typed() != before_;
}

void OwnSection::refresh() {
  if (!before_.id.empty() && has_unsent()) {
    return;
  }
  auto workshop = store_->registers().workshop();
  if (!workshop) {
    form_->tell(workshop.error());
    return;
  }
  const std::optional<store::Workshop>& kept = *workshop;
  before_ = kept ? *kept : store::Workshop{ids_.id(ways_.clock().at_ms), "", ""};
  logo_ = before_.logo;
  name_->set_text(before_.name);
  address_->set_text(before_.address);
  show_logo();
}

void OwnSection::show_logo() {
  constexpr int high = 64;
  QPixmap picture;
  const bool there = logo_ && picture.loadFromData(QByteArray::fromStdString(logo_->bytes));
  picture_->setPixmap(there ? picture.scaledToHeight(high, Qt::SmoothTransformation) : QPixmap());
  picture_->setAccessibleName(there ? tr("The logo") : tr("No logo is chosen"));
  picture_->setVisible(there);
  remove_->setEnabled(logo_.has_value());
}

void OwnSection::choose_logo() {
  const QString file = ways_.choose_picture ? ways_.choose_picture() : QString();
  if (file.isEmpty()) {
    return;
  }
  const auto chosen = logo_from(file);
  if (!chosen) {
    form_->tell(tr("This picture cannot be read; choose it again."));
    return;
  }
  form_->clear_told();
  logo_ = chosen;
  show_logo();
}

void OwnSection::keep() {
  const store::Workshop workshop = typed();
  if (const auto put = store_->registers().put(workshop, by_now(ways_)); !put) {
    form_->tell(put.error());
    return;
  }
  before_ = workshop;
  form_->clear_told();
  told_->setText(tr("Kept."));
  told_->show();
}

}  // namespace shimwright::workshop
