#pragma once

#include <vector>

#include <QFont>
#include <QString>

#include "shimwright/quantity/error.h"

/// The type built into the program, for paper and screen alike: its digits are all equally wide, so that figures stand
/// under each other without asking the toolkit for a font feature.
namespace shimwright::print {

/// Fonts stay usable as long as this lives.
class Fonts {
 public:
  Fonts(const Fonts&) = delete;
  Fonts& operator=(const Fonts&) = delete;
  Fonts(Fonts&& other) noexcept;
  Fonts& operator=(Fonts&& other) noexcept;
  ~Fonts();

  /// Without a size; hinting and kerning off, so that a width is the same at every size.
  [[nodiscard]] QFont regular() const;
  [[nodiscard]] QFont semibold() const;

 private:
  friend Result<Fonts> load_fonts();
  Fonts() = default;

  std::vector<int> ids_;
  QString family_;
};

/// Needs a QGuiApplication. Refused with `font_missing` where the built-in files cannot be read.
[[nodiscard]] Result<Fonts> load_fonts();

}  // namespace shimwright::print
