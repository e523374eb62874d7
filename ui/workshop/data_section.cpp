#include "data_section.h"

#include "backup_card.h"
#include "job_file_card.h"
#include "restore_card.h"
#include "shimwright/widgets/child.h"
#include "shimwright/widgets/parts.h"
#include "store_card.h"

namespace shimwright::workshop {

using widgets::child_of;

namespace {

widgets::Box* move_card(QWidget* parent) {
  auto* card = child_of<widgets::Box>(parent, DataSection::tr("To another laptop, in three steps"), QString(), "card");
  const QString steps[] = {
      DataSection::tr(
          "1  Here: choose a folder on a stick as the folder for backups, and back up now. The folder photos "
          "beside the backup belongs to it."),
      DataSection::tr(
          "2  There: install Shimwright, start it, and begin your own workshop. What you enter is replaced by "
          "what comes."),
      DataSection::tr(
          "3  There, on this page: look at the backup on the stick and go back to it. From then on enter nothing "
          "here any more.")};
  for (const QString& each : steps) {
    card->body()->addWidget(child_of<widgets::Text>(card, each));
  }
  return card;
}

}  // namespace

DataSection::DataSection(store::Store& store, WorkshopWays ways, QWidget* parent) : QWidget(parent) {
  auto* column = widgets::lay<QVBoxLayout>(this, 12);
  column->addWidget(child_of<widgets::Text>(this, tr("Data and backup"), "heading"));
  where_ = child_of<StoreCard>(this, store);
  column->addWidget(where_);
  backup_ = child_of<BackupCard>(this, store, ways);
  column->addWidget(backup_);
  auto* restore = child_of<RestoreCard>(this, store, ways.data);
  column->addWidget(restore);
  auto* job = child_of<JobFileCard>(this, store, ways.data);
  column->addWidget(job);
  column->addWidget(move_card(this));
  column->addStretch(1);
  connect(backup_, &BackupCard::backed_up, this, &DataSection::backed_up);
  connect(restore, &RestoreCard::restore_wanted, this, &DataSection::restore_wanted);
  connect(job, &JobFileCard::job_came, this, &DataSection::refresh);
  refresh();
}

void DataSection::refresh() {
  where_->refresh();
  backup_->refresh();
}

void DataSection::set_last_backup(std::int64_t at_ms, const QString& file) {
  backup_->set_last_backup(at_ms, file);
}

}  // namespace shimwright::workshop
