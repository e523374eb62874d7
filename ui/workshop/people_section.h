#pragma once

#include <QWidget>

#include "person_form.h"
#include "pin_card.h"
#include "repeat_card.h"
#include "shimwright/store/ids.h"
#include "shimwright/store/store.h"
#include "shimwright/workshop/workshop_ways.h"

namespace shimwright::widgets {
class BackgroundWork;
}

namespace shimwright::workshop {

/// The people of the workshop, and the form for one of them.
class PeopleSection : public QWidget {
  Q_OBJECT

 public:
  PeopleSection(store::Store& store, WorkshopWays ways, QWidget* parent = nullptr);
  /// Reads them anew; a form with something typed in it stays.
  void refresh();
  [[nodiscard]] bool has_unsent() const;

 signals:
  void changed();

 private:
  void show_list();
  void open(const store::Person& person, bool is_new);
  [[nodiscard]] SigningState signing_of(const std::string& person) const;
  void test_feel(const store::Person& person);
  void ask_pin(const store::Person& person, PinAct act);
  void put_up(FormCard& card, const QString& name);
  void keep_pin(const store::Person& person, PinCard& pin);
  void end_key(const store::Person& person, PinCard& pin);
  /// Making and opening a key takes its time: in a thread of its own, with nothing to be pressed meanwhile.
  void begin_pin_work(const store::Person& person, PinCard& pin);
  void show_work(PinCard& pin, bool runs);
  void close(const QString& told = {});
  [[nodiscard]] bool put(const store::Person& person, FormCard& form);

  store::Store* store_;
  WorkshopWays ways_;
  store::IdSource ids_;
  QWidget* list_;
  QVBoxLayout* place_;
  QLabel* told_;
  widgets::Button* add_;
  FormCard* card_ = nullptr;
  widgets::BackgroundWork* work_;
  std::vector<store::PersonsKey> keys_;
};

}  // namespace shimwright::workshop
