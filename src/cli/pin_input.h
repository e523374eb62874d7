#pragma once

#include <memory>
#include <string>

#include "arguments.h"
#include "shimwright/record/signing_key.h"
#include "shimwright/store/store.h"

class QFile;

namespace shimwright::cli {

/// Standard input, one PIN to a line in the order they are needed.
class PinInput {
 public:
  /// Code: `cannot_read`.
  [[nodiscard]] static Result<PinInput> open();
  PinInput(PinInput&& other) noexcept;
  PinInput(const PinInput&) = delete;
  PinInput& operator=(const PinInput&) = delete;
  PinInput& operator=(PinInput&&) = delete;
  ~PinInput();

  [[nodiscard]] record::Pin next();

 private:
  explicit PinInput(std::unique_ptr<QFile> file);
  std::unique_ptr<QFile> file_;
};

/// A store to write in and who of its persons (`--person`, name or initials) does.
struct Signing {
  std::unique_ptr<store::Store> store;
  std::string person;
};
/// Codes: `unknown_person`, and as a store opens; none is made where there was none.
[[nodiscard]] Result<Signing> signing(const Arguments& arguments);

}  // namespace shimwright::cli
