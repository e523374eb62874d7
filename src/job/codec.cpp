#include "shimwright/job/codec.h"

#include <cstddef>
#include <utility>
#include <variant>

#include "codec_reader.h"
#include "codec_writer.h"
#include "shimwright/json/canonical.h"

namespace shimwright::job {

namespace {

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
  const nlohmann::json object = std::visit([](const auto& payload) { return FieldWriter::written(payload); }, body);
  if (auto bytes = json::canonical(object); bytes) {
    encoded.bytes = std::move(*bytes);
  }
  return encoded;
}

Result<EntryBody> decode(std::string_view kind, int kind_version, std::string_view bytes) {
  auto body = kind_version == 1 ? body_of_kind(kind) : std::nullopt;
  if (!body) {
    return refuse("unknown_kind", "",
                  SHIMWRIGHT_TEXT("job",
                                  "An entry of the kind {0}, version {1}, was written by a newer program; open "
                                  "this job with the newer program."),
                  {std::string(kind), std::to_string(kind_version)});
  }
  const auto value = json::parse(bytes);
  if (!value) {
    return refuse("bad_body", "", SHIMWRIGHT_TEXT("job", "A stored entry is not readable any more; check the store."));
  }
  auto error = std::visit([&value](auto& payload) { return FieldReader::read(*value, "", payload); }, *body);
  if (error) {
    return tl::make_unexpected(std::move(*error));
  }
  return std::move(*body);
}

}  // namespace shimwright::job
