#pragma once

#include <utility>
#include <vector>

#include <QFrame>
#include <QLabel>
#include <QPushButton>

#include "shimwright/shell/page_table.h"
#include "shimwright/widgets/parts.h"

class QHBoxLayout;

namespace shimwright::shell {

/// A word of the top bar that is pressed; underlined where it is the place one is at.
class PlaceButton : public QPushButton {
  Q_OBJECT

 public:
  PlaceButton(const QString& text, bool is_name, QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] QFont strong_font() const;

  bool is_name_;
};

/// Name, places and person; on a job what job, vehicle and spec sheet it is.
class TopBar : public QFrame {
  Q_OBJECT

 public:
  explicit TopBar(QWidget* parent = nullptr);

  void show_place(PageName place);
  void show_job(const Heading& heading);
  void show_settings();
  void set_person(const QString& initials);
  void set_demo_workshop(bool demo);

 signals:
  void place_wanted(shimwright::shell::PageName place);
  void settings_wanted();
  void person_wanted();

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  PlaceButton* add_place(PageName place, const QString& text, const QString& name);
  QLabel* add_label(const QString& name, const char* part);
  void mark_place(bool on_job, const PlaceButton* here);
  [[nodiscard]] int width_needed() const;
  void give_way();
  void say_person(bool in_short);

  QHBoxLayout* row_;
  PlaceButton* name_;
  std::vector<std::pair<PageName, PlaceButton*>> places_;
  QLabel* job_;
  QLabel* vehicle_;
  std::pair<QString, QString> vehicle_words_;  ///< whole, and in short
  QLabel* spec_;
  QLabel* demonstration_;
  QLabel* demo_workshop_;
  PlaceButton* settings_;
  PlaceButton* person_;
  QString initials_;
  bool is_demo_ = false;
  bool on_job_ = false;
};

}  // namespace shimwright::shell
