#include "reading_label.h"

#include <algorithm>
#include <string_view>

#include "wording.h"

namespace shimwright::record {

namespace {

bool in_a_word(char byte) {
  const auto code = static_cast<unsigned char>(byte);
  const bool letter = (code | 0x20U) >= 'a' && (code | 0x20U) <= 'z';
  return code >= 0x80U || letter || (code >= '0' && code <= '9');
}

/// Words of three letters at least, capitals of the alphabet made small.
std::set<std::string> words_of(std::string_view text) {
  std::set<std::string> words;
  std::string word;
  for (const char byte : std::string(text) + ' ') {
    if (in_a_word(byte)) {
      word += byte >= 'A' && byte <= 'Z' ? static_cast<char>(byte - 'A' + 'a') : byte;
      continue;
    }
    if (word.size() >= 3) {
      words.insert(word);
    }
    word.clear();
  }
  return words;
}

bool share_a_word(std::string_view one, std::string_view other) {
  const auto words = words_of(one);
  const auto others = words_of(other);
  return std::any_of(words.begin(), words.end(), [&](const std::string& each) { return others.count(each) != 0; });
}

}  // namespace

ReadingLabels::ReadingLabels(const Record& record) {
  for (const auto* list : {&record.readings, &record.peaks}) {
    for (const ReadingLine& line : *list) {
      steps_by_title_[line.place.title].insert(line.place.step);
    }
  }
}

std::string ReadingLabels::place(const ReadingLine& line) const {
  const auto steps = steps_by_title_.find(line.place.title);
  const bool shared = steps != steps_by_title_.end() && steps->second.size() > 1;
  // Steps of one title, for the two bearings or discs, are told apart by their stage.
  return shared || line.side ? line.place.stage : line.place.title;
}

std::string ReadingLabels::of(const std::vector<const ReadingLine*>& together) const {
  const ReadingLine& first = *together.front();
  if (first.only_channel && share_a_word(first.channel_title, first.place.title)) {
    return first.channel_title;
  }
  std::vector<std::string> channels;
  for (const ReadingLine* line : together) {
    channels.push_back(line->channel_title);
  }
  return place(first) + ": " + joined(channels, ", ");
}

}  // namespace shimwright::record
