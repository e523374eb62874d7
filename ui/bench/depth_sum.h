#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "shimwright/job/judgement.h"
#include "shimwright/widgets/size_scale.h"

/// What the depth page says of a judgement. Pure.
namespace shimwright::bench {

struct SumLine {
  QString title;  ///< `less reference`
  QString value;  ///< `− 2.90`
  bool total = false;
};

/// Line by line up to the shim wanted; nothing where the places differ too much for a sum.
[[nodiscard]] std::vector<SumLine> depth_sum(const job::Judgement& judgement);

/// The sizes, thin to thick, with the borders between them.
[[nodiscard]] std::vector<widgets::SizeCell> depth_sizes(const job::Judgement& judgement);

/// `0.055 from the border to 2.25. The places differ by 0.04, allowed 0.10.`
[[nodiscard]] QString depth_margin(const job::Judgement& judgement);

/// `With plus it would be 2.40 instead of 2.10.`; blank where no stamp is used, it is zero, or the shim is the same.
[[nodiscard]] QString other_sign_words(const job::Judgement& judgement);

/// What the depths came to, in a few words: `The places differ too much`.
[[nodiscard]] QString depth_heading(job::Conclusion conclusion);

}  // namespace shimwright::bench
