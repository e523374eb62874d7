#pragma once

#include "shimwright/store/exchange.h"
#include "shimwright/store/store.h"
#include "shimwright/workshop/data_ways.h"
#include "work_card.h"

namespace shimwright::workshop {

/// A whole job as a file, out of this store and into it.
class JobFileCard : public WorkCard {
  Q_OBJECT

 public:
  JobFileCard(store::Store& store, DataWays ways, QWidget* parent);

 signals:
  void job_came();

 private:
  void begin_export();
  void begin_import();
  void show_import(const store::ImportReport& report);

  store::Store* store_;
  DataWays ways_;
  widgets::WordField* number_;
};

}  // namespace shimwright::workshop
