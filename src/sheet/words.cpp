#include "shimwright/sheet/words.h"

#include "word_lists.h"

namespace shimwright::sheet {

std::string_view name_of(Side side) {
  return name_in(side_words, side);
}
std::string_view name_of(Method method) {
  return name_in(method_words, method);
}
std::string_view name_of(InstrumentKind kind) {
  return name_in(instrument_kind_words, kind);
}
std::string_view name_of(Again again) {
  return name_in(again_words, again);
}
std::string_view name_of(Role role) {
  return name_in(role_words, role);
}
std::string_view name_of(Signer signer) {
  return name_in(signer_words, signer);
}
std::string_view name_of(Drawing part) {
  return name_in(drawing_words, part);
}

std::optional<Side> side_named(std::string_view name) {
  return word_in(side_words, name);
}
std::optional<Method> method_named(std::string_view name) {
  return word_in(method_words, name);
}
std::optional<InstrumentKind> instrument_kind_named(std::string_view name) {
  return word_in(instrument_kind_words, name);
}
std::optional<Again> again_named(std::string_view name) {
  return word_in(again_words, name);
}
std::optional<Role> role_named(std::string_view name) {
  return word_in(role_words, name);
}
std::optional<Signer> signer_named(std::string_view name) {
  return word_in(signer_words, name);
}
std::optional<Drawing> drawing_named(std::string_view name) {
  return word_in(drawing_words, name);
}

quantity::Dimension dimension_read_by(InstrumentKind kind) {
  switch (kind) {
    case InstrumentKind::torque_wrench:
      return quantity::Dimension::torque;
    case InstrumentKind::thermometer:
      return quantity::Dimension::temperature;
    case InstrumentKind::multimeter:
      return quantity::Dimension::voltage;
    case InstrumentKind::pressure_gauge:
      return quantity::Dimension::pressure;
    case InstrumentKind::scale:
      return quantity::Dimension::mass;
    case InstrumentKind::dial_gauge:
    case InstrumentKind::depth_gauge:
    case InstrumentKind::micrometer:
      break;
  }
  return quantity::Dimension::length;
}

}  // namespace shimwright::sheet
