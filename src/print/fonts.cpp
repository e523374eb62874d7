#include "shimwright/print/fonts.h"

#include <utility>

#include <QFontDatabase>
#include <QStringList>

namespace shimwright::print {

namespace {

QFont exact(const QString& family, QFont::Weight weight) {
  QFont font(family);
  font.setWeight(weight);
  font.setKerning(false);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

}  // namespace

Fonts::Fonts(Fonts&& other) noexcept
    : ids_(std::exchange(other.ids_, {})), family_(std::exchange(other.family_, QString())) {}

Fonts& Fonts::operator=(Fonts&& other) noexcept {
  std::swap(ids_, other.ids_);
  std::swap(family_, other.family_);
  return *this;
}

Fonts::~Fonts() {
  for (const int id : ids_) {
    QFontDatabase::removeApplicationFont(id);
  }
}

QFont Fonts::regular() const {
  return exact(family_, QFont::Normal);
}

QFont Fonts::semibold() const {
  return exact(family_, QFont::DemiBold);
}

Result<Fonts> load_fonts() {
  Fonts fonts;
  for (const char* file : {":/shimwright/fonts/OpenSans-Regular.ttf", ":/shimwright/fonts/OpenSans-Semibold.ttf"}) {
    const int id = QFontDatabase::addApplicationFont(QString::fromLatin1(file));
    const QStringList families = id < 0 ? QStringList() : QFontDatabase::applicationFontFamilies(id);
    if (families.isEmpty()) {
      return refuse(
          "font_missing", file,
          SHIMWRIGHT_TEXT("print", "A font built into the program cannot be read; install the program anew."));
    }
    fonts.ids_.push_back(id);
    if (fonts.family_.isEmpty()) {
      fonts.family_ = families.front();
    }
  }
  return fonts;
}

}  // namespace shimwright::print
