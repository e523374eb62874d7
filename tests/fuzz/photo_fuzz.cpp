#include "camera_data.h"
#include "fuzz_target.h"
#include "photos.h"

using shimwright::fuzz::require;
using shimwright::store::without_place;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto text = shimwright::fuzz::text_of(data, size);
  const QByteArray photo(text.data(), static_cast<qsizetype>(text.size()));
  const auto kept = without_place(photo);
  if (!kept) {
    return 0;
  }
  require(kept->size() <= photo.size(), "nothing is added");
  require(shimwright::store::media_type_of(*kept) == shimwright::store::media_type_of(photo), "it is of the same kind");
  require(without_place(*kept) == kept, "what is kept is kept again as it is");
  return 0;
}
