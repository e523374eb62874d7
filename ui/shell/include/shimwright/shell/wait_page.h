#pragma once

#include <QString>
#include <QWidget>

namespace shimwright::widgets {
class Text;
}

namespace shimwright::shell {

/// Something is done with the store while no window has it open, and that takes a moment.
class WaitPage : public QWidget {
  Q_OBJECT

 public:
  explicit WaitPage(QWidget* parent = nullptr);
  void set_doing(const QString& sentence);

 private:
  widgets::Text* doing_;
};

}  // namespace shimwright::shell
