#include "photo_page.h"

#include <QDir>
#include <QGridLayout>
#include <QLineEdit>

#include "picture_button.h"
#include "reading_words.h"
#include "shimwright/bench/surroundings.h"
#include "shimwright/job/standing.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "step_pages.h"

namespace shimwright::bench {

using widgets::Button;
using widgets::child_of;
using widgets::qt;

namespace {

constexpr int newest_shown = 5;
constexpr int pictures_in_row = 5;
constexpr QSize thumbnail(132, 99);

QStringList newest_pictures(const QString& folder) {
  if (folder.isEmpty()) {
    return {};
  }
  const QDir dir(folder);
  QStringList files;
  const QStringList names{QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.png")};
  for (const QString& name : dir.entryList(names, QDir::Files | QDir::Readable, QDir::Time).mid(0, newest_shown)) {
    files.push_back(dir.filePath(name));
  }
  return files;
}

}  // namespace

PhotoPage::PhotoPage(Workbench& bench, const sheet::Step& step, QWidget* parent)
    : StepPage(bench, step, parent),
      pick_(real_surroundings().pick_photo),
      left_out_(child_of<KeptLine>(this)),
      count_(child_of<widgets::Text>(this, QString(), "strong")),
      caption_(child_of<widgets::WordField>(this, tr("What the next photo shows (may be blank)"))),
      unsent_(child_of<UnsentBox>(this, tr("The words belong to the next photo: choose it, or clear them."))),
      one_more_(child_of<Button>(this, tr("Choose one more picture file"))),
      kept_place_(child_of<QWidget>(this)),
      camera_place_(child_of<QWidget>(this)),
      kept_column_(widgets::lay<QVBoxLayout>(kept_place_)),
      camera_column_(widgets::lay<QVBoxLayout>(camera_place_)) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(left_out_);
  column->addWidget(count_);
  count_->setObjectName(QStringLiteral("photo-count"));
  column->addWidget(kept_place_);
  caption_->edit()->setObjectName(QStringLiteral("field-caption"));
  column->addWidget(caption_);
  column->addWidget(unsent_);
  one_more_->setObjectName(QStringLiteral("button-choose-picture"));
  column->addWidget(one_more_, 0, Qt::AlignLeft);
  column->addWidget(camera_place_);
  connect(one_more_, &Button::clicked, this, &PhotoPage::choose);
  connect(caption_->edit(), &QLineEdit::textChanged, this, &StepPage::look_changed);
  connect(unsent_, &UnsentBox::cleared, this, [this] { caption_->set_text({}); });
  refresh();
}

void PhotoPage::set_camera_folder(const QString& folder) {
  camera_folder_ = folder;
  show_camera();
}

void PhotoPage::refresh() {
  left_out_->show_words(widgets::Mark::deviation, left_out_words(bench(), step_state()));
  one_more_->setVisible(job::passed(step_state()));  // until then it is the main button below
  show_kept();
  show_camera();
}

void PhotoPage::show_kept() {
  std::vector<std::int64_t> now;
  std::vector<const job::Entry*> photos;
  for (const job::Entry* entry : job::present_entries(state(), step())) {
    if (std::holds_alternative<job::PhotoTaken>(entry->body)) {
      photos.push_back(entry);
      now.push_back(entry->seq);
    }
  }
  const int least = std::get<sheet::PhotoStep>(step().body).least;
  count_->setText(tr("%1 of at least %2 kept").arg(photos.size()).arg(least));
  if (now == shown_ && kept_ != nullptr) {
    return;
  }
  shown_ = now;
  if (kept_ != nullptr) {
    kept_->hide();
    kept_->deleteLater();
  }
  kept_ = child_of<QWidget>(kept_place_);
  kept_column_->addWidget(kept_);
  auto* grid = widgets::lay<QGridLayout>(kept_, 12);
  for (std::size_t at = 0; at < photos.size(); ++at) {
    const auto& photo = std::get<job::PhotoTaken>(photos[at]->body);
    auto* cell = child_of<QWidget>(kept_);
    auto* place = widgets::lay<QVBoxLayout>(cell, 2);
    auto* picture = child_of<QLabel>(cell);
    const QPixmap small = small_picture(qt(bench().store().photo_path(photo.sha256)), thumbnail);
    if (small.isNull()) {
      picture->setText(tr("picture missing"));
    } else {
      picture->setPixmap(small);
    }
    picture->setFixedSize(thumbnail);
    picture->setAlignment(Qt::AlignCenter);
    place->addWidget(picture);
    auto* words = child_of<widgets::Text>(
        cell, photo.caption.empty() ? by_whom(bench(), *photos[at]) : qt(photo.caption), "small");
    words->setFixedWidth(thumbnail.width());
    place->addWidget(words, 1, Qt::AlignTop);
    const int position = static_cast<int>(at);
    grid->addWidget(cell, position / pictures_in_row, position % pictures_in_row, Qt::AlignLeft | Qt::AlignTop);
  }
  grid->setColumnStretch(pictures_in_row, 1);
  kept_->setVisible(!photos.empty());
}

void PhotoPage::show_camera() {
  const QStringList files = newest_pictures(camera_folder_);
  if (files == shown_files_ && camera_ != nullptr) {
    return;
  }
  shown_files_ = files;
  if (camera_ != nullptr) {
    camera_->hide();
    camera_->deleteLater();
  }
  camera_ = child_of<QWidget>(camera_place_);
  camera_column_->addWidget(camera_);
  auto* column = widgets::lay<QVBoxLayout>(camera_, 6);
  column->addWidget(child_of<widgets::Text>(camera_, tr("Newest from the camera: press one to keep it"), "small"));
  auto* row = widgets::lay_in<QHBoxLayout>(column, 10);
  for (const QString& file : files) {
    const QString name = QFileInfo(file).fileName();
    auto* button = child_of<PictureButton>(camera_, small_picture(file, thumbnail), name);
    button->setObjectName(QStringLiteral("button-picture-") + name);
    connect(button, &PictureButton::clicked, this, [this, file] { keep(file); });
    row->addWidget(button);
  }
  row->addStretch(1);
  camera_->setVisible(!files.empty());
}

std::vector<FootAction> PhotoPage::actions() {
  if (job::passed(step_state())) {
    return {};
  }
  return {{"take", tr("Choose a picture file"), [this] { choose(); }, true}};
}

void PhotoPage::take_focus() {
  caption_->edit()->setFocus(Qt::OtherFocusReason);
}

bool PhotoPage::commit() {
  unsent_->setVisible(has_unsent());
  return !has_unsent();
}

void PhotoPage::choose() {
  const QString file = pick_ ? pick_() : QString();
  if (!file.isEmpty()) {
    keep(file);
  }
}

/// The step does not go on by itself: one more photo is often worth having.
void PhotoPage::keep(const QString& file) {
  const auto kept = bench().store().keep_photo(widgets::plain(file));
  if (!kept) {
    emit refused(kept.error());
    return;
  }
  if (!send(job::AddPhoto{step().id, kept->sha256, kept->media_type, kept->bytes, caption_->text()}, false)) {
    return;
  }
  caption_->set_text({});
  unsent_->hide();
  refresh();
  emit look_changed();
}

StepPage* make_photo_page(Workbench& bench, const sheet::Step& step, QWidget* parent) {
  return child_of<PhotoPage>(parent, bench, step);
}

}  // namespace shimwright::bench
