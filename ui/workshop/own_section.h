#pragma once

#include <QPointer>
#include <QWidget>

#include "form_card.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/store.h"
#include "shimwright/workshop/workshop_ways.h"

namespace shimwright::workshop {

/// The workshop itself, as it stands on every record: name, address, logo.
class OwnSection : public QWidget {
  Q_OBJECT

 public:
  OwnSection(store::Store& store, WorkshopWays ways, QWidget* parent = nullptr);
  void refresh();
  [[nodiscard]] bool has_unsent() const;

 private:
  void build_form(QVBoxLayout* column);
  void build_logo();
  void show_logo();
  void choose_logo();
  void keep();
  [[nodiscard]] store::Workshop typed() const;

  store::Store* store_;
  WorkshopWays ways_;
  store::IdSource ids_;
  store::Workshop before_;
  std::optional<store::Logo> logo_;
  QLabel* told_ = nullptr;
  FormCard* form_ = nullptr;
  widgets::WordField* name_ = nullptr;
  widgets::WordField* address_ = nullptr;
  QLabel* picture_ = nullptr;
  widgets::Button* remove_ = nullptr;
};

}  // namespace shimwright::workshop
