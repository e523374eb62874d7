#include "qr_code.h"

#include <qrcodegen.hpp>

namespace shimwright::record {

Code qr_code(const std::string& payload, const Box& box) {
  Code code{box, 0, {}};
  try {
    const auto made = qrcodegen::QrCode::encodeText(payload.c_str(), qrcodegen::QrCode::Ecc::MEDIUM);
    code.side = made.getSize();
    for (int row = 0; row < code.side; ++row) {
      for (int column = 0; column < code.side; ++column) {
        code.dark.push_back(made.getModule(column, row));
      }
    }
  } catch (const qrcodegen::data_too_long&) {
    code.side = 0;
  }
  return code;
}

}  // namespace shimwright::record
