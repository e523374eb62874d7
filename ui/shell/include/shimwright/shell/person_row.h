#pragma once

#include <vector>

#include <QFrame>
#include <QHBoxLayout>

#include "shimwright/store/types.h"

class QLabel;

namespace shimwright::widgets {
class Button;
}

namespace shimwright::shell {

/// Who is at the bench: a button for each person, the first nine also by their digit. Escape leaves it as it is.
class PersonRow : public QFrame {
  Q_OBJECT

 public:
  explicit PersonRow(QWidget* parent = nullptr);
  /// Only who is active is shown.
  void open(const std::vector<store::Person>& persons, const std::string& at_bench);
  void close_row();

 signals:
  void picked(const store::Person& person);
  void closed();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void pick(std::size_t at);
  void give_way();

  QHBoxLayout* row_;
  std::vector<store::Person> persons_;
  std::vector<widgets::Button*> buttons_;
  QLabel* question_ = nullptr;
};

}  // namespace shimwright::shell
