#include <QCoreApplication>

#include "job_words.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/units.h"

namespace shimwright::bench {

using widgets::qt;

namespace {

QString answer_text(const char* text) {
  return QCoreApplication::translate("bench", text);
}

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
      return answer_text("tight");
    case job::Fit::snug:
      return answer_text("snug");
    case job::Fit::loose:
      return answer_text("loose");
  }
  return {};
}

class AnswerWords {
 public:
  QString operator()(const job::Done&) const { return answer_text("done"); }
  QString operator()(const job::Checked& checked) const {
    return checked.in_order ? answer_text("in order") : answer_text("not in order: %1").arg(qt(checked.finding));
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
  QString operator()(const job::PhotoTaken&) const { return answer_text("a photo"); }
  QString operator()(const job::Written& written) const { return qt(written.text); }
  QString operator()(const job::ShimTried& tried) const { return qt(tried.shim) + QLatin1Char(' ') + fit_word(tried.fit); }
  QString operator()(const job::DepthsRead& depths) const { return list_of(depths.readings); }
  QString operator()(const job::FloatRun& run) const {
    return answer_text("spot %1: %2").arg(run.spot).arg(list_of({run.rest, run.lifted}));
  }
  QString operator()(const job::SeriesBegun&) const { return answer_text("measured again"); }
  QString operator()(const job::Confirmed&) const { return answer_text("right as it stands"); }
  QString operator()(const job::ShimChosen& chosen) const { return answer_text("%1 taken").arg(qt(chosen.shim)); }
  QString operator()(const job::TeachInTried& tried) const {
    return tried.completed ? answer_text("completed") : answer_text("aborted");
  }
  QString operator()(const job::Signed&) const { return answer_text("signed"); }
  QString operator()(const job::Deviated& deviated) const { return answer_text("left with reason: %1").arg(qt(deviated.reason)); }
  QString operator()(const job::NotRequired& none) const { return answer_text("not required: %1").arg(qt(none.reason)); }
  QString operator()(const auto&) const { return {}; }
};

}  // namespace

QString answer_words(const job::EntryBody& body) {
  return std::visit(AnswerWords{}, body);
}

}  // namespace shimwright::bench
