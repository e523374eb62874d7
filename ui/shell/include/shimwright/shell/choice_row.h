#pragma once

#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/widgets/parts.h"

namespace shimwright::shell {

/// One of a few, as buttons side by side under a title.
class ChoiceRow : public QWidget {
  Q_OBJECT

 public:
  struct Choice {
    QString name;  ///< of the button, and what chosen() says
    QString text;
  };

  ChoiceRow(const QString& title, const std::vector<Choice>& choices, QWidget* parent = nullptr);
  void set_chosen(const QString& name);
  [[nodiscard]] bool offers(const QString& name) const;

 signals:
  void chosen(const QString& name);

 private:
  std::vector<std::pair<QString, widgets::Button*>> buttons_;
};

}  // namespace shimwright::shell
