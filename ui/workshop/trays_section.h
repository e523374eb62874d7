#pragma once

#include <map>
#include <vector>

#include <QWidget>

#include "shim_form.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/stock.h"
#include "shimwright/workshop/workshop_ways.h"

namespace shimwright::workshop {

/// The shims of each bearing: measured, counted, less what jobs took, and what open jobs may want.
class TraysSection : public QWidget {
  Q_OBJECT

 public:
  TraysSection(store::Store& store, WorkshopWays ways, QWidget* parent = nullptr);
  void refresh();
  [[nodiscard]] bool has_unsent() const { return form_ && form_->has_unsent(); }

 private:
  void show_list();
  void show_tray(const store::Tray& tray, const store::TrayDemand& demand);
  void offer_trays(const std::vector<store::Tray>& kept);
  void offer(const sheet::SpecSheet& spec, job::Side side);
  void open(const store::Tray& tray, const ShimEntered& shim, bool is_new);
  void keep(store::Tray tray, const std::string& mark_before);
  void take_out(store::Tray tray, const std::string& mark);
  [[nodiscard]] bool put(const store::Tray& tray);
  void close(const QString& told = {});
  void tell(const QString& sentence, bool bad);

  store::Store* store_;
  WorkshopWays ways_;
  store::IdSource ids_;
  QWidget* list_ = nullptr;
  QLabel* told_ = nullptr;
  QVBoxLayout* place_ = nullptr;
  ShimForm* form_ = nullptr;  ///< until it is closed
};

}  // namespace shimwright::workshop
