// Stand-ins until the painted widgets are there.
#include <QPainter>

#include "shimwright/widgets/disc_view.h"
#include "shimwright/widgets/limit_strip.h"
#include "shimwright/widgets/marks.h"
#include "shimwright/widgets/pack_drawing.h"
#include "shimwright/widgets/shim_rows.h"
#include "shimwright/widgets/size_scale.h"
#include "shimwright/widgets/stage_bar.h"
#include "shimwright/widgets/strip.h"

namespace shimwright::widgets {
void paint_mark(QPainter&, const QRectF&, Mark, const Colours&) {}
QString word_of(Mark) { return {}; }
MarkView::MarkView(Mark mark, int size, QWidget* parent) : QWidget(parent), mark_(mark) { setFixedSize(size, size); }
void MarkView::set_mark(Mark mark) { mark_ = mark; }
void MarkView::paintEvent(QPaintEvent*) {}
Strip::Strip(QWidget* parent) : QWidget(parent) {}
void Strip::set_text(const StripText& text) { text_ = text; }
void Strip::set_filling(bool filling) { filling_ = filling; }
int Strip::cap_height() const { return 0; }
QSize Strip::sizeHint() const { return {300, 78}; }
int Strip::heightForWidth(int) const { return 78; }
void Strip::paintEvent(QPaintEvent*) {}
PackDrawing::PackDrawing(QWidget* parent) : QWidget(parent) {}
void PackDrawing::set_view(const PackView& view) { view_ = view; }
void PackDrawing::paintEvent(QPaintEvent*) {}
LimitStrip::LimitStrip(QWidget* parent) : QWidget(parent) {}
void LimitStrip::set_view(const LimitStripView& view) { view_ = view; }
void LimitStrip::paintEvent(QPaintEvent*) {}
DiscView::DiscView(QWidget* parent) : QWidget(parent) {}
void DiscView::set_spots(const std::vector<DiscSpot>& spots, std::optional<double> high) { spots_ = spots; high_at_deg_ = high; }
void DiscView::paintEvent(QPaintEvent*) {}
ShimRows::ShimRows(QWidget* parent) : QWidget(parent) {}
void ShimRows::set_rows(const std::vector<ShimRow>& rows, const QString& word) { rows_ = rows; advised_word_ = word; }
void ShimRows::set_fold_words(const QString& a, const QString& b) { fold_above_ = a; fold_below_ = b; }
void ShimRows::set_pickable(bool pickable) { pickable_ = pickable; }
void ShimRows::build() {}
SizeScale::SizeScale(QWidget* parent) : QWidget(parent) {}
void SizeScale::set_cells(const std::vector<SizeCell>& cells, std::optional<double> at) { cells_ = cells; at_mm_ = at; }
void SizeScale::paintEvent(QPaintEvent*) {}
StageBar::StageBar(QWidget* parent) : QWidget(parent) {}
void StageBar::set_stages(const std::vector<StageLook>& stages) { stages_ = stages; }
void StageBar::paintEvent(QPaintEvent*) {}
}  // namespace shimwright::widgets
