#include "shimwright/record/page.h"

namespace shimwright::record {

FontStyle style_of(FontRole role) {
  switch (role) {
    case FontRole::title:
      return {5.6, true, 100};
    case FontRole::heading:
      return {3.35, true, 100};
    case FontRole::result:
      return {4.1, false, 100};
    case FontRole::result_strong:
      return {4.1, true, 100};
    case FontRole::vehicle:
      return {3.3, true, 110};
    case FontRole::body:
      return {3.05, false, 100};
    case FontRole::strong:
      return {3.05, true, 100};
    case FontRole::small:
      return {2.8, false, 100};
    case FontRole::mark:
      return {16.5, true, 106};
  }
  return {};
}

std::uint32_t rgb_of(Ink ink) {
  switch (ink) {
    case Ink::text:
      return 0x1F262B;
    case Ink::soft:
      return 0x4A5056;
    case Ink::edge:
      return 0x767C82;
    case Ink::hair:
      return 0xC4C8CB;
    case Ink::band:
      return 0xDCE8EE;
    case Ink::pale:
      return 0xEDEEEF;
    case Ink::blue:
      return 0x15607C;
    case Ink::brick:
      return 0xA33C20;
    case Ink::amber:
      return 0xE8B84A;
    case Ink::amber_edge:
      return 0x7A5600;
    case Ink::guard:
      return 0xF3EBD3;
  }
  return 0;
}

SheetSize size_of(PaperSize paper) {
  constexpr double inch_mm = 25.4;
  switch (paper) {
    case PaperSize::letter:
      return {8.5 * inch_mm, 11 * inch_mm};
    case PaperSize::a5:
      return {148, 210};
    case PaperSize::a4:
      break;
  }
  return {210, 297};
}

}  // namespace shimwright::record
