#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "shimwright/record/record_parts.h"

/// The words of the record, in English.
namespace shimwright::record {

/// A pattern with its arguments filled in.
[[nodiscard]] std::string say(std::string_view pattern, std::vector<std::string> arguments = {});

/// `24 Nov 2026 10:58 +00:00`: the wall clock of that day and place.
[[nodiscard]] std::string date_time(const job::Moment& moment);

/// `24 Nov 10:58` where year and offset are those of `beside`, else as date_time().
[[nodiscard]] std::string short_time(const job::Moment& moment, const job::Moment& beside);

/// `MK, 24 Nov 10:58`
[[nodiscard]] std::string who_when(const Stamp& stamp, const job::Moment& beside);

/// The number of the assembly; blank for a step asked once in a job.
[[nodiscard]] std::string assembly_number(const Place& place);

[[nodiscard]] std::string word_of(ReadingVerdict verdict);
[[nodiscard]] std::string word_of(job::Fit fit);
[[nodiscard]] std::string bearing_word(Side side);   ///< `Large`, `Small`
[[nodiscard]] std::string disc_word(Side side);      ///< `Lower`, `Upper`
[[nodiscard]] std::string ordinal_word(int number);  ///< `first`, `second`, … `12th`
[[nodiscard]] std::string signer_word(sheet::Signer signer);

/// `0.25 to 0.85`, `at most 12`, `at least 5`; with the unit where it is not `unit`.
[[nodiscard]] std::string limit_text(const job::LimitUsed& limit, quantity::Unit unit);

/// The verdict of several spots: `not_equal` stands for mixed, too small here and too large there. Else the first of
/// too small, too large, on limit that is found, else within; `none` where nothing was judged.
[[nodiscard]] ReadingVerdict disc_verdict(const std::vector<ReadingVerdict>& spots);

/// As word_of, but `mixed` for a disc that is too small here and too large there.
[[nodiscard]] std::string disc_verdict_word(ReadingVerdict verdict);

/// Millimetres without the unit, two decimals at least and as many as needed: `0.25`, `0.055`.
[[nodiscard]] std::string millimetre_digits(std::int64_t micrometres);

[[nodiscard]] std::string joined(const std::vector<std::string>& parts, std::string_view between);

/// Each text once, in the order of their first appearance.
[[nodiscard]] std::vector<std::string> each_once(const std::vector<std::string>& texts);

/// `one` for one, else `many` with the count as `{0}`.
[[nodiscard]] std::string counted(std::size_t count, std::string_view one, std::string_view many);

}  // namespace shimwright::record
