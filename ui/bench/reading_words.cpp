#include "reading_words.h"

#include <QCoreApplication>

#include "job_words.h"
#include "shimwright/quantity/units_shown.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

namespace {

/// In the unit shown. In another one than its own a limit has no more digits than a reading there, where that lies on
/// its inner side: 8.85 lbf·ft for 12 N·m.
quantity::TypedNumber limit_shown(const quantity::TypedNumber& limit, bool is_most) {
  const quantity::TypedNumber shown = quantity::number_in(limit, widgets::unit_shown(limit.unit));
  const int usual = quantity::decimals_shown(2, shown.unit);
  if (shown.unit == limit.unit || shown.decimals <= usual) {
    return shown;
  }
  const quantity::TypedNumber shorter{shown.base, usual, shown.unit};
  const auto read = quantity::read_number(quantity::digits_of(shorter), shorter.unit);
  const bool inside = read && (is_most ? read->base <= limit.base : read->base >= limit.base);
  return inside ? shorter : shown;
}

QString limit_text(std::optional<std::int64_t> least, std::optional<std::int64_t> most, int decimals,
                   quantity::Unit unit) {
  const auto number = [&](std::int64_t base, bool is_most) { return limit_shown({base, decimals, unit}, is_most); };
  if (least && most) {
    return QCoreApplication::translate("bench", "%1 to %2")
        .arg(widgets::digits_shown(number(*least, false)), widgets::number_shown(number(*most, true)));
  }
  if (most) {
    return QCoreApplication::translate("bench", "at most %1").arg(widgets::number_shown(number(*most, true)));
  }
  return least ? QCoreApplication::translate("bench", "at least %1").arg(widgets::number_shown(number(*least, false)))
               : QString();
}

}  // namespace

widgets::Mark mark_of(job::ReadingVerdict verdict) {
  switch (verdict) {
    case job::ReadingVerdict::none:
      return widgets::Mark::none;
    case job::ReadingVerdict::within:
      return widgets::Mark::within;
    case job::ReadingVerdict::too_small:
      return widgets::Mark::too_small;
    case job::ReadingVerdict::too_large:
      return widgets::Mark::too_large;
    case job::ReadingVerdict::on_limit:
      return widgets::Mark::on_limit;
    case job::ReadingVerdict::not_equal:
      return widgets::Mark::not_equal;
  }
  return widgets::Mark::none;
}

QString verdict_words(job::ReadingVerdict verdict) {
  switch (verdict) {
    case job::ReadingVerdict::none:
      return {};
    case job::ReadingVerdict::within:
      return QCoreApplication::translate("bench", "within");
    case job::ReadingVerdict::too_small:
      return QCoreApplication::translate("bench", "too small");
    case job::ReadingVerdict::too_large:
      return QCoreApplication::translate("bench", "too large");
    case job::ReadingVerdict::on_limit:
      return QCoreApplication::translate("bench", "on limit");
    case job::ReadingVerdict::not_equal:
      return QCoreApplication::translate("bench", "not equal");
  }
  return {};
}

bool is_off(job::ReadingVerdict verdict) {
  switch (verdict) {
    case job::ReadingVerdict::too_small:
    case job::ReadingVerdict::too_large:
    case job::ReadingVerdict::not_equal:
      return true;
    case job::ReadingVerdict::none:
    case job::ReadingVerdict::within:
    case job::ReadingVerdict::on_limit:
      return false;
  }
  return false;
}

QString limit_words(const sheet::Limit& limit) {
  return limit_text(limit.least, limit.most, limit.decimals, limit.unit);
}

QString limit_words(const job::LimitUsed& limit) {
  return limit_text(limit.least, limit.most, limit.decimals, limit.unit);
}

QString number_words(const quantity::TypedNumber& number, bool with_sign) {
  const QString shown = widgets::number_shown(number);
  return with_sign && number.base > 0 ? QLatin1Char('+') + shown : shown;
}

QString judged_number_words(const job::Reading& reading, bool with_sign) {
  const QString number = number_words(reading.number, with_sign);
  const QString verdict = verdict_words(reading.verdict);
  return verdict.isEmpty() ? number : number + QLatin1Char(' ') + verdict;
}

QString reading_words(const job::Reading& reading) {
  QString words = judged_number_words(reading);
  if (reading.limit) {
    words += QStringLiteral(", ") + limit_words(*reading.limit);
  }
  return words;
}

widgets::StripText strip_of(const job::Reading& reading) {
  if (reading.verdict == job::ReadingVerdict::none) {
    return {};
  }
  widgets::StripText text;
  text.mark = mark_of(reading.verdict);
  text.large = judged_number_words(reading);
  text.small = reading.limit ? limit_words(*reading.limit) : QString();
  text.bad = is_off(reading.verdict);
  return text;
}

QString by_whom(const Workbench& bench, const job::Entry& entry) {
  const QString initials = bench.initials_of(entry.person);
  return QCoreApplication::translate("bench", "by %1 %2")
      .arg(initials.isEmpty() ? QStringLiteral("?") : initials, time_text(entry.moment));
}

const job::Entry* entry_numbered(const job::JobState& state, std::int64_t seq) {
  for (const job::Entry& entry : state.entries) {
    if (entry.seq == seq) {
      return &entry;
    }
  }
  return nullptr;
}

QString left_out_words(const Workbench& bench, const job::StepState& state) {
  const auto* deviation = std::get_if<job::DeviationTaken>(&state);
  const auto* not_required = std::get_if<job::SaidNotRequired>(&state);
  const std::int64_t seq = deviation != nullptr ? deviation->entry : not_required != nullptr ? not_required->entry : 0;
  const job::Entry* entry = entry_numbered(bench.state(), seq);
  if (entry == nullptr) {
    return {};
  }
  return QStringLiteral("%1, %2").arg(answer_words(entry->body), by_whom(bench, *entry));
}

const sheet::Limit* limit_of(const sheet::SpecSheet& spec, const sheet::Channel& channel) {
  const auto found = channel.limit ? spec.limits.find(*channel.limit) : spec.limits.end();
  return found == spec.limits.end() ? nullptr : &found->second;
}

QString instrument_title(sheet::InstrumentKind kind) {
  switch (kind) {
    case sheet::InstrumentKind::dial_gauge:
      return QCoreApplication::translate("bench", "Dial gauge");
    case sheet::InstrumentKind::depth_gauge:
      return QCoreApplication::translate("bench", "Depth gauge");
    case sheet::InstrumentKind::micrometer:
      return QCoreApplication::translate("bench", "Micrometer");
    case sheet::InstrumentKind::torque_wrench:
      return QCoreApplication::translate("bench", "Torque wrench");
    case sheet::InstrumentKind::thermometer:
      return QCoreApplication::translate("bench", "Thermometer");
    case sheet::InstrumentKind::multimeter:
      return QCoreApplication::translate("bench", "Multimeter");
    case sheet::InstrumentKind::pressure_gauge:
      return QCoreApplication::translate("bench", "Pressure gauge");
    case sheet::InstrumentKind::scale:
      return QCoreApplication::translate("bench", "Scale");
  }
  return {};
}

}  // namespace shimwright::bench
