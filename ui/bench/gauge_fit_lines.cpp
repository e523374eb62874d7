#include "gauge_fit_lines.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "judged_words.h"
#include "shimwright/quantity/typed_number.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

namespace {

using widgets::qt;
using widgets::ShimRow;

/// A chance below that is shown as none.
constexpr double no_chance = 0.005;

using Chances = std::map<std::string, double>;

Chances chances_in(const std::optional<shim::GaugeFitAnswer>& answer) {
  Chances chances;
  if (answer && answer->seat) {
    for (const shim::ShimChance& each : answer->seat->p_best) {
      chances[each.shim] = each.p;
    }
  }
  return chances;
}

/// For each shim without a chance the trial, from 1, after which it had none; 0: it had none before any.
std::map<std::string, std::size_t> ruled_out_by(const shim::AdviseCase& engine_case) {
  std::map<std::string, std::size_t> trial_of;
  shim::AdviseCase so_far = engine_case;
  so_far.disc_float.reset();
  if (!so_far.gauge_fit) {
    return trial_of;
  }
  const auto trials = so_far.gauge_fit->trials;
  for (std::size_t count = 0; count <= trials.size(); ++count) {
    so_far.gauge_fit->trials = {trials.begin(), trials.begin() + static_cast<std::ptrdiff_t>(count)};
    const auto checked = shim::checked(so_far);
    if (!checked) {
      return trial_of;
    }
    for (const auto& [shim, chance] : chances_in(shim::advise(*checked).gauge_fit)) {
      if (chance >= no_chance) {
        trial_of.erase(shim);
      } else {
        trial_of.try_emplace(shim, count);
      }
    }
  }
  return trial_of;
}

std::vector<shim::Shim> thick_to_thin_shims(const shim::Tray& tray) {
  std::vector<shim::Shim> shims = tray;
  std::sort(shims.begin(), shims.end(), [](const auto& one, const auto& two) { return one.thickness > two.thickness; });
  return shims;
}

/// The last trial of each shim, from 1.
std::map<std::string, std::size_t> last_trials(const shim::GaugeFitCase& gauge_fit) {
  std::map<std::string, std::size_t> last;
  for (std::size_t at = 0; at < gauge_fit.trials.size(); ++at) {
    last[gauge_fit.trials[at].shim] = at + 1;
  }
  return last;
}

QString trial_words(const shim::GaugeFitCase& gauge_fit, std::size_t number) {
  return QCoreApplication::translate("bench", "%1, trial %2")
      .arg(fit_words(gauge_fit.trials[number - 1].fit))
      .arg(number);
}

QString ruled_out_words(std::size_t trial) {
  return trial == 0 ? QCoreApplication::translate("bench", "less than 1 in 100 from the start")
                    : QCoreApplication::translate("bench", "ruled out by trial %1").arg(trial);
}

QString ruled_out_words(const std::set<std::size_t>& trials) {
  if (trials.size() < 2) {
    return trials.empty() ? QString() : ruled_out_words(*trials.begin());
  }
  QStringList numbers;
  for (const std::size_t each : trials) {
    if (each > 0) {
      numbers.append(QString::number(each));
    }
  }
  return QCoreApplication::translate("bench", "ruled out by trials %1").arg(numbers.join(QStringLiteral(", ")));
}

QString tray_words(const std::vector<job::TrayShim>& tray, const std::string& shim, bool with_thickness) {
  const auto found = std::find_if(tray.begin(), tray.end(), [&](const auto& each) { return each.id == shim; });
  if (found == tray.end()) {
    return QCoreApplication::translate("bench", "not in the tray");
  }
  const QString measured = QCoreApplication::translate("bench", "measured %1")
                               .arg(widgets::length_shown(quantity::in_millimetres(found->thickness), 3));
  const auto& left = found->count;
  if (!left) {
    return with_thickness ? measured : QString();
  }
  const QString count = *left == 0 ? QCoreApplication::translate("bench", "none left in the tray")
                                   : QCoreApplication::translate("bench", "%1 in the tray").arg(*left);
  return with_thickness ? count + QStringLiteral(", ") + measured : count;
}

std::vector<ShimRow> contradiction_rows(const job::Judgement& judgement, const std::vector<job::TrayShim>& tray,
                                        const ShimInHand& hand) {
  if (!judgement.engine_case.gauge_fit) {
    return {};
  }
  const shim::GaugeFitCase& gauge_fit = *judgement.engine_case.gauge_fit;
  std::set<std::string> concerned;
  for (const std::size_t trial : contradicting_trials(judgement)) {
    concerned.insert(gauge_fit.trials[trial].shim);
  }
  std::vector<ShimRow> rows;
  for (const shim::Shim& shim : thick_to_thin_shims(judgement.engine_case.tray)) {
    QString words;
    for (std::size_t at = 0; at < gauge_fit.trials.size(); ++at) {
      if (gauge_fit.trials[at].shim == shim.id) {
        words += (words.isEmpty() ? QString() : QStringLiteral("; ")) + trial_words(gauge_fit, at + 1);
      }
    }
    if (!words.isEmpty()) {
      ShimRow& row = rows.emplace_back();
      row.shim = shim.id;
      row.words = words;
      row.tray = tray_words(tray, shim.id, false);
      row.conflicting = concerned.count(shim.id) == 1;
      row.picked = hand.picked == shim.id;
    }
  }
  return rows;
}

}  // namespace

std::vector<ShimRow> gauge_fit_rows(const job::Judgement& judgement, const std::vector<job::TrayShim>& tray,
                                    const ShimInHand& hand) {
  if (!judgement.engine_case.gauge_fit || !judgement.answer.gauge_fit) {
    return {};
  }
  if (judgement.answer.gauge_fit->state == shim::GaugeFitState::contradiction) {
    return contradiction_rows(judgement, tray, hand);
  }
  const shim::GaugeFitCase& gauge_fit = *judgement.engine_case.gauge_fit;
  const Chances chances = chances_in(judgement.answer.gauge_fit);
  const auto ruled_out = ruled_out_by(judgement.engine_case);
  const auto tried = last_trials(gauge_fit);
  std::vector<ShimRow> rows;
  for (const shim::Shim& shim : thick_to_thin_shims(judgement.engine_case.tray)) {
    ShimRow& row = rows.emplace_back();
    row.shim = shim.id;
    row.advised = hand.advised == shim.id;
    row.picked = hand.picked == shim.id;
    const auto out = ruled_out.find(shim.id);
    const auto trial = tried.find(shim.id);
    const bool felt_wrong = trial != tried.end() && gauge_fit.trials[trial->second - 1].fit != shim::Fit::snug;
    row.struck = (out != ruled_out.end() && !gauge_fit.trials.empty()) || felt_wrong;
    const auto chance = chances.find(shim.id);
    if (out == ruled_out.end() && chance != chances.end()) {
      // What was felt to be wrong is struck out; what little the engine leaves it would contradict that.
      row.share = felt_wrong ? std::nullopt : std::optional(chance->second);
      row.words = felt_wrong ? QString() : chance_words(chance->second);
    } else if (out != ruled_out.end()) {
      row.words = ruled_out_words(out->second);
    }
    if (trial != tried.end()) {
      const QString words = trial_words(gauge_fit, trial->second);
      row.words = out != ruled_out.end() || row.words.isEmpty() ? words : words + QStringLiteral(" · ") + row.words;
    }
    row.tray = row.struck ? QString() : tray_words(tray, shim.id, row.advised || row.picked);
    row.tray_in_short = row.struck ? QString() : tray_words(tray, shim.id, false);
  }
  return rows;
}

FoldWords gauge_fit_folds(const job::Judgement& judgement) {
  auto ruled_out = ruled_out_by(judgement.engine_case);
  if (judgement.engine_case.gauge_fit) {
    for (const auto& [shim, trial] : last_trials(*judgement.engine_case.gauge_fit)) {
      if (judgement.engine_case.gauge_fit->trials[trial - 1].fit != shim::Fit::snug) {
        ruled_out.try_emplace(shim, trial);
      }
    }
  }
  std::set<std::size_t> above;
  std::set<std::size_t> below;
  bool live_seen = false;
  for (const shim::Shim& shim : thick_to_thin_shims(judgement.engine_case.tray)) {
    const auto out = ruled_out.find(shim.id);
    if (out == ruled_out.end()) {
      live_seen = true;
      below.clear();
    } else {
      (live_seen ? below : above).insert(out->second);
    }
  }
  return {ruled_out_words(above), ruled_out_words(below)};
}

QString gauge_fit_line(const job::Judgement& judgement) {
  const auto& answer = judgement.answer.gauge_fit;
  if (!answer || answer->state != shim::GaugeFitState::try_shim || !answer->seat) {
    return widgets::say(judgement.advised.reason);
  }
  const QString line =
      QCoreApplication::translate("bench", "About %1 trials left; from the thickest down it would be %2.")
          .arg(QString::number(answer->seat->expected_trials_left, 'f', 1),
               QString::number(answer->seat->step_down_trials_left, 'f', 1));
  const auto none_fits = std::lround(100 * (answer->seat->p_tray_too_thick + answer->seat->p_tray_too_thin));
  return none_fits == 0
             ? line
             : line + QCoreApplication::translate("bench", " That no shim of the tray fits: %1 in 100.").arg(none_fits);
}

std::vector<std::size_t> contradicting_trials(const job::Judgement& judgement) {
  std::set<std::size_t> trials;
  if (judgement.answer.gauge_fit) {
    for (const shim::ContradictingTrials& each : judgement.answer.gauge_fit->contradictions) {
      trials.insert(each.at_least);
      trials.insert(each.below);
    }
  }
  return {trials.begin(), trials.end()};
}

QString contradiction_text(const job::Judgement& judgement) {
  QString text;
  if (judgement.answer.gauge_fit && judgement.engine_case.gauge_fit) {
    const auto& trials = judgement.engine_case.gauge_fit->trials;
    const auto named = [&](std::size_t at) {
      return QCoreApplication::translate("bench", "trial %1 (%2 %3)")
          .arg(at + 1)
          .arg(qt(trials[at].shim), fit_words(trials[at].fit));
    };
    for (const shim::ContradictingTrials& each : judgement.answer.gauge_fit->contradictions) {
      text += QCoreApplication::translate("bench", "No seat fits both %1 and %2. ")
                  .arg(named(each.at_least), named(each.below));
    }
  }
  return text + widgets::say(judgement.advised.reason);
}

std::optional<std::string> shim_marked(const std::vector<job::TrayShim>& tray, const std::string& text) {
  const auto wanted = quantity::read_number(text, quantity::Unit::millimetre);
  for (const job::TrayShim& each : tray) {
    const auto mark = quantity::read_number(each.id, quantity::Unit::millimetre);
    if (each.id == text || (wanted && mark && wanted->base == mark->base)) {
      return each.id;
    }
  }
  return std::nullopt;
}

}  // namespace shimwright::bench
