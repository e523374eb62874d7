#pragma once

#include <QWidget>

#include "instrument_form.h"
#include "repeat_card.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/store.h"
#include "shimwright/widgets/pick_box.h"
#include "shimwright/workshop/workshop_ways.h"

namespace shimwright::workshop {

/// The instruments of the workshop with their calibration, the form for one of them, and its repeat test.
class InstrumentsSection : public QWidget {
  Q_OBJECT

 public:
  InstrumentsSection(store::Store& store, WorkshopWays ways, QWidget* parent = nullptr);
  void refresh();
  [[nodiscard]] bool has_unsent() const;

 private:
  void build_adding(QVBoxLayout* column);
  void show_list();
  void open(const store::KeptInstrument& kept, bool is_new);
  void put_up(FormCard& card, const QString& name);
  void keep(InstrumentForm& form);
  void test(const store::KeptInstrument& kept);
  void close(const QString& told = {});
  [[nodiscard]] bool put(const store::KeptInstrument& kept, FormCard& form);

  store::Store* store_;
  WorkshopWays ways_;
  store::IdSource ids_;
  QWidget* list_ = nullptr;
  QVBoxLayout* place_ = nullptr;
  QLabel* told_ = nullptr;
  widgets::PickBox* kind_ = nullptr;
  widgets::Button* add_ = nullptr;
  FormCard* card_ = nullptr;
};

}  // namespace shimwright::workshop
