#pragma once

#include <vector>

#include <QWidget>

#include "shimwright/print/fonts.h"
#include "shimwright/record/page.h"

namespace shimwright::past {

/// Pages one below the other as they will be printed. Only what is seen is drawn.
class PageColumn : public QWidget {
  Q_OBJECT

 public:
  explicit PageColumn(QWidget* parent = nullptr);

  /// The fonts must outlive it.
  void set_pages(std::vector<record::Page> pages, const print::Fonts& fonts);
  void clear();
  void set_dots_per_mm(double dots);
  [[nodiscard]] double dots_per_mm() const { return dots_per_mm_; }
  [[nodiscard]] const std::vector<record::Page>& pages() const { return pages_; }
  /// Where the page lies in this widget.
  [[nodiscard]] QRect place_of(int page) const;
  /// The page at that height, counted from 0.
  [[nodiscard]] int page_at(int y) const;
  /// How many pages the last painting touched.
  [[nodiscard]] int pages_painted() const { return pages_painted_; }
  [[nodiscard]] double widest_mm() const;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void take_size();

  const print::Fonts* fonts_ = nullptr;  ///< there where pages are
  std::vector<record::Page> pages_;
  double dots_per_mm_ = 96 / 25.4;
  int pages_painted_ = 0;
};

}  // namespace shimwright::past
