#include "float_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "judged_words.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/shim/tilt.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

namespace {

using quantity::in_millimetres;
using widgets::Mark;
using widgets::qt;

const shim::RankedShim* ranked(const job::Judgement& judgement) {
  const auto& answer = judgement.answer.disc_float;
  if (!answer || !answer->ranking || !answer->shim) {
    return nullptr;
  }
  const auto& shims = answer->ranking->shims;
  const auto found =
      std::find_if(shims.begin(), shims.end(), [&](const auto& each) { return each.shim == *answer->shim; });
  return found == shims.end() ? nullptr : &*found;
}

QString limits_words(const sheet::FloatSpec& spec) {
  return widgets::with_length_unit(QCoreApplication::translate("bench", "limits %1 to %2 mm"))
      .arg(length_words(in_millimetres(spec.least)), length_words(in_millimetres(spec.most)));
}

double largest_u(const shim::FloatJudgement& judged) {
  const auto largest = std::max_element(judged.u_spot_mm.begin(), judged.u_spot_mm.end());
  return largest == judged.u_spot_mm.end() ? 0.0 : *largest;
}

/// Clockwise from the first spot, 0 to 359.
long degrees_from_first_spot(const std::vector<shim::FloatSpot>& spots, double angle_deg) {
  const double first = spots.empty() ? 0.0 : spots.front().angle_deg;
  return (std::lround(angle_deg - first) % 360 + 360) % 360;
}

QString if_the_float_stays(const job::Judgement& judgement) {
  const shim::RankedShim* shim = ranked(judgement);
  const bool other = shim != nullptr && judgement.engine_case.disc_float &&
                     shim->shim != judgement.engine_case.disc_float->fitted_shim;
  return !other ? QString()
                : widgets::with_length_unit(
                      QCoreApplication::translate(
                          "bench",
                          " If the float stays: fit %1, expected %2 ± %3 mm (95 %), %4 to be inside at "
                          "every spot."))
                      .arg(qt(shim->shim), length_words(shim->predicted_mm, 2), length_words(1.96 * shim->u_mm, 2),
                           chance_words(shim->p_within));
}

QString sensitivity_words(const job::Judgement& judgement, const metrology::SlopeEstimate& slope) {
  QString source;
  const bool by_sheet = judgement.engine_case.disc_float && judgement.engine_case.disc_float->sensitivity;
  if (by_sheet && slope.pairs > 0) {
    source = QCoreApplication::translate("bench", "spec sheet and %1 pairs of this workshop").arg(slope.pairs);
  } else if (by_sheet) {
    source = QCoreApplication::translate("bench", "spec sheet");
  } else {
    source = QCoreApplication::translate("bench", "%1 pairs of this workshop").arg(slope.pairs);
  }
  // A ratio: the same in every unit of length.
  return widgets::with_length_unit(
             QCoreApplication::translate("bench", " 1.00 mm of shim moves this float %1 ± %2 mm (95 %, %3)."))
      .arg(QString::number(slope.slope.mean, 'f', 2), QString::number(1.96 * slope.slope.sd, 'f', 2), source);
}

}  // namespace

const shim::FloatJudgement* engine_judgement(const job::Judgement& judgement) {
  const auto& answer = judgement.answer.disc_float;
  return answer && answer->judgement ? &*answer->judgement : nullptr;
}

widgets::StripText float_strip(const job::Judgement& judgement, const sheet::FloatSpec& spec, sheet::Side side) {
  const QString small = QCoreApplication::translate("bench", "%1, %2").arg(disc_words(side), limits_words(spec));
  const job::Conclusion conclusion = judgement.advised.conclusion;
  const shim::FloatJudgement* judged = engine_judgement(judgement);
  if (judged == nullptr) {
    const QString large =
        conclusion == job::Conclusion::zero_again ? QCoreApplication::translate("bench", "Zero was lost")
        : judgement.advised.questions.empty()     ? QCoreApplication::translate("bench", "Kept, not judged")
                                                  : QCoreApplication::translate("bench", "A question first");
    return {Mark::none, large, small, conclusion == job::Conclusion::zero_again};
  }
  const QString mean = length_with_unit(judged->mean_mm, 2);
  if (conclusion == job::Conclusion::for_information) {
    return {Mark::none, QCoreApplication::translate("bench", "%1 as found").arg(mean),
            QCoreApplication::translate("bench", "%1, for information").arg(disc_words(side)), false};
  }
  if (judged->verdict == metrology::Verdict::mixed) {
    // Their mean is the float of no spot and may lie within.
    const auto [least, most] = std::minmax_element(judged->float_mm.begin(), judged->float_mm.end());
    return {Mark::none,
            QCoreApplication::translate("bench", "Mixed: %1 to %2")
                .arg(length_words(*least, 2), length_with_unit(*most, 2)),
            small, true};
  }
  const bool off = judged->verdict == metrology::Verdict::too_small || judged->verdict == metrology::Verdict::too_large;
  return {mark_of(judged->verdict),
          QCoreApplication::translate("bench", "%1 %2").arg(mean, verdict_words(judged->verdict)), small, off};
}

QString float_heading(const job::Judgement& judgement, sheet::Side side) {
  const QString shim = qt(judgement.advised.shim.value_or(std::string()));
  switch (judgement.advised.conclusion) {
    case job::Conclusion::keep:
      return QCoreApplication::translate("bench", "The shim stays");
    case job::Conclusion::seat_again:
      // Two sentences: in other languages the bearing's word is another one here than by itself.
      return side == sheet::Side::lower
                 ? QCoreApplication::translate("bench", "Seat the large bearing again, then measure once more")
                 : QCoreApplication::translate("bench", "Seat the small bearing again, then measure once more");
    case job::Conclusion::measure_again:
      return QCoreApplication::translate("bench", "Measure each spot once more");
    case job::Conclusion::change_shim:
      return QCoreApplication::translate("bench", "Take the pack off and fit %1").arg(shim);
    case job::Conclusion::step_shim:
      return QCoreApplication::translate("bench", "Take the pack off, fit %1, one step, and measure again").arg(shim);
    case job::Conclusion::decide:
      return QCoreApplication::translate("bench", "On the limit: you decide");
    case job::Conclusion::no_shim:
      return QCoreApplication::translate("bench", "Look at seating and parts");
    case job::Conclusion::zero_again:
      return QCoreApplication::translate("bench", "Set zero and measure again");
    case job::Conclusion::for_information:
      return QCoreApplication::translate("bench", "Kept: it is compared with the float after the work");
    case job::Conclusion::question:
      return judgement.advised.questions.empty()
                 ? QCoreApplication::translate("bench", "No shim is known under this disc")
                 : QCoreApplication::translate("bench", "Answer the question first");
    default:
      return {};
  }
}

QString float_reason_text(const job::Judgement& judgement) {
  QString reason = widgets::say(judgement.advised.reason);
  if (judgement.advised.conclusion == job::Conclusion::seat_again) {
    return reason + if_the_float_stays(judgement);
  }
  const bool another_shim = judgement.advised.conclusion == job::Conclusion::change_shim ||
                            judgement.advised.conclusion == job::Conclusion::step_shim;
  if (another_shim && judgement.advised.trials_agree == false) {
    return QCoreApplication::translate("bench",
                                       "The trials still say otherwise; it was seated again and the float stayed. ") +
           reason;
  }
  return reason;
}

QString float_facts(const job::Judgement& judgement) {
  const shim::FloatJudgement* judged = engine_judgement(judgement);
  const std::optional<shim::FloatCase>& measured = judgement.engine_case.disc_float;
  if (judged == nullptr || !measured) {
    return {};
  }
  QString text = widgets::with_length_unit(QCoreApplication::translate("bench", "Spread %1 mm, allowed %2 mm"))
                     .arg(length_words(judged->spread_mm, 3), length_words(in_millimetres(measured->max_spread)));
  const std::optional<double>& high_at = judged->high_at_deg;
  text +=
      high_at && shim::tilt_has_direction(*judged)
          ? widgets::with_length_unit(QCoreApplication::translate(
                                          "bench", "; the float is largest at %1° clockwise from spot 1, tilt %2 mm."))
                .arg(degrees_from_first_spot(measured->spots, *high_at))
                .arg(length_words(judged->tilt_mm, 3))
          : QCoreApplication::translate("bench", ": no tilt beyond what the readings are uncertain by.");
  if (judgement.advised.expanded_u) {
    text += widgets::with_length_unit(QCoreApplication::translate("bench", " Each spot ± %1 mm (95 %)."))
                .arg(length_words(static_cast<double>(*judgement.advised.expanded_u) / 1000.0, 3));
  }
  const bool with_slope = judged->sensitivity && judgement.advised.conclusion != job::Conclusion::for_information;
  return with_slope ? text + sensitivity_words(judgement, *judged->sensitivity) : text;
}

widgets::LimitStripView float_limits(const sheet::FloatSpec& spec,
                                     const std::vector<std::vector<const job::FloatRun*>>& runs,
                                     const std::optional<job::Judgement>& judgement) {
  widgets::LimitStripView view;
  view.least_mm = in_millimetres(spec.least);
  view.most_mm = in_millimetres(spec.most);
  const shim::FloatJudgement* judged = judgement ? engine_judgement(*judgement) : nullptr;
  if (judged != nullptr) {
    const bool judges = judgement && judgement->advised.conclusion != job::Conclusion::for_information;
    view.guard_mm = judges ? spec.guard_factor * largest_u(*judged) : 0.0;
    for (std::size_t spot = 0; spot < judged->float_mm.size(); ++spot) {
      view.marks.push_back({static_cast<int>(spot) + 1, judged->float_mm[spot],
                            judges ? mark_of(judged->spot_verdicts[spot]) : Mark::none});
    }
    return view;
  }
  for (std::size_t spot = 0; spot < runs.size(); ++spot) {
    if (!runs[spot].empty()) {
      double sum = 0.0;
      for (const job::FloatRun* run : runs[spot]) {
        sum += in_millimetres(quantity::Length(run->lifted.base - run->rest.base));
      }
      view.marks.push_back({static_cast<int>(spot) + 1, sum / static_cast<double>(runs[spot].size()), Mark::none});
    }
  }
  return view;
}

QString run_words(const job::FloatRun& run) {
  const double lift = in_millimetres(quantity::Length(run.lifted.base - run.rest.base));
  return run.lifted.decimals <= 2 && run.rest.decimals <= 2 ? length_words(lift) : length_words(lift, 3);
}

std::vector<ShimPromise> shim_promises(const job::Judgement& judgement) {
  std::vector<ShimPromise> promises;
  const auto& answer = judgement.answer.disc_float;
  if (!answer || !answer->ranking || !judgement.engine_case.disc_float) {
    return promises;
  }
  for (const shim::RankedShim& each : answer->ranking->shims) {
    promises.push_back(
        {qt(each.shim),
         QStringLiteral("%1 ± %2").arg(length_words(each.predicted_mm, 2), length_words(1.96 * each.u_mm, 2)),
         chance_words(each.p_within), answer->shim == each.shim,
         judgement.engine_case.disc_float->fitted_shim == each.shim});
  }
  return promises;
}

QString dial_hint(const std::optional<job::Instrument>& dial) {
  QString direction = QCoreApplication::translate("bench", "Lifted is the higher reading while the dial runs forward.");
  if (!dial || !dial->turn) {
    return direction;
  }
  return direction + QStringLiteral(" ") +
         widgets::with_length_unit(QCoreApplication::translate("bench", "Count whole turns: one turn of %1 is %2 mm."))
             .arg(qt(dial->name), length_words(in_millimetres(*dial->turn)));
}

}  // namespace shimwright::bench
