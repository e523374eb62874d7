#pragma once

#include "shimwright/store/check.h"
#include "shimwright/store/store.h"
#include "work_card.h"

namespace shimwright::workshop {

/// Where the data lies, how much it is, and whether it is as it was written.
class StoreCard : public WorkCard {
  Q_OBJECT

 public:
  StoreCard(store::Store& store, QWidget* parent);
  void refresh();

 private:
  void begin_check();
  void show_report(const store::CheckReport& report);

  store::Store* store_;
  widgets::Text* place_;
  widgets::Text* size_;
};

/// `1.4 MB`.
[[nodiscard]] QString size_text(qint64 bytes);

}  // namespace shimwright::workshop
