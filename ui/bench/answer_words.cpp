#include <QCoreApplication>

#include "job_words.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

using widgets::qt;

namespace {

QString list_of(const std::vector<quantity::TypedNumber>& numbers) {
  QString text;
  for (const quantity::TypedNumber& each : numbers) {
    text += (text.isEmpty() ? QString() : QStringLiteral(", ")) + widgets::number_shown(each);
  }
  return text;
}

QString fit_word(job::Fit fit) {
  switch (fit) {
    case job::Fit::tight:
      return QCoreApplication::translate("bench", "tight");
    case job::Fit::snug:
      return QCoreApplication::translate("bench", "snug");
    case job::Fit::loose:
      return QCoreApplication::translate("bench", "loose");
  }
  return {};
}

class AnswerWords {
 public:
  QString operator()(const job::Done&) const { return QCoreApplication::translate("bench", "done"); }
  QString operator()(const job::Checked& checked) const {
    return checked.in_order ? QCoreApplication::translate("bench", "in order")
                            : QCoreApplication::translate("bench", "not in order: %1").arg(qt(checked.finding));
  }
  QString operator()(const job::Chosen& chosen) const { return qt(chosen.choice); }
  QString operator()(const job::Read& read) const {
    std::vector<quantity::TypedNumber> numbers;
    for (const job::Reading& each : read.readings) {
      numbers.push_back(each.number);
    }
    return list_of(numbers);
  }
  QString operator()(const job::PeakRead& peak) const { return list_of({peak.reading.number}); }
  QString operator()(const job::PartsFitted& fitted) const {
    QString text;
    for (const job::PartFitted& part : fitted.parts) {
      text += (text.isEmpty() ? QString() : QStringLiteral(", ")) + qt(part.number);
    }
    return text;
  }
  QString operator()(const job::PhotoTaken&) const { return QCoreApplication::translate("bench", "a photo"); }
  QString operator()(const job::Written& written) const { return qt(written.text); }
  QString operator()(const job::ShimTried& tried) const {
    return qt(tried.shim) + QLatin1Char(' ') + fit_word(tried.fit);
  }
  QString operator()(const job::DepthsRead& depths) const { return list_of(depths.readings); }
  QString operator()(const job::FloatRun& run) const {
    return QCoreApplication::translate("bench", "spot %1: %2").arg(run.spot).arg(list_of({run.rest, run.lifted}));
  }
  QString operator()(const job::SeriesBegun&) const { return QCoreApplication::translate("bench", "measured again"); }
  QString operator()(const job::Confirmed&) const { return QCoreApplication::translate("bench", "right as it stands"); }
  QString operator()(const job::ShimChosen& chosen) const {
    return QCoreApplication::translate("bench", "%1 taken").arg(qt(chosen.shim));
  }
  QString operator()(const job::TeachInTried& tried) const {
    return tried.completed ? QCoreApplication::translate("bench", "completed")
                           : QCoreApplication::translate("bench", "aborted");
  }
  QString operator()(const job::Signed&) const { return QCoreApplication::translate("bench", "signed"); }
  QString operator()(const job::Deviated& deviated) const {
    return QCoreApplication::translate("bench", "left with reason: %1").arg(qt(deviated.reason));
  }
  QString operator()(const job::NotRequired& none) const {
    return QCoreApplication::translate("bench", "not required: %1").arg(qt(none.reason));
  }
  QString operator()(const auto&) const { return {}; }
};

}  // namespace

QString answer_words(const job::EntryBody& body) {
  return std::visit(AnswerWords{}, body);
}

}  // namespace shimwright::bench
