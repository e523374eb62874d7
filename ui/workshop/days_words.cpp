#include "days_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include "shimwright/job/context.h"
#include "shimwright/widgets/say.h"

namespace shimwright::workshop {

QString unbroken(QString text) {
  return text.replace(QLatin1Char(' '), QChar::Nbsp);
}

QString day_words(const std::string& iso) {
  const QDate day = QDate::fromString(widgets::qt(iso), Qt::ISODate);
  return day.isValid() ? unbroken(QLocale().toString(day, QCoreApplication::translate("workshop", "d MMM yyyy")))
                       : widgets::qt(iso);
}

QString day_words(const job::Moment& moment) {
  return day_words(job::iso_day_of(moment));
}

}  // namespace shimwright::workshop
