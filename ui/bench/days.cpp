#include "days.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include "shimwright/widgets/say.h"

namespace shimwright::bench {

namespace {

QDateTime local_time_of(const job::Moment& moment) {
  return QDateTime::fromMSecsSinceEpoch(moment.at_ms + moment.offset_min * std::int64_t{60000}, Qt::UTC);
}

}  // namespace

QDate day_of(const job::Moment& moment) {
  return local_time_of(moment).date();
}

std::optional<QDate> day_of(const std::string& iso) {
  const QDate day = QDate::fromString(widgets::qt(iso), Qt::ISODate);
  return day.isValid() ? std::optional(day) : std::nullopt;
}

QString day_text(const QDate& day) {
  return QLocale().toString(day, QCoreApplication::translate("bench", "d MMM yyyy"));
}

QString day_text(const std::string& iso) {
  const auto day = day_of(iso);
  return day ? day_text(*day) : widgets::qt(iso);
}

QString moment_text(const job::Moment& moment, const job::Moment& now) {
  const QString clock = local_time_of(moment).time().toString(QStringLiteral("HH:mm"));
  const QDate day = day_of(moment);
  const QString name = day == day_of(now) ? QCoreApplication::translate("bench", "today") : day_text(day);
  return QStringLiteral("%1 %2").arg(name, clock);
}

}  // namespace shimwright::bench
