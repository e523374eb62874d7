#include "judged_words.h"

#include <QCoreApplication>
#include <cmath>

#include "shimwright/quantity/typed_number.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

namespace {

quantity::Length rounded_length(double millimetres) {
  return quantity::Length(std::llround(millimetres * 1000.0));
}

}  // namespace

QString bearing_words(sheet::Side side) {
  return side == sheet::Side::lower ? QCoreApplication::translate("bench", "large bearing")
                                    : QCoreApplication::translate("bench", "small bearing");
}

QString disc_words(sheet::Side side) {
  return side == sheet::Side::lower ? QCoreApplication::translate("bench", "lower disc")
                                    : QCoreApplication::translate("bench", "upper disc");
}

QString fit_words(shim::Fit fit) {
  switch (fit) {
    case shim::Fit::tight:
      return QCoreApplication::translate("bench", "tight");
    case shim::Fit::snug:
      return QCoreApplication::translate("bench", "snug");
    case shim::Fit::loose:
      return QCoreApplication::translate("bench", "loose");
  }
  return {};
}

QString chance_words(double chance) {
  if (chance > 0.99) {
    return QCoreApplication::translate("bench", "better than 99 in 100");
  }
  if (chance < 0.01) {
    return QCoreApplication::translate("bench", "less than 1 in 100");
  }
  return QCoreApplication::translate("bench", "%1 in 100").arg(std::lround(chance * 100.0));
}

QString length_words(double millimetres) {
  return length_words(millimetres, rounded_length(millimetres).count() % 10 == 0 ? 2 : 3);
}

QString length_words(double millimetres, int decimals) {
  return widgets::length_shown(millimetres, decimals);
}

QString length_with_unit(double millimetres, int decimals) {
  return QStringLiteral("%1 %2").arg(length_words(millimetres, decimals), widgets::length_symbol());
}

widgets::Mark mark_of(metrology::Verdict verdict) {
  switch (verdict) {
    case metrology::Verdict::within:
      return widgets::Mark::within;
    case metrology::Verdict::too_small:
      return widgets::Mark::too_small;
    case metrology::Verdict::too_large:
      return widgets::Mark::too_large;
    case metrology::Verdict::on_limit:
    case metrology::Verdict::mixed:
      return widgets::Mark::on_limit;
  }
  return widgets::Mark::none;
}

QString verdict_words(metrology::Verdict verdict) {
  switch (verdict) {
    case metrology::Verdict::within:
      return QCoreApplication::translate("bench", "within");
    case metrology::Verdict::too_small:
      return QCoreApplication::translate("bench", "too small");
    case metrology::Verdict::too_large:
      return QCoreApplication::translate("bench", "too large");
    case metrology::Verdict::on_limit:
      return QCoreApplication::translate("bench", "on the limit");
    case metrology::Verdict::mixed:
      return QCoreApplication::translate("bench", "mixed");
  }
  return {};
}

}  // namespace shimwright::bench
