#include "flow_row.h"

#include <algorithm>
#include <memory>

#include "shimwright/widgets/child.h"

namespace shimwright::workshop {

namespace {

constexpr int gap = 12;

}  // namespace

FlowLayout::FlowLayout(QWidget* parent) : QLayout(parent) {
  setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
  for (QLayoutItem* each : items_) {
    const std::unique_ptr<QLayoutItem> owned(each);
  }
}

void FlowLayout::addItem(QLayoutItem* item) {
  items_.push_back(item);
}

QLayoutItem* FlowLayout::itemAt(int index) const {
  return index < 0 || index >= count() ? nullptr : items_[static_cast<std::size_t>(index)];
}

QLayoutItem* FlowLayout::takeAt(int index) {
  QLayoutItem* const item = itemAt(index);
  if (item != nullptr) {
    items_.erase(items_.begin() + index);
  }
  return item;
}

QSize FlowLayout::minimumSize() const {
  QSize least;
  for (const QLayoutItem* each : items_) {
    least = least.expandedTo(each->minimumSize());
  }
  return least;
}

void FlowLayout::setGeometry(const QRect& room) {
  QLayout::setGeometry(room);
  static_cast<void>(lay_out(room, true));
}

int FlowLayout::lay_out(const QRect& room, bool place) const {
  int left = room.x();
  int top = room.y();
  int line = 0;
  for (QLayoutItem* each : items_) {
    if (each->isEmpty()) {
      continue;
    }
    const QSize size(std::min(each->sizeHint().width(), room.width()), each->sizeHint().height());
    if (left > room.x() && left + size.width() > room.right() + 1) {
      left = room.x();
      top += line + gap;
      line = 0;
    }
    if (place) {
      each->setGeometry({QPoint(left, top), size});
    }
    left += size.width() + gap;
    line = std::max(line, size.height());
  }
  return top + line - room.y();
}

FlowRow::FlowRow(QWidget* parent) : QWidget(parent), flow_(widgets::child_of<FlowLayout>(this)) {
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

}  // namespace shimwright::workshop
