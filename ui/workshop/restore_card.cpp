#include "restore_card.h"

#include <utility>

#include "shimwright/widgets/say.h"

namespace shimwright::workshop {

RestoreCard::RestoreCard(store::Store& store, DataWays ways, QWidget* parent)
    : WorkCard(tr("Go back to a backup"), QStringLiteral("restore"), parent), store_(&store), ways_(std::move(ways)) {
  add_text(tr("What is in the store now is kept as a file beside it. Every entry of the backup is compared, and the "
              "window opens again with it."),
           "soft");
  auto* begin = add_button(tr("Look at a backup"), QStringLiteral("button-look-at-backup"));
  add_progress();
  take_ = add_button(tr("Go back to this backup"), QStringLiteral("button-restore"), widgets::Button::Kind::main);
  leave_ = add_button(tr("Leave the store as it is"), QStringLiteral("button-leave-store"));
  if (store.looks_only()) {
    switch_off(begin);
  }
  connect(begin, &QAbstractButton::clicked, this, &RestoreCard::look);
  connect(take_, &QAbstractButton::clicked, this, [this] { emit restore_wanted(backup_); });
  connect(leave_, &QAbstractButton::clicked, this, [this, begin] {
    forget();
    tell(tr("Nothing was changed."), true);
    begin->setFocus();
  });
  forget();
}

void RestoreCard::forget() {
  backup_.clear();
  take_->hide();
  leave_->hide();
}

void RestoreCard::look() {
  const QString folder = ways_.backup_folder ? ways_.backup_folder() : QString();
  const QString file = ways_.choose_backup ? ways_.choose_backup(folder) : QString();
  if (file.isEmpty()) {
    return;
  }
  forget();
  run(tr("The backup is being looked at."),
      [this, path = store_->path(), backup = widgets::plain(file)](const store::BackupWatch& watch) {
        auto offer = store::look_at_backup(path, backup, watch);
        return [this, offer = std::move(offer)] {
          if (offer) {
            show_offer(*offer);
          } else {
            tell_refused(offer.error());
          }
        };
      });
}

void RestoreCard::show_offer(const store::BackupOffer& offer) {
  backup_ = widgets::qt(offer.file);
  QString told = widgets::say(store::told_before_restore(offer));
  if (const auto photos = offer.told_of_photos()) {
    told += QLatin1Char(' ') + widgets::say(*photos);
  }
  tell(told, true);
  take_->show();
  leave_->show();
  leave_->setFocus();
}

}  // namespace shimwright::workshop
