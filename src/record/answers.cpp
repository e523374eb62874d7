#include "gather.h"

namespace shimwright::record {

namespace {

/// Turns an entry into an answer, where it is one.
class Answerer {
 public:
  Answerer(const Source& source, const job::Entry& entry) : source_(source), entry_(entry) {}

  std::optional<Answer> operator()(const job::Done& done) const { return answer(done.at, AnswerKind::done, true, ""); }
  std::optional<Answer> operator()(const job::Checked& checked) const {
    return answer(checked.at, checked.in_order ? AnswerKind::in_order : AnswerKind::not_in_order, checked.in_order,
                  checked.finding);
  }
  std::optional<Answer> operator()(const job::Chosen& chosen) const {
    return answer(chosen.at, AnswerKind::chosen, chosen.accepted, title_of(chosen));
  }
  std::optional<Answer> operator()(const job::Written& written) const {
    return answer(written.at, AnswerKind::written, true, written.text);
  }
  std::optional<Answer> operator()(const job::NotRequired& said) const {
    return answer(said.at, AnswerKind::not_required, true, said.reason);
  }
  template <class Other>
  std::optional<Answer> operator()(const Other&) const {
    return std::nullopt;
  }

 private:
  [[nodiscard]] std::optional<Answer> answer(const job::StepRef& at, AnswerKind kind, bool accepted,
                                             std::string text) const {
    const sheet::Step* step = step_named(source_, at.step);
    return Answer{stamp_of(source_, entry_),
                  place_of(source_, at.step, at.assembly),
                  step != nullptr && step->hold_point,
                  kind,
                  accepted,
                  std::move(text)};
  }

  [[nodiscard]] std::string title_of(const job::Chosen& chosen) const {
    const sheet::Step* step = step_named(source_, chosen.at.step);
    const auto* body = step == nullptr ? nullptr : std::get_if<sheet::ChooseStep>(&step->body);
    if (body != nullptr) {
      for (const sheet::Choice& choice : body->choices) {
        if (choice.id == chosen.choice) {
          return text_of(source_, choice.title);
        }
      }
    }
    return chosen.choice;
  }

  const Source& source_;
  const job::Entry& entry_;
};

/// The questions an entry asked.
class Asked {
 public:
  const std::vector<job::Question>* operator()(const job::Read& read) const { return &read.questions; }
  const std::vector<job::Question>* operator()(const job::Written& written) const { return &written.questions; }
  const std::vector<job::Question>* operator()(const job::Advised& advised) const { return &advised.questions; }
  const std::vector<job::Question>* operator()(const job::ShimChosen& chosen) const { return &chosen.questions; }
  template <class Other>
  const std::vector<job::Question>* operator()(const Other&) const {
    return nullptr;
  }
};

std::optional<Message> asked_before(const Source& source, const job::Confirmed& confirmed, std::int64_t before) {
  std::optional<Message> found;
  for (const job::Entry* entry : source.live) {
    const job::StepRef* at = job::step_of(entry->body);
    const auto* questions = std::visit(Asked(), entry->body);
    if (entry->seq >= before || at == nullptr || at->step != confirmed.at.step || questions == nullptr) {
      continue;
    }
    for (const job::Question& question : *questions) {
      found = question.code == confirmed.question ? std::optional(question.message) : found;
    }
  }
  return found;
}

/// The last answer or reading of the step in that assembly before it was accepted with a deviation.
const job::Entry* answered_before(const Source& source, const job::StepRef& at, std::int64_t before) {
  const job::Entry* found = nullptr;
  for (const job::Entry* entry : source.live) {
    const job::StepRef* where = job::step_of(entry->body);
    const bool said = !std::holds_alternative<job::Deviated>(entry->body) &&
                      !std::holds_alternative<job::Advised>(entry->body) &&
                      !std::holds_alternative<job::SeriesBegun>(entry->body);
    found = entry->seq < before && where != nullptr && *where == at && said ? entry : found;
  }
  return found;
}

}  // namespace

std::vector<Answer> answers(const Source& source) {
  std::vector<Answer> found;
  for (const job::Entry* entry : source.live) {
    if (auto answer = std::visit(Answerer(source, *entry), entry->body)) {
      found.push_back(std::move(*answer));
    }
  }
  return found;
}

std::vector<Confirmation> confirmations(const Source& source) {
  std::vector<Confirmation> found;
  for (const job::Entry* entry : source.live) {
    if (const auto* confirmed = std::get_if<job::Confirmed>(&entry->body)) {
      found.push_back({stamp_of(source, *entry), place_of(source, confirmed->at.step, confirmed->at.assembly),
                       confirmed->question, asked_before(source, *confirmed, entry->seq), confirmed->remark});
    }
  }
  return found;
}

std::vector<Deviation> deviations(const Source& source) {
  std::vector<Deviation> found;
  for (const job::Entry* entry : source.live) {
    if (const auto* deviated = std::get_if<job::Deviated>(&entry->body)) {
      const job::Entry* before = answered_before(source, deviated->at, entry->seq);
      found.push_back(
          {stamp_of(source, *entry), place_of(source, deviated->at.step, deviated->at.assembly), before == nullptr,
           before == nullptr ? std::vector<Message>() : what_was_entered(source, *before), deviated->reason});
    }
  }
  return found;
}

std::vector<Photo> photos(const Source& source) {
  std::vector<Photo> found;
  for (const job::Entry* entry : source.live) {
    if (const auto* photo = std::get_if<job::PhotoTaken>(&entry->body)) {
      found.push_back({stamp_of(source, *entry), place_of(source, photo->at.step, photo->at.assembly), photo->sha256,
                       photo->media_type, photo->bytes, photo->caption});
    }
  }
  return found;
}

std::vector<Signature> signatures(const Source& source) {
  std::vector<Signature> found;
  for (const job::Entry* entry : source.live) {
    if (const auto* signature = std::get_if<job::Signed>(&entry->body)) {
      found.push_back({stamp_of(source, *entry), signature->signer});
    }
  }
  return found;
}

}  // namespace shimwright::record
