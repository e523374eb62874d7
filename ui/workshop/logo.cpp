#include "shimwright/workshop/logo.h"

#include <QFile>

namespace shimwright::workshop {

std::optional<store::Logo> logo_from(const QString& file) {
  QFile picture(file);
  if (!picture.open(QIODevice::ReadOnly)) {
    return std::nullopt;
  }
  const QByteArray bytes = picture.readAll();
  const bool is_png = bytes.startsWith("\x89PNG");
  return store::Logo{is_png ? "image/png" : "image/jpeg", bytes.toStdString()};
}

}  // namespace shimwright::workshop
