#pragma once

#include <optional>
#include <string_view>

#include "shimwright/quantity/typed_number.h"

namespace shimwright::sheet {

/// Lower: large bearing and lower disc. Upper: small bearing and upper disc.
enum class Side { lower, upper };

/// How the shim of a side is found.
enum class Method { gauge_fit, depth };

enum class InstrumentKind {
  dial_gauge,
  depth_gauge,
  micrometer,
  torque_wrench,
  thermometer,
  multimeter,
  pressure_gauge,
  scale
};

/// When a step that was answered is asked again.
enum class Again {
  never,     ///< once in a job
  strip,     ///< when the pack comes off again: asked again in every later assembly, never in the first strip's place
  assembly,  ///< at every assembly
  side,      ///< at an assembly that changes the shim of the step's own side
};

/// What a step's answer means to the job logic, beyond being an answer.
enum class Role {
  old_shim,         ///< read: measured thickness of the shim taken out (side)
  new_shim,         ///< read: measured thickness of the shim laid (side)
  stamp,            ///< read: signed deviation stamped on the new pack (side)
  old_pack_serial,  ///< text: serial of the pack taken off
  new_pack_serial,  ///< text: serial of the pack fitted
  road_test,        ///< check, choose: the answer to the road test after the work
};

/// Who signs.
enum class Signer { technician, checker };

/// Which part of the half section the step is about.
enum class Drawing {
  none,
  large_bearing,
  small_bearing,
  large_shim,
  small_shim,
  large_lever,
  small_lever,
  pack,
  pack_ring,
  hub,
  hub_ring,
  lower_disc,
  upper_disc,
  shafts,
  housing,
};

/// The word of each as files spell it: `lower`, `gauge_fit`, `dial_gauge`, …
[[nodiscard]] std::string_view name_of(Side side);
[[nodiscard]] std::string_view name_of(Method method);
[[nodiscard]] std::string_view name_of(InstrumentKind kind);
[[nodiscard]] std::string_view name_of(Again again);
[[nodiscard]] std::string_view name_of(Role role);
[[nodiscard]] std::string_view name_of(Signer signer);
[[nodiscard]] std::string_view name_of(Drawing part);
/// What an instrument of that kind reads: a dial gauge lengths, a torque wrench torques.
[[nodiscard]] quantity::Dimension dimension_read_by(InstrumentKind kind);

[[nodiscard]] std::optional<Side> side_named(std::string_view name);
[[nodiscard]] std::optional<Method> method_named(std::string_view name);
[[nodiscard]] std::optional<InstrumentKind> instrument_kind_named(std::string_view name);
[[nodiscard]] std::optional<Again> again_named(std::string_view name);
[[nodiscard]] std::optional<Role> role_named(std::string_view name);
[[nodiscard]] std::optional<Signer> signer_named(std::string_view name);
[[nodiscard]] std::optional<Drawing> drawing_named(std::string_view name);

}  // namespace shimwright::sheet
