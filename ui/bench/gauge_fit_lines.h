#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include <QString>

#include "shimwright/job/judgement.h"
#include "shimwright/widgets/shim_rows.h"

/// What the gauge fit page says of a judgement. Pure.
namespace shimwright::bench {

/// The shim whose fit is asked for.
struct ShimInHand {
  std::optional<std::string> advised;  ///< to try or to fit next
  QString advised_word;                ///< `try this one`
  std::optional<std::string> picked;   ///< taken by the person in place of the advised one
};

/// Thick to thin. On a contradiction the shims tried, those concerned marked; else every shim of the tray, those the
/// trials rule out struck with the trial that did it.
[[nodiscard]] std::vector<widgets::ShimRow> gauge_fit_rows(const job::Judgement& judgement,
                                                           const std::vector<job::TrayShim>& tray,
                                                           const ShimInHand& hand);

/// What stands for ruled-out rows that are folded: above the live ones, below them.
struct FoldWords {
  QString above;
  QString below;
};
[[nodiscard]] FoldWords gauge_fit_folds(const job::Judgement& judgement);

/// `About 1.7 trials left; from the thickest down it would be 2.0.`, or the reason of what the trials came to.
[[nodiscard]] QString gauge_fit_line(const job::Judgement& judgement);

/// `No seat fits both trial 1 (1.70 loose) and trial 3 (1.65 tight).` and what to do.
[[nodiscard]] QString contradiction_text(const job::Judgement& judgement);
/// The trials concerned, from 0, each once.
[[nodiscard]] std::vector<std::size_t> contradicting_trials(const job::Judgement& judgement);

/// The shim of the tray that is marked so: `1.65`, `1,65`.
[[nodiscard]] std::optional<std::string> shim_marked(const std::vector<job::TrayShim>& tray, const std::string& text);

}  // namespace shimwright::bench
