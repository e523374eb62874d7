#include "depth_sum.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>

#include "judged_words.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

namespace {

using quantity::in_millimetres;
using quantity::Length;

/// `− 2.90`, `+ 0.05`: what is added on a line of its own.
QString added_words(Length length) {
  const QString sign = length < Length() ? QStringLiteral("\u2212 ") : QStringLiteral("+ ");
  return sign + length_words(std::abs(in_millimetres(length)));
}

QString list_words(const std::vector<Length>& lengths) {
  QStringList words;
  for (const Length each : lengths) {
    words.append(length_words(in_millimetres(each)));
  }
  const QString last = words.takeLast();
  return words.isEmpty()
             ? last
             : QCoreApplication::translate("bench", "%1 and %2").arg(words.join(QStringLiteral(", ")), last);
}

double mean_mm(const std::vector<Length>& lengths) {
  const auto sum = std::accumulate(lengths.begin(), lengths.end(), Length());
  return in_millimetres(sum) / static_cast<double>(lengths.size());
}

shim::Tray thin_to_thick_shims(shim::Tray tray) {
  std::sort(tray.begin(), tray.end(), [](const auto& one, const auto& two) { return one.thickness < two.thickness; });
  return tray;
}

/// Where the ranges of the spec sheet name borders they are those; else halfway between two sizes.
std::optional<double> border_above(const shim::DepthCase& depth, const shim::Tray& shims, std::size_t at) {
  if (at + 1 >= shims.size()) {
    return std::nullopt;
  }
  if (!depth.bins) {
    return (in_millimetres(shims[at].thickness) + in_millimetres(shims[at + 1].thickness)) / 2.0;
  }
  std::optional<double> border;
  for (const shim::DepthBin& bin : *depth.bins) {
    if (bin.shim == shims[at].id) {
      border = in_millimetres(bin.to);
    }
  }
  return border;
}

}  // namespace

std::vector<SumLine> depth_sum(const job::Judgement& judgement) {
  const auto& depth = judgement.engine_case.depth;
  const auto& answer = judgement.answer.depth;
  if (!depth || !answer || !answer->required_mm || depth->readings.empty()) {
    return {};
  }
  std::vector<SumLine> lines;
  lines.push_back({QCoreApplication::translate("bench", "mean of %1").arg(list_words(depth->readings)),
                   length_words(mean_mm(depth->readings)), false});
  lines.push_back({QCoreApplication::translate("bench", "less reference"), added_words(-depth->reference), false});
  for (const shim::DepthConstant& each : depth->constants) {
    lines.push_back({widgets::qt(each.name), added_words(each.add), false});
  }
  if (depth->stamp_used && depth->stamp) {
    lines.push_back({QCoreApplication::translate("bench", "stamp"), added_words(*depth->stamp), false});
  }
  const bool whole_hundredths = std::llround(*answer->required_mm * 1000.0) % 10 == 0;
  const int decimals = whole_hundredths ? 2 : 3;  // the same before the ± and behind it
  QString wanted = length_words(*answer->required_mm, decimals);
  if (answer->u_required_mm) {
    wanted += QStringLiteral(" \u00b1 ") + length_words(1.96 * *answer->u_required_mm, decimals);
  }
  lines.push_back(
      {widgets::with_length_unit(QCoreApplication::translate("bench", "shim wanted, mm (95 %)")), wanted, true});
  return lines;
}

std::vector<widgets::SizeCell> depth_sizes(const job::Judgement& judgement) {
  std::vector<widgets::SizeCell> cells;
  if (!judgement.engine_case.depth || !judgement.answer.depth) {
    return cells;
  }
  const shim::Tray shims = thin_to_thick_shims(judgement.engine_case.tray);
  const auto& candidates = judgement.answer.depth->candidates;
  const bool edge = judgement.answer.depth->state == shim::DepthState::edge;
  for (std::size_t at = 0; at < shims.size(); ++at) {
    widgets::SizeCell& cell = cells.emplace_back();
    cell.shim = shims[at].id;
    cell.to_mm = border_above(*judgement.engine_case.depth, shims, at);
    cell.candidate = edge && std::find(candidates.begin(), candidates.end(), cell.shim) != candidates.end();
    cell.chosen = !edge && judgement.answer.depth->shim == cell.shim;
  }
  return cells;
}

QString depth_margin(const job::Judgement& judgement) {
  const auto& depth = judgement.engine_case.depth;
  const auto& answer = judgement.answer.depth;
  if (!depth || !answer) {
    return {};
  }
  QString text;
  if (answer->required_mm && answer->state == shim::DepthState::shim) {
    const auto cells = depth_sizes(judgement);
    std::optional<double> nearest;
    QString beyond;
    for (std::size_t at = 0; at + 1 < cells.size(); ++at) {
      const std::optional<double>& border = cells[at].to_mm;
      const double away = border ? std::abs(*answer->required_mm - *border) : 0.0;
      if (border && (!nearest || away < *nearest)) {
        nearest = away;
        beyond = widgets::qt(cells[at].shim == answer->shim ? cells[at + 1].shim : cells[at].shim);
      }
    }
    if (nearest) {
      text =
          QCoreApplication::translate("bench", "%1 from the border to %2. ").arg(length_with_unit(*nearest, 3), beyond);
    }
  }
  const auto as_read = [](quantity::Length length) {
    return QStringLiteral("%1 %2").arg(length_words(in_millimetres(length)), widgets::length_symbol());
  };
  return text + QCoreApplication::translate("bench", "The places differ by %1, allowed %2.")
                    .arg(as_read(answer->spread), as_read(depth->max_spread));
}

QString other_sign_words(const job::Judgement& judgement) {
  shim::AdviseCase other = judgement.engine_case;
  if (!other.depth || !other.depth->stamp || *other.depth->stamp == Length() || !judgement.answer.depth) {
    return {};
  }
  const bool was_minus = *other.depth->stamp < Length();
  other.depth->stamp = -*other.depth->stamp;
  const auto checked = shim::checked(other);
  if (!checked) {
    return {};
  }
  const auto answer = shim::advise(*checked).depth;
  if (!answer || !answer->required_mm || !judgement.answer.depth->required_mm ||
      (answer->shim == judgement.answer.depth->shim && answer->candidates == judgement.answer.depth->candidates)) {
    return {};
  }
  const QString sign =
      was_minus ? QCoreApplication::translate("bench", "plus") : QCoreApplication::translate("bench", "minus");
  const auto words = [](const shim::DepthAnswer& each) {
    if (each.state == shim::DepthState::edge && each.candidates.size() == 2) {
      return QCoreApplication::translate("bench", "%1 or %2")
          .arg(widgets::qt(each.candidates[0]), widgets::qt(each.candidates[1]));
    }
    return each.shim
               ? widgets::qt(*each.shim)
               : QCoreApplication::translate("bench", "%1, no shim of the tray").arg(length_words(*each.required_mm));
  };
  return QCoreApplication::translate("bench", "With %1 it would be %2 instead of %3.")
      .arg(sign, words(*answer), words(*judgement.answer.depth));
}

QString depth_heading(job::Conclusion conclusion) {
  switch (conclusion) {
    case job::Conclusion::tilted:
      return QCoreApplication::translate("bench", "Tilted: the places differ too much");
    case job::Conclusion::impossible:
      return QCoreApplication::translate("bench", "This sum cannot be");
    case job::Conclusion::outside:
      return QCoreApplication::translate("bench", "Outside the tray");
    case job::Conclusion::far:
      return QCoreApplication::translate("bench", "A size is missing in the tray");
    case job::Conclusion::edge:
      return QCoreApplication::translate("bench", "On the border of two sizes");
    default:
      return QCoreApplication::translate("bench", "The sum");
  }
}

}  // namespace shimwright::bench
