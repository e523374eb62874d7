#pragma once

#include <vector>

#include <QLayout>
#include <QWidget>

namespace shimwright::workshop {

/// Widgets side by side, in as many lines as the width makes of them.
class FlowLayout : public QLayout {
 public:
  explicit FlowLayout(QWidget* parent);
  ~FlowLayout() override;
  FlowLayout(const FlowLayout&) = delete;
  FlowLayout& operator=(const FlowLayout&) = delete;

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  [[nodiscard]] QLayoutItem* takeAt(int index) override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override { return lay_out({0, 0, width, 0}, false); }
  [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
  [[nodiscard]] QSize minimumSize() const override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  void setGeometry(const QRect& room) override;

 private:
  [[nodiscard]] int lay_out(const QRect& room, bool place) const;

  std::vector<QLayoutItem*> items_;
};

/// A widget that holds such a row.
class FlowRow : public QWidget {
  Q_OBJECT

 public:
  explicit FlowRow(QWidget* parent = nullptr);
  void add(QWidget* widget) { flow_->addWidget(widget); }

 private:
  FlowLayout* flow_;
};

}  // namespace shimwright::workshop
