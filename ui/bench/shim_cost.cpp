// What changing a shim costs, as the sheets have it.
#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "float_words.h"
#include "shimwright/widgets/say.h"

namespace shimwright::bench {

namespace {

using widgets::qt;

QStringList parts_renewed(const job::JobState& state, const std::string& language) {
  QStringList parts;
  for (const sheet::Step* step : state.sheets.job->steps()) {
    const auto* body = std::get_if<sheet::PartStep>(&step->body);
    if (body == nullptr || step->again != sheet::Again::assembly) {
      continue;
    }
    for (const std::string& id : body->parts) {
      if (const sheet::PartItem* part = state.sheets.spec->part(id)) {
        parts.append(
            QCoreApplication::translate("bench", "%1 (%2)").arg(qt(part->title.in(language)), qt(part->number)));
      }
    }
  }
  return parts;
}

QStringList steps_of_stripping(const job::JobState& state, const std::string& language) {
  QStringList titles;
  for (const sheet::Step* step : state.sheets.job->steps()) {
    const bool work =
        std::holds_alternative<sheet::DoStep>(step->body) || std::holds_alternative<sheet::PeakStep>(step->body);
    if (work && step->again == sheet::Again::strip) {
      titles.append(qt(step->title.in(language)));
    }
  }
  return titles;
}

/// How often the pack was pressed and how often it may be; blank where the spec sheet sets no limit.
QString pressings_words(const job::JobState& state) {
  for (const sheet::Step* step : state.sheets.job->steps()) {
    const auto* body = std::get_if<sheet::PeakStep>(&step->body);
    if (body == nullptr || !body->attempts_limit) {
      continue;
    }
    const auto limit = state.sheets.spec->limits.find(*body->attempts_limit);
    if (limit == state.sheets.spec->limits.end()) {
      continue;
    }
    const auto& most = limit->second.most;
    if (!most) {
      continue;
    }
    const auto entries = state.live(step->id);
    const auto pressed = std::count_if(entries.begin(), entries.end(), [](const job::Entry* each) {
      return std::holds_alternative<job::PeakRead>(each->body);
    });
    return QCoreApplication::translate("bench", "Pressings of this pack so far: %1; the spec sheet allows %2.")
        .arg(pressed)
        .arg(*most);
  }
  return {};
}

}  // namespace

QString change_words(const job::JobState& state, const std::string& language) {
  const QString separator = QStringLiteral("; ");
  QStringList lines;
  if (const QStringList off = steps_of_stripping(state, language); !off.isEmpty()) {
    lines.append(QCoreApplication::translate("bench", "To do again: %1.").arg(off.join(separator)));
  }
  if (const QStringList parts = parts_renewed(state, language); !parts.isEmpty()) {
    lines.append(QCoreApplication::translate("bench", "Renewed again: %1.").arg(parts.join(separator)));
  }
  if (const QString pressings = pressings_words(state); !pressings.isEmpty()) {
    lines.append(pressings);
  }
  return lines.join(QLatin1Char('\n'));
}

}  // namespace shimwright::bench
