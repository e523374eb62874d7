#include "sheet_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QTimeZone>

#include "shimwright/widgets/say.h"

namespace shimwright::workshop {

namespace {

using widgets::qt;

struct SheetWords {
  Q_DECLARE_TR_FUNCTIONS(workshop)
};

QString day_there(const job::Moment& moment) {
  const QDate day = QDateTime::fromMSecsSinceEpoch(moment.at_ms, QTimeZone(moment.offset_min * 60)).date();
  return QLocale().toString(day, SheetWords::tr("d MMM yyyy")).replace(QLatin1Char(' '), QChar::Nbsp);
}

}  // namespace

QString initials_in(const std::vector<store::Person>& persons, const std::string& id) {
  for (const store::Person& each : persons) {
    if (each.id == id) {
      return qt(each.initials);
    }
  }
  return id.empty() ? SheetWords::tr("nobody named") : SheetWords::tr("somebody not in the list");
}

QString language_name(const std::string& code) {
  const QLocale locale(qt(code));
  // The toolkit calls English by its country.
  const QString name = locale.language() == QLocale::English ? QStringLiteral("English") : locale.nativeLanguageName();
  return locale.language() == QLocale::C || name.isEmpty() ? qt(code) : name;
}

QString issue_title(const std::string& name, std::int64_t issue) {
  return name.empty() ? SheetWords::tr("New sheet, without a name yet")
                      : SheetWords::tr("%1, issue %2").arg(qt(name)).arg(issue);
}

QString use_in_words(const store::SheetUse& use) {
  if (use.jobs == 0) {
    return SheetWords::tr("No job uses it yet.");
  }
  if (use.jobs == 1) {
    return use.open == 0 ? SheetWords::tr("Used by 1 job, which is closed.")
                         : SheetWords::tr("Used by 1 job, which is open.");
  }
  return use.open == 0 ? SheetWords::tr("Used by %1 jobs, none of them open.").arg(use.jobs)
                       : SheetWords::tr("Used by %1 jobs, %2 of them open.").arg(use.jobs).arg(use.open);
}

QString check_in_words(const store::By& entered, const std::vector<store::SheetCheck>& checks,
                       const std::vector<store::Person>& persons, bool demonstration) {
  const QString who = entered.person.empty()
                          ? SheetWords::tr("Came with the program")
                          : SheetWords::tr("Entered by %1").arg(initials_in(persons, entered.person));
  if (checks.empty()) {
    return demonstration
               ? SheetWords::tr("%1. A demonstration sheet needs no check, and jobs on it carry its mark.").arg(who)
               : SheetWords::tr("%1. Not checked yet: no job can be opened on it.").arg(who);
  }
  QStringList all;
  for (const store::SheetCheck& each : checks) {
    const QString by =
        SheetWords::tr("checked by %1 on %2").arg(initials_in(persons, each.person), day_there(each.moment));
    all << (each.second_person ? by : SheetWords::tr("%1 (the same person, on a later day)").arg(by));
  }
  return SheetWords::tr("%1, %2.").arg(who, all.join(QStringLiteral(", ")));
}

QString draft_in_words(const store::KeptDraft& draft, std::size_t faults, const std::vector<store::Person>& persons) {
  const QString begun = SheetWords::tr("Begun by %1, kept at each field.").arg(initials_in(persons, draft.begun_by));
  if (faults == 0) {
    return SheetWords::tr("%1 Everything is filled in.").arg(begun);
  }
  return faults == 1 ? SheetWords::tr("%1 One value is still to be filled in or put right.").arg(begun)
                     : SheetWords::tr("%1 %2 values are still to be filled in or put right.").arg(begun).arg(faults);
}

}  // namespace shimwright::workshop
