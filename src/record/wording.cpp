#include "wording.h"

#include <algorithm>
#include <array>
#include <chrono>

#include <fmt/format.h>

#include "shimwright/quantity/error.h"

namespace shimwright::record {

namespace {

struct WallClock {
  int year = 0;
  unsigned month = 0;
  unsigned day = 0;
  int hour = 0;
  int minute = 0;
};

WallClock wall_clock(const job::Moment& moment) {
  using std::chrono::days;
  using std::chrono::milliseconds;
  using std::chrono::minutes;
  const std::chrono::sys_time<milliseconds> local(milliseconds(moment.at_ms) + minutes(moment.offset_min));
  const auto day = std::chrono::floor<days>(local);
  const std::chrono::year_month_day date(day);
  const auto minute = std::chrono::floor<minutes>(local - day).count();
  return {static_cast<int>(date.year()), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
          static_cast<int>(minute / 60), static_cast<int>(minute % 60)};
}

std::string month_name(unsigned month) {
  static const std::array<const char*, 12> names = {
      SHIMWRIGHT_TEXT("record", "Jan"), SHIMWRIGHT_TEXT("record", "Feb"), SHIMWRIGHT_TEXT("record", "Mar"),
      SHIMWRIGHT_TEXT("record", "Apr"), SHIMWRIGHT_TEXT("record", "May"), SHIMWRIGHT_TEXT("record", "Jun"),
      SHIMWRIGHT_TEXT("record", "Jul"), SHIMWRIGHT_TEXT("record", "Aug"), SHIMWRIGHT_TEXT("record", "Sep"),
      SHIMWRIGHT_TEXT("record", "Oct"), SHIMWRIGHT_TEXT("record", "Nov"), SHIMWRIGHT_TEXT("record", "Dec")};
  return names[(month - 1) % names.size()];
}

std::string offset_text(int offset_min) {
  const int size = offset_min < 0 ? -offset_min : offset_min;
  return fmt::format("{}{:02}:{:02}", offset_min < 0 ? '-' : '+', size / 60, size % 60);
}

bool found(const std::vector<ReadingVerdict>& spots, ReadingVerdict verdict) {
  return std::find(spots.begin(), spots.end(), verdict) != spots.end();
}

}  // namespace

std::string say(std::string_view pattern, std::vector<std::string> arguments) {
  return Message{std::string(pattern), std::move(arguments)}.in_english();
}

std::string date_time(const job::Moment& moment) {
  const WallClock at = wall_clock(moment);
  return fmt::format("{} {} {} {:02}:{:02} {}", at.day, month_name(at.month), at.year, at.hour, at.minute,
                     offset_text(moment.offset_min));
}

std::string short_time(const job::Moment& moment, const job::Moment& beside) {
  const WallClock at = wall_clock(moment);
  if (at.year != wall_clock(beside).year || moment.offset_min != beside.offset_min) {
    return date_time(moment);
  }
  return fmt::format("{} {} {:02}:{:02}", at.day, month_name(at.month), at.hour, at.minute);
}

std::string who_when(const Stamp& stamp, const job::Moment& beside) {
  return stamp.initials + ", " + short_time(stamp.moment, beside);
}

std::string assembly_number(const Place& place) {
  return place.once ? "" : std::to_string(place.assembly);
}

std::string word_of(ReadingVerdict verdict) {
  switch (verdict) {
    case ReadingVerdict::none:
      return SHIMWRIGHT_TEXT("record", "no limit");
    case ReadingVerdict::within:
      return SHIMWRIGHT_TEXT("record", "within");
    case ReadingVerdict::too_small:
      return SHIMWRIGHT_TEXT("record", "too small");
    case ReadingVerdict::too_large:
      return SHIMWRIGHT_TEXT("record", "too large");
    case ReadingVerdict::on_limit:
      return SHIMWRIGHT_TEXT("record", "on limit");
    case ReadingVerdict::not_equal:
      return SHIMWRIGHT_TEXT("record", "not equal");
  }
  return "";
}

std::string word_of(job::Fit fit) {
  switch (fit) {
    case job::Fit::tight:
      return SHIMWRIGHT_TEXT("record", "tight");
    case job::Fit::snug:
      return SHIMWRIGHT_TEXT("record", "snug");
    case job::Fit::loose:
      return SHIMWRIGHT_TEXT("record", "loose");
  }
  return "";
}

std::string bearing_word(Side side) {
  return side == Side::lower ? SHIMWRIGHT_TEXT("record", "Large") : SHIMWRIGHT_TEXT("record", "Small");
}

std::string disc_word(Side side) {
  return side == Side::lower ? SHIMWRIGHT_TEXT("record", "Lower") : SHIMWRIGHT_TEXT("record", "Upper");
}

std::string ordinal_word(int number) {
  static const std::array<const char*, 5> words = {
      SHIMWRIGHT_TEXT("record", "first"), SHIMWRIGHT_TEXT("record", "second"), SHIMWRIGHT_TEXT("record", "third"),
      SHIMWRIGHT_TEXT("record", "fourth"), SHIMWRIGHT_TEXT("record", "fifth")};
  if (number >= 1 && number <= static_cast<int>(words.size())) {
    return words[static_cast<std::size_t>(number - 1)];
  }
  return say(SHIMWRIGHT_TEXT("record", "no. {0}"), {std::to_string(number)});
}

std::string signer_word(sheet::Signer signer) {
  return signer == sheet::Signer::technician ? SHIMWRIGHT_TEXT("record", "Technician")
                                             : SHIMWRIGHT_TEXT("record", "Checked by");
}

std::string limit_text(const job::LimitUsed& limit, quantity::Unit unit) {
  const auto number = [&](std::int64_t base) {
    const TypedNumber typed{base, limit.decimals, limit.unit};
    return quantity::with_true_minus(limit.unit == unit ? quantity::digits_of(typed) : quantity::text_of(typed));
  };
  if (limit.least && limit.most) {
    return say(SHIMWRIGHT_TEXT("record", "{0} to {1}"), {number(*limit.least), number(*limit.most)});
  }
  if (limit.most) {
    return say(SHIMWRIGHT_TEXT("record", "at most {0}"), {number(*limit.most)});
  }
  return limit.least ? say(SHIMWRIGHT_TEXT("record", "at least {0}"), {number(*limit.least)}) : "";
}

ReadingVerdict disc_verdict(const std::vector<ReadingVerdict>& spots) {
  if (found(spots, ReadingVerdict::too_small) && found(spots, ReadingVerdict::too_large)) {
    return ReadingVerdict::not_equal;
  }
  for (const auto verdict : {ReadingVerdict::too_small, ReadingVerdict::too_large, ReadingVerdict::on_limit}) {
    if (found(spots, verdict)) {
      return verdict;
    }
  }
  return found(spots, ReadingVerdict::within) ? ReadingVerdict::within : ReadingVerdict::none;
}

std::string disc_verdict_word(ReadingVerdict verdict) {
  return verdict == ReadingVerdict::not_equal ? SHIMWRIGHT_TEXT("record", "mixed") : word_of(verdict);
}

std::string millimetre_digits(std::int64_t micrometres) {
  return quantity::with_true_minus(
      quantity::millimetre_text(quantity::micrometres(micrometres), micrometres % 10 == 0 ? 2 : 3));
}

std::string joined(const std::vector<std::string>& parts, std::string_view between) {
  std::string all;
  for (const std::string& part : parts) {
    if (!all.empty() && !part.empty()) {
      all += between;
    }
    all += part;
  }
  return all;
}

std::vector<std::string> each_once(const std::vector<std::string>& texts) {
  std::vector<std::string> once;
  for (const std::string& text : texts) {
    if (std::find(once.begin(), once.end(), text) == once.end()) {
      once.push_back(text);
    }
  }
  return once;
}

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return count == 1 ? std::string(one) : say(many, {std::to_string(count)});
}

}  // namespace shimwright::record
