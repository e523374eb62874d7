#include "shimwright/job/codec.h"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <variant>

#include "codec_reader.h"
#include "codec_writer.h"
#include "shimwright/json/canonical.h"

namespace shimwright::job {

namespace {

/// A visitor: the version a body is written in, 2 where it says what only that one can say.
class VersionOf {
 public:
  int operator()(const Read& read) const {
    int version = 1;
    for (const Reading& each : read.readings) {
      version = std::max(version, of(each.instrument));
    }
    return version;
  }
  int operator()(const PeakRead& peak) const { return of(peak.reading.instrument); }
  int operator()(const DepthsRead& depths) const { return of(depths.instrument); }
  int operator()(const FloatRun& run) const { return of(run.instrument); }
  int operator()(const TeachInTried& tried) const {
    int version = 1;
    for (const AttemptValue& each : tried.values) {
      version = std::max(version, each.after ? of(each.after->instrument) : 1);
    }
    return version;
  }
  int operator()(const ShimTried& tried) const { return tried.feel_nm ? 2 : 1; }
  int operator()(const auto&) const { return 1; }

 private:
  [[nodiscard]] static int of(const std::optional<InstrumentUsed>& instrument) {
    return instrument && (instrument->repeatability || instrument->calibrated_on) ? 2 : 1;
  }
};

int version_of(const EntryBody& body) {
  return std::visit(VersionOf{}, body);
}

bool has_second_version(const EntryBody& body) {
  return std::holds_alternative<Read>(body) || std::holds_alternative<PeakRead>(body) ||
         std::holds_alternative<DepthsRead>(body) || std::holds_alternative<FloatRun>(body) ||
         std::holds_alternative<TeachInTried>(body) || std::holds_alternative<ShimTried>(body);
}

tl::unexpected<Error> unreadable_body() {
  return refuse("bad_body", "", SHIMWRIGHT_TEXT("job", "A stored entry is not readable any more; check the store."));
}

/// The empty body of a kind, found by its name.
template <std::size_t index = 0>
std::optional<EntryBody> body_of_kind(std::string_view kind) {
  if constexpr (index == std::variant_size_v<EntryBody>) {
    return std::nullopt;
  } else {
    EntryBody body(std::in_place_index<index>);
    return kind_of(body) == kind ? std::optional(std::move(body)) : body_of_kind<index + 1>(kind);
  }
}

}  // namespace

EncodedBody encode(const EntryBody& body) {
  EncodedBody encoded;
  encoded.kind = kind_of(body);
  encoded.kind_version = version_of(body);
  const nlohmann::json object = std::visit([](const auto& payload) { return FieldWriter::written(payload); }, body);
  if (auto bytes = json::canonical(object); bytes) {
    encoded.bytes = std::move(*bytes);
  }
  return encoded;
}

Result<EntryBody> decode(std::string_view kind, int kind_version, std::string_view bytes) {
  auto body = body_of_kind(kind);
  if (!body || kind_version < 1 || kind_version > (has_second_version(*body) ? 2 : 1)) {
    return refuse("unknown_kind", "",
                  SHIMWRIGHT_TEXT("job",
                                  "An entry of the kind {0}, version {1}, was written by a newer program; open "
                                  "this job with the newer program."),
                  {std::string(kind), std::to_string(kind_version)});
  }
  const auto value = json::parse(bytes);
  if (!value) {
    return unreadable_body();
  }
  auto error = std::visit([&value](auto& payload) { return FieldReader::read(*value, "", payload); }, *body);
  if (error) {
    return tl::make_unexpected(std::move(*error));
  }
  if (version_of(*body) != kind_version) {
    return unreadable_body();
  }
  return std::move(*body);
}

}  // namespace shimwright::job
