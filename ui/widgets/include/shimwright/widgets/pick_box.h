#pragma once

#include <string>

#include <QComboBox>

namespace shimwright::widgets {

/// One of several, opened by Space or a click; an arrow on the right tells it from a field for words. The wheel changes
/// nothing.
class PickBox : public QComboBox {
  Q_OBJECT

 public:
  explicit PickBox(const QString& title, QWidget* parent = nullptr);
  /// The data of the one chosen; blank: none.
  [[nodiscard]] std::string id() const;
  /// Nothing changes where no item has that data.
  void choose(const std::string& id);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
};

}  // namespace shimwright::widgets
