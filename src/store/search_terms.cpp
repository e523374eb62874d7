#include "search_terms.h"

#include <algorithm>
#include <utility>

#include "search_text.h"

namespace shimwright::store {

namespace {

/// Every end of a key is a row: what is longer is found by its beginning.
constexpr std::size_t longest_key = 200;

class Collecting {
 public:
  explicit Collecting(const PrivateTexts& texts) : texts_(&texts) {}

  [[nodiscard]] std::vector<SearchTerm> take() { return std::move(terms_); }

  void add(FoundIn place, const std::string& text, std::optional<std::string> private_text = std::nullopt) {
    std::u32string key = search_key(text);
    key.resize(std::min(key.size(), longest_key));
    if (!key.empty()) {
      terms_.push_back({place, std::move(key), std::move(private_text)});
    }
  }
  void add(FoundIn place, const std::optional<job::PrivateReference>& reference) {
    const auto found = reference ? texts_->find(reference->id) : texts_->end();
    if (found != texts_->end()) {
      add(place, found->second, found->first);
    }
  }

 private:
  const PrivateTexts* texts_;
  std::vector<SearchTerm> terms_;
};

bool is_pack_serial(const sheet::JobSheet* sheet, const std::string& step_id) {
  const sheet::Step* step = sheet == nullptr ? nullptr : sheet->find(step_id);
  return step != nullptr && (step->role == sheet::Role::old_pack_serial || step->role == sheet::Role::new_pack_serial);
}

}  // namespace

std::vector<SearchTerm> search_terms_of(const job::Entry& entry, const sheet::JobSheet* sheet,
                                        const PrivateTexts& texts) {
  Collecting terms(texts);
  if (const auto* opened = std::get_if<job::Opened>(&entry.body)) {
    terms.add(FoundIn::vehicle, opened->vehicle_key);
    terms.add(FoundIn::number, opened->number);
    terms.add(FoundIn::plate, opened->plate);
    terms.add(FoundIn::customer_reference, opened->customer_reference);
    if (opened->gearbox_serial) {
      terms.add(FoundIn::gearbox_serial, *opened->gearbox_serial);
    }
    return terms.take();
  }
  const auto* written = std::get_if<job::Written>(&entry.body);
  return written == nullptr || is_pack_serial(sheet, written->at.step) ? terms_of_texts(entry.body)
                                                                       : std::vector<SearchTerm>();
}

std::vector<SearchTerm> terms_of_texts(const job::EntryBody& body) {
  const PrivateTexts none;
  Collecting terms(none);
  if (const auto* fitted = std::get_if<job::PartsFitted>(&body)) {
    for (const job::PartFitted& part : fitted->parts) {
      terms.add(FoundIn::batch, part.batch);
    }
  } else if (const auto* written = std::get_if<job::Written>(&body)) {
    terms.add(FoundIn::pack_serial, written->text);
  }
  return terms.take();
}

}  // namespace shimwright::store
