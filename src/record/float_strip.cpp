#include <algorithm>
#include <cmath>

#include "sections.h"
#include "wording.h"

namespace shimwright::record {

namespace {

constexpr double row_mm = 5.6;
constexpr double bar_mm = 4.5;

/// From micrometres to places on the page.
struct Axis {
  std::int64_t from = 0;
  std::int64_t to = 1;
  std::int64_t tick = 100;
  double left_mm = 0;
  double right_mm = 0;

  [[nodiscard]] double x(double micrometre) const {
    return left_mm + (micrometre - static_cast<double>(from)) / static_cast<double>(to - from) * (right_mm - left_mm);
  }
};

std::vector<const FloatSeries*> shown(const Record& record) {
  std::vector<const FloatSeries*> found;
  for (const Side side : {Side::lower, Side::upper}) {
    for (const FloatSeries& series : record.floats) {
      const bool judged = series.judged && !series.judged->spot_floats.empty();
      if (series.side == side && series.latest && judged && series.limits.least < series.limits.most) {
        found.push_back(&series);
      }
    }
  }
  return found;
}

std::int64_t tick_for(std::int64_t span) {
  for (const std::int64_t tick : {10, 20, 50, 100, 200, 500, 1000, 2000, 5000}) {
    if (span / tick <= 9) {
      return tick;
    }
  }
  return span / 5;
}

std::int64_t down_to(std::int64_t value, std::int64_t step) {
  return static_cast<std::int64_t>(std::floor(static_cast<double>(value) / static_cast<double>(step))) * step;
}

Axis axis_for(const std::vector<const FloatSeries*>& series, const PageWriter& writer) {
  std::int64_t least = series.front()->limits.least.count();
  std::int64_t most = series.front()->limits.most.count();
  for (const FloatSeries* each : series) {
    least = std::min(least, each->limits.least.count());
    most = std::max(most, each->limits.most.count());
    const FloatJudged judged = each->judged.value_or(FloatJudged{});
    const std::int64_t u = judged.expanded_u.value_or(0);
    for (const std::int64_t spot : judged.spot_floats) {
      least = std::min(least, spot - u);
      most = std::max(most, spot + u);
    }
  }
  Axis axis;
  axis.tick = tick_for(most - least);
  axis.from = down_to(least - axis.tick / 5, axis.tick);
  axis.to = down_to(most + axis.tick / 5, axis.tick) + axis.tick;
  axis.left_mm = writer.left() + 33;
  axis.right_mm = writer.right() - 22;
  return axis;
}

void draw_zones(PageWriter& writer, const Axis& axis, const FloatSeries& series, double top_mm) {
  const auto least = static_cast<double>(series.limits.least.count());
  const auto most = static_cast<double>(series.limits.most.count());
  writer.add(Rectangle{{axis.x(least), top_mm, axis.x(most) - axis.x(least), bar_mm}, Ink::band, std::nullopt});
  // Expanded uncertainty is twice the standard one; the guard is a multiple of that.
  const double guard = series.limits.guard_factor *
                       static_cast<double>(series.judged.value_or(FloatJudged{}).expanded_u.value_or(0)) / 2;
  const double inside = std::min(guard, (most - least) / 2);
  if (inside <= 0) {
    return;
  }
  for (const double from : {least, most - inside}) {
    const Box zone{axis.x(from), top_mm, axis.x(from + inside) - axis.x(from), bar_mm};
    writer.add(Rectangle{zone, Ink::guard, std::nullopt});
    writer.add(Hatch{zone, 1.4, Ink::amber_edge});
  }
}

Ink ink_of(ReadingVerdict verdict) {
  const bool off = verdict == ReadingVerdict::too_small || verdict == ReadingVerdict::too_large;
  return off ? Ink::brick : verdict == ReadingVerdict::on_limit ? Ink::text : Ink::blue;
}

void draw_marks(PageWriter& writer, const Axis& axis, const FloatSeries& series, double middle_mm) {
  const FloatJudged judged = series.judged.value_or(FloatJudged{});
  const auto u = static_cast<double>(judged.expanded_u.value_or(0));
  for (std::size_t at = 0; at < judged.spot_floats.size(); ++at) {
    const auto value = static_cast<double>(judged.spot_floats[at]);
    const ReadingVerdict verdict = at < judged.spot_verdicts.size() ? judged.spot_verdicts[at] : ReadingVerdict::none;
    writer.line(axis.x(value - u), middle_mm, axis.x(value + u), middle_mm, 0.35, ink_of(verdict));
    const ShapeKind kind = verdict == ReadingVerdict::too_small   ? ShapeKind::triangle_down
                           : verdict == ReadingVerdict::too_large ? ShapeKind::triangle_up
                                                                  : ShapeKind::disc;
    writer.add(Shape{kind, axis.x(value), middle_mm, 2.2, ink_of(verdict), std::nullopt});
  }
}

void draw_limits(PageWriter& writer, const Axis& axis, const FloatSeries& series, double label_baseline_mm,
                 double top_mm, double end_mm) {
  for (const quantity::Length limit : {series.limits.least, series.limits.most}) {
    const double x = axis.x(static_cast<double>(limit.count()));
    writer.line(x, top_mm, x, end_mm, 0.4, Ink::text);
    writer.centred(x, label_baseline_mm, millimetre_digits(limit.count()), FontRole::strong);
  }
}

void draw_ticks(PageWriter& writer, const Axis& axis, double baseline_mm) {
  const int decimals = axis.tick >= 100 ? 1 : 2;
  for (std::int64_t at = axis.from; at <= axis.to; at += axis.tick) {
    writer.centred(axis.x(static_cast<double>(at)), baseline_mm,
                   quantity::with_true_minus(quantity::millimetre_text(quantity::micrometres(at), decimals)),
                   FontRole::small, Ink::soft);
  }
}

bool same_limits(const std::vector<const FloatSeries*>& all) {
  return std::all_of(all.begin(), all.end(), [&](const FloatSeries* each) {
    return each->limits.least == all.front()->limits.least && each->limits.most == all.front()->limits.most;
  });
}

void draw_strip(PageWriter& writer, const std::vector<const FloatSeries*>& series) {
  constexpr double above_mm = 4.6;
  constexpr double below_mm = 5.4;
  const double height = above_mm + row_mm * static_cast<double>(series.size()) + below_mm;
  writer.need(height);
  const Axis axis = axis_for(series, writer);
  const double first = writer.y() + above_mm;
  for (std::size_t at = 0; at < series.size(); ++at) {
    const double top = first + row_mm * static_cast<double>(at);
    draw_zones(writer, axis, *series[at], top);
    const std::string label = say(SHIMWRIGHT_TEXT("record", "{0} disc, {1}"),
                                  {disc_word(series[at]->side), std::to_string(series[at]->place.assembly)});
    writer.text(writer.left() + 1.5, top + 3.3, label, FontRole::strong);
  }
  const double end = first + row_mm * static_cast<double>(series.size()) - (row_mm - bar_mm) + 0.6;
  draw_limits(writer, axis, *series.front(), writer.y() + 3.2, first - 0.6, end);
  for (std::size_t at = 0; at < series.size(); ++at) {
    draw_marks(writer, axis, *series[at], first + row_mm * static_cast<double>(at) + bar_mm / 2);
  }
  draw_ticks(writer, axis, end + 3.9);
  writer.piece(height);
}

}  // namespace

void write_float_strip(PageWriter& writer, const Record& record) {
  const auto series = shown(record);
  if (series.empty()) {
    return;
  }
  writer.gap(1);
  if (same_limits(series)) {
    draw_strip(writer, series);
    return;
  }
  for (const FloatSeries* each : series) {
    draw_strip(writer, {each});
  }
}

}  // namespace shimwright::record
