#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <rapidcheck.h>

#include "shimwright/job/entry.h"

/// Bodies of every kind, drawn at random. Each is written out member by member, so that a member added to a kind and
/// forgotten here is a warning.
namespace shimwright::job::test {

/// Draws from a generator where rapidcheck is already drawing.
template <class Value>
Value drawn(const rc::Gen<Value>& generator) {
  return *generator;
}

inline std::string text() {
  std::string joined;
  for (const auto& piece : drawn(rc::gen::container<std::vector<std::string>>(
           rc::gen::element<std::string>("a", "Z", "\"", "\\", "/", "\n", "\x01", "µ", "−", "€", "𝄞", "0", " ")))) {
    joined += piece;
  }
  return joined;
}
inline bool yes() {
  return drawn(rc::gen::arbitrary<bool>());
}
inline std::int64_t whole() {
  constexpr std::int64_t largest_exact = (std::int64_t{1} << 53) - 1;
  return drawn(rc::gen::inRange<std::int64_t>(-largest_exact, largest_exact + 1));
}
inline int small() {
  return drawn(rc::gen::inRange(-3, 2000000000));
}
template <class Word>
Word word(int count) {
  return static_cast<Word>(drawn(rc::gen::inRange(0, count)));
}
template <class Make>
auto maybe(Make make) -> std::optional<decltype(make())> {
  return yes() ? std::optional(make()) : std::nullopt;
}
template <class Make>
auto several(Make make) {
  std::vector<decltype(make())> list;
  for (int left = drawn(rc::gen::inRange(0, 4)); left > 0; --left) {
    list.push_back(make());
  }
  return list;
}

inline Side side() {
  return word<Side>(2);
}
inline ReadingVerdict verdict() {
  return word<ReadingVerdict>(6);
}
inline quantity::Unit unit() {
  return word<quantity::Unit>(19);
}
inline StepRef at() {
  return {text(), small()};
}
inline PrivateReference reference() {
  return {text(), text()};
}
inline quantity::TypedNumber number() {
  return {whole(), small(), unit()};
}
inline InstrumentUsed instrument() {
  return {text(), text(), whole(), whole(), maybe(text), yes(), maybe(text), maybe(whole)};
}
inline LimitUsed limit() {
  return {unit(), maybe(whole), maybe(whole), small(), text()};
}
inline Reading reading() {
  return {text(), number(), verdict(), maybe(limit), maybe(instrument)};
}
inline Question question() {
  return {text(), Message{text(), several(text)}};
}
inline PartFitted part() {
  return {text(), text(), whole(), text()};
}
inline AttemptValue attempt_value() {
  return {text(), maybe(number), maybe(reading)};
}

inline Advised advised() {
  return {at(),
          side(),
          text(),
          text(),
          text(),
          word<Conclusion>(20),
          maybe(text),
          several(text),
          maybe(yes),
          maybe(whole),
          several(whole),
          several(verdict),
          maybe(whole),
          several(question),
          Message{text(), several(text)}};
}
inline Opened opened() {
  return {text(),           text(),        maybe(text), maybe(reference), maybe(reference),
          maybe(reference), maybe(number), text(),      maybe(text),      maybe(text),
          text(),           text(),        text(),      text(),           text()};
}

using Makers = std::vector<EntryBody (*)()>;

/// In the order of EntryBody, as are those of late_kinds() after them.
inline Makers early_kinds() {
  return {
      [] { return EntryBody(opened()); },
      [] { return EntryBody(Done{at()}); },
      [] {
        return EntryBody(Checked{at(), yes(), text()});
      },
      [] {
        return EntryBody(Chosen{at(), text(), yes()});
      },
      [] {
        return EntryBody(Read{at(), several(reading), several(question)});
      },
      [] {
        return EntryBody(PeakRead{at(), small(), reading(), maybe(small)});
      },
      [] {
        return EntryBody(PartsFitted{at(), several(part)});
      },
      [] {
        return EntryBody(PhotoTaken{at(), text(), text(), whole(), text()});
      },
      [] {
        return EntryBody(Written{at(), text(), several(question)});
      },
      [] {
        return EntryBody(ShimTried{at(), side(), text(), word<Fit>(3), maybe([] { return quantity::Length(whole()); }),
                                   maybe(whole), maybe(whole)});
      },
      [] {
        return EntryBody(DepthsRead{at(), side(), several(number), number(), maybe(number), maybe(instrument)});
      },
  };
}

inline Makers late_kinds() {
  return {
      [] {
        return EntryBody(
            FloatRun{at(), side(), yes(), small(), small(), number(), number(), maybe(number), maybe(instrument)});
      },
      [] {
        return EntryBody(SeriesBegun{at(), small(), several(small), word<SeriesReason>(2)});
      },
      [] {
        return EntryBody(Confirmed{at(), text(), text()});
      },
      [] { return EntryBody(advised()); },
      [] {
        return EntryBody(ShimChosen{at(), side(), text(), quantity::Length(whole()), double(small()) / 1e6,
                                    word<ChosenBy>(4), maybe(small), text(), several(question)});
      },
      [] {
        return EntryBody(TeachInTried{at(), small(), yes(), several(attempt_value), text(), text()});
      },
      [] {
        return EntryBody(Signed{at(), word<sheet::Signer>(2)});
      },
      [] {
        return EntryBody(Deviated{at(), text()});
      },
      [] {
        return EntryBody(NotRequired{at(), text()});
      },
      [] {
        return EntryBody(Withdrawn{whole(), text()});
      },
      [] {
        return EntryBody(Noted{maybe(text), text()});
      },
      [] {
        return EntryBody(Parked{text(), maybe(text)});
      },
      [] { return EntryBody(TakenUp{several(text)}); },
      [] {
        return EntryBody(HandedOver{text(), text()});
      },
      [] {
        return EntryBody(AssemblyBegun{small(), several(side), text()});
      },
      [] {
        return EntryBody(Sealed{text(), several(text)});
      },
      [] {
        return EntryBody(AddendumAdded{text(), text()});
      },
  };
}

inline EntryBody body_of(std::size_t kind) {
  const Makers early = early_kinds();
  return kind < early.size() ? early[kind]() : late_kinds().at(kind - early.size())();
}

}  // namespace shimwright::job::test
