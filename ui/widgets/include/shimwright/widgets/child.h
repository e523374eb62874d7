#pragma once

#include <memory>
#include <utility>

#include <QBoxLayout>
#include <QWidget>

namespace shimwright::widgets {

/// A widget, layout or object made and handed to its parent, which owns it from then on.
template <class Child, class Parent, class... Arguments>
[[nodiscard]] Child* child_of(Parent* parent, Arguments&&... arguments) {
  return std::make_unique<Child>(std::forward<Arguments>(arguments)..., parent).release();
}

/// The layout of `parent`, without margins and with that spacing in pixels.
template <class Layout>
[[nodiscard]] Layout* lay(QWidget* parent, int spacing = 0) {
  auto* layout = child_of<Layout>(parent);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(spacing);
  return layout;
}

/// A row or column inside another layout, which owns it.
template <class Layout>
[[nodiscard]] Layout* lay_in(QBoxLayout* outer, int spacing = 0) {
  auto inner = std::make_unique<Layout>();
  inner->setContentsMargins(0, 0, 0, 0);
  inner->setSpacing(spacing);
  Layout* const owned = inner.release();
  outer->addLayout(owned);
  return owned;
}

/// Puts one widget in the place of another. The layout hands the place of the old one back, to whoever asked.
inline void put_in_place_of(QLayout& layout, QWidget* old, QWidget* made) {
  const std::unique_ptr<QLayoutItem> place(layout.replaceWidget(old, made));
}

}  // namespace shimwright::widgets
