#include "plain_time.h"

#include <QDateTime>

namespace shimwright::store {

std::string plain_time(std::int64_t at_ms) {
  const QDateTime at = QDateTime::fromMSecsSinceEpoch(at_ms);
  const int minutes = at.offsetFromUtc() / 60;
  const QTime offset = QTime(0, 0).addSecs(60 * qAbs(minutes));
  const QChar sign = minutes < 0 ? QLatin1Char('-') : QLatin1Char('+');
  return (at.toString(QStringLiteral("yyyy-MM-dd HH:mm")) + QStringLiteral(" UTC") + sign +
          offset.toString(QStringLiteral("HH:mm")))
      .toStdString();
}

}  // namespace shimwright::store
