#include "shimwright/widgets/size_scale.h"

#include <QPainter>
#include <QStringList>
#include <algorithm>

#include "paint.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/style.h"
#include "shimwright/widgets/units.h"

namespace shimwright::widgets {

namespace {

constexpr std::size_t most_cells = 7;
constexpr double cell_top = 26;
constexpr double cell_height = 40;

struct CellColours {
  QColor fill;
  QColor edge;
  QColor text;
};

CellColours look_of_cell(const SizeCell& cell, const Colours& colours) {
  if (cell.chosen) {
    return {colours.blue, colours.blue, colours.on_blue};
  }
  if (cell.candidate) {
    return {colours.amber, colours.amber_edge, colours.on_amber};
  }
  return {mixed(colours.line, colours.card, 0.6), colours.card, colours.text};
}

/// The borders of a cell; where the last one is open, as far off as the other side's neighbours are apart.
std::optional<std::pair<double, double>> borders(const std::vector<SizeCell>& cells, std::size_t at) {
  const std::optional<double> lower = at > 0 ? cells[at - 1].to_mm : std::nullopt;
  const std::optional<double> upper = cells[at].to_mm;
  if (lower && upper) {
    return std::pair{*lower, *upper};
  }
  if (upper) {
    const std::optional<double> next = at + 1 < cells.size() ? cells[at + 1].to_mm : std::nullopt;
    return std::pair{2 * *upper - next.value_or(*upper + 0.05), *upper};
  }
  if (lower) {
    const std::optional<double> before = at > 1 ? cells[at - 2].to_mm : std::nullopt;
    return std::pair{*lower, 2 * *lower - before.value_or(*lower - 0.05)};
  }
  return std::nullopt;
}

}  // namespace

SizeScale::SizeScale(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setMinimumSize(280, 96);
  setAccessibleName(tr("Sizes"));
}

void SizeScale::set_cells(const std::vector<SizeCell>& cells, std::optional<double> at_mm) {
  cells_ = cells;
  at_mm_ = at_mm;
  QStringList said;
  for (const SizeCell& cell : cells_) {
    if (cell.chosen) {
      said << tr("%1 chosen").arg(qt(cell.shim));
    } else if (cell.candidate) {
      said << tr("%1 possible").arg(qt(cell.shim));
    }
  }
  if (at_mm_) {
    said << with_length_unit(tr("wanted %1 mm")).arg(length_shown(*at_mm_, 3));
  }
  setAccessibleDescription(said.join(QStringLiteral("; ")));
  update();
}

std::size_t SizeScale::wanted_cell() const {
  std::size_t at = 0;
  if (at_mm_) {
    const auto below = [wanted = *at_mm_](const std::optional<double>& border) { return border && *border < wanted; };
    while (at + 1 < cells_.size() && below(cells_[at].to_mm)) {
      ++at;
    }
    return at;
  }
  const auto chosen = std::find_if(cells_.begin(), cells_.end(), [](const SizeCell& cell) { return cell.chosen; });
  return chosen == cells_.end() ? cells_.size() / 2 : static_cast<std::size_t>(chosen - cells_.begin());
}

std::size_t SizeScale::count_shown() const {
  return std::min(cells_.size(), most_cells);
}

std::size_t SizeScale::first_shown() const {
  const std::size_t wanted = wanted_cell();
  const std::size_t before = std::min(wanted, count_shown() / 2);
  return std::min(wanted - before, cells_.size() - count_shown());
}

std::vector<std::string> SizeScale::shown() const {
  std::vector<std::string> names;
  for (std::size_t at = first_shown(); at < first_shown() + count_shown(); ++at) {
    names.push_back(cells_[at].shim);
  }
  return names;
}

double SizeScale::cell_width() const {
  const auto count = static_cast<double>(std::max<std::size_t>(count_shown(), 1));
  return std::min(74.0, (width() - 20) / count);
}

double SizeScale::left_edge() const {
  return (width() - cell_width() * static_cast<double>(count_shown())) / 2;
}

std::optional<double> SizeScale::pointer_x() const {
  if (!at_mm_ || cells_.empty()) {
    return std::nullopt;
  }
  const std::size_t at = wanted_cell();
  const auto between = borders(cells_, at);
  double share = 0.5;
  if (between && between->second > between->first) {
    share = std::clamp((*at_mm_ - between->first) / (between->second - between->first), 0.0, 1.0);
  }
  return left_edge() + cell_width() * (static_cast<double>(at - first_shown()) + share);
}

void SizeScale::paint_cells(QPainter& painter) const {
  const Colours& colours = colours_of(*this);
  const double wide = cell_width();
  for (std::size_t at = first_shown(); at < first_shown() + count_shown(); ++at) {
    const SizeCell& cell = cells_[at];
    const double left = left_edge() + wide * static_cast<double>(at - first_shown());
    const QRectF box(left + 1, cell_top, wide - 2, cell_height);
    const CellColours look = look_of_cell(cell, colours);
    painter.setPen(QPen(look.edge, 1.5));
    painter.setBrush(look.fill);
    painter.drawRect(box);
    painter.setFont(type_of(font(), wide < 56 ? 15 : 18, cell.chosen || cell.candidate));
    painter.setPen(look.text);
    painter.drawText(box, Qt::AlignCenter, qt(cell.shim));
    if (cell.to_mm && at + 1 < first_shown() + count_shown()) {
      painter.setFont(type_of(font(), wide < 56 ? 12 : 15));
      painter.setPen(colours.soft);
      text_at(painter, {left + wide, cell_top + cell_height + 17}, length_shown(*cell.to_mm, 3));
    }
  }
}

void SizeScale::paintEvent(QPaintEvent* /*event*/) {
  if (cells_.empty()) {
    return;
  }
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paint_cells(painter);
  if (const std::optional<double> x = pointer_x()) {
    const Colours& colours = colours_of(*this);
    painter.setPen(QPen(colours.amber_edge, 1.5));
    painter.setBrush(colours.amber);
    painter.drawPolygon(QPolygonF({QPointF(*x - 9, 4), QPointF(*x + 9, 4), QPointF(*x, cell_top - 4)}));
  }
}

}  // namespace shimwright::widgets
