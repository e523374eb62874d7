#include <utility>

#include "job_file_lines.h"
#include "shimwright/json/object_reader.h"
#include "shimwright/json/value.h"

namespace shimwright::store {

namespace {

using json::ObjectReader;

constexpr std::int64_t largest_number = (std::int64_t{1} << 53) - 1;
constexpr std::int64_t minutes_of_day = 24LL * 60;

std::string_view text_of(const QByteArray& line) {
  return {line.constData(), static_cast<std::size_t>(line.size())};
}

tl::unexpected<Error> not_job_file() {
  return refuse("not_job_file", "",
                SHIMWRIGHT_TEXT("store", "This is no job file of this program, or its beginning was changed."));
}

tl::unexpected<Error> damaged() {
  return refuse("job_file_damaged", "",
                SHIMWRIGHT_TEXT("store",
                                "This job file is not as it was written, its end may be missing: have it exported "
                                "anew."));
}

/// Reads members one after the other and keeps the first refusal.
class Members {
 public:
  explicit Members(ObjectReader reader) : reader_(std::move(reader)) {}

  [[nodiscard]] std::string text(std::string_view key) { return kept(reader_.string(key)); }
  [[nodiscard]] bool flag(std::string_view key) { return kept(reader_.boolean(key)); }
  [[nodiscard]] std::int64_t number(std::string_view key, std::int64_t least, std::int64_t most) {
    return kept(reader_.integer(key, least, most));
  }
  /// What `read` makes of each element, with its place.
  template <class Read>
  void each(std::string_view key, Read read) {
    const json::Array* elements = kept(reader_.array(key));
    for (std::size_t at = 0; elements != nullptr && !fault_ && at < elements->size(); ++at) {
      if (auto done = read((*elements)[at], json::pointer(reader_.place_of(key), at)); !done) {
        fault_ = done.error();
      }
    }
  }
  [[nodiscard]] const ObjectReader& reader() const { return reader_; }
  template <class Content>
  [[nodiscard]] Result<Content> result(Content content) const {
    if (fault_) {
      return tl::make_unexpected(*fault_);
    }
    return content;
  }
  template <class Content>
  [[nodiscard]] Content kept(Result<Content> read) {
    if (read) {
      return std::move(*read);
    }
    fault_ = fault_ ? fault_ : std::optional(read.error());
    return Content{};
  }

 private:
  ObjectReader reader_;
  std::optional<Error> fault_;
};

Result<record::StoredEntry> read_entry(const json::Value& value, const std::string& place) {
  auto opened = ObjectReader::open(value, place,
                                   {"seq", "at_ms", "offset_min", "clock_went_back", "person", "kind", "kind_version",
                                    "body", "previous_hash", "hash"});
  if (!opened) {
    return tl::make_unexpected(opened.error());
  }
  Members members(std::move(*opened));
  record::StoredEntry entry;
  entry.seq = members.number("seq", 1, largest_number);
  entry.moment.at_ms = members.number("at_ms", -largest_number, largest_number);
  entry.moment.offset_min = static_cast<int>(members.number("offset_min", -minutes_of_day, minutes_of_day));
  entry.moment.clock_went_back = members.flag("clock_went_back");
  entry.person = members.text("person");
  entry.kind = members.text("kind");
  entry.kind_version = static_cast<int>(members.number("kind_version", 1, 1000000));
  entry.body = members.text("body");
  entry.previous_hash = members.text("previous_hash");
  entry.hash = members.text("hash");
  return members.result(std::move(entry));
}

Result<FilePerson> read_person(const json::Value& value, const std::string& place) {
  auto opened = ObjectReader::open(value, place, {"id", "name", "initials"});
  if (!opened) {
    return tl::make_unexpected(opened.error());
  }
  Members members(std::move(*opened));
  FilePerson person{members.text("id"), members.text("name"), members.text("initials")};
  return members.result(std::move(person));
}

Result<FilePhoto> read_photo(const json::Value& value, const std::string& place) {
  auto opened = ObjectReader::open(value, place, {"sha256", "bytes"});
  if (!opened) {
    return tl::make_unexpected(opened.error());
  }
  Members members(std::move(*opened));
  FilePhoto photo{members.text("sha256"), members.number("bytes", 1, std::int64_t{longest_photo})};
  return members.result(std::move(photo));
}

Result<void> read_personal(const json::Value& value, const std::string& place,
                           std::map<std::string, record::PersonalText>& personal) {
  auto opened = ObjectReader::open(value, place, {"id", "salt", "text"});
  if (!opened) {
    return tl::make_unexpected(opened.error());
  }
  Members members(std::move(*opened));
  const std::string id = members.text("id");
  record::PersonalText text{members.text("text"), members.text("salt")};
  if (!personal.emplace(id, std::move(text)).second) {
    return refuse("repeated_field", place,
                  SHIMWRIGHT_TEXT("store", "This stands twice in the job file; have it exported anew."));
  }
  return members.result(0).map([](int) {});
}

Result<record::SignedAddendum> read_addendum(const json::Value& value, const std::string& place) {
  auto opened = ObjectReader::open(value, place, {"statement", "signature"});
  if (!opened) {
    return tl::make_unexpected(opened.error());
  }
  Members members(std::move(*opened));
  record::SignedAddendum addendum;
  addendum.statement = members.kept(record::read_addendum_statement(members.text("statement")));
  addendum.signature = members.text("signature");
  return members.result(std::move(addendum));
}

/// What is read by the record's own readers later is looked at by ours first, which knows how deep is too deep.
Result<std::string> checked_json(std::string text) {
  if (auto parsed = json::parse(text); !parsed) {
    return tl::make_unexpected(parsed.error());
  }
  return text;
}

Result<record::SignedRecord> read_seal(const json::Value& value, const std::string& place) {
  auto opened = ObjectReader::open(value, place, {"statement", "signatures", "record", "code", "addenda"});
  if (!opened) {
    return tl::make_unexpected(opened.error());
  }
  Members members(std::move(*opened));
  record::SignedRecord seal;
  const std::string statement = members.kept(checked_json(members.text("statement")));
  seal.statement = members.kept(record::read_seal_statement(statement));
  members.each("signatures", [&seal](const json::Value& each, const std::string& at) -> Result<void> {
    if (each.string() == nullptr) {
      return refuse("wrong_type", at, SHIMWRIGHT_TEXT("store", "A text in quotation marks has to stand here."));
    }
    seal.signatures.push_back(*each.string());
    return {};
  });
  seal.record = members.kept(checked_json(members.text("record")));
  seal.code = members.text("code");
  members.each("addenda", [&seal](const json::Value& each, const std::string& at) {
    return read_addendum(each, at).map(
        [&seal](auto&& read) { seal.addenda.push_back(std::forward<decltype(read)>(read)); });
  });
  return members.result(std::move(seal));
}

/// Whose file it is, before anything else of it is asked for.
Result<void> check_format(const json::Value& whole) {
  const json::Value* format = whole.find("format");
  if (format == nullptr || format->string() == nullptr || *format->string() != "shimwright.job") {
    return not_job_file();
  }
  const json::Value* reader = whole.find("min_reader");
  if (reader != nullptr && reader->number() != nullptr && reader->number()->text != "1") {
    return refuse("newer_format", "",
                  SHIMWRIGHT_TEXT("store", "This job file was written by a newer program: take it in with that."));
  }
  return {};
}

Result<JobLine> read_members(Members members) {
  JobLine line;
  static_cast<void>(members.number("version", 1, 1000000));
  static_cast<void>(members.number("min_reader", 1, 1));
  line.store = members.text("store");
  line.workshop = members.text("workshop");
  line.job = members.text("job");
  line.job_sheet = members.text("job_sheet");
  line.spec_sheet = members.text("spec_sheet");
  const auto add_to = [](auto& list) {
    return [&list](auto&& read) { list.push_back(std::forward<decltype(read)>(read)); };
  };
  members.each("entries", [&](const json::Value& each, const std::string& at) {
    return read_entry(each, at).map(add_to(line.entries));
  });
  members.each("persons", [&](const json::Value& each, const std::string& at) {
    return read_person(each, at).map(add_to(line.persons));
  });
  members.each("personal",
               [&](const json::Value& each, const std::string& at) { return read_personal(each, at, line.personal); });
  members.each("photos", [&](const json::Value& each, const std::string& at) {
    return read_photo(each, at).map(add_to(line.photos));
  });
  if (const json::Value* seal = members.reader().member("seal"); seal != nullptr) {
    line.seal = members.kept(read_seal(*seal, members.reader().place_of("seal")));
  }
  return members.result(std::move(line));
}

}  // namespace

Result<JobLine> read_job_line(const QByteArray& line) {
  const auto whole = json::parse(text_of(line), {json::ParseLimits{}.depth, longest_job_line});
  if (!whole && whole.error().code != "no_json") {
    return tl::make_unexpected(whole.error());
  }
  if (!whole) {
    return not_job_file();
  }
  if (auto ours = check_format(*whole); !ours) {
    return tl::make_unexpected(ours.error());
  }
  auto opened = ObjectReader::open(*whole, "",
                                   {"format", "version", "min_reader", "store", "workshop", "job", "job_sheet",
                                    "spec_sheet", "entries", "persons", "personal", "photos"},
                                   {"seal"});
  if (!opened) {
    return tl::make_unexpected(opened.error());
  }
  return read_members(Members(std::move(*opened)));
}

Result<QByteArray> read_photo_line(const QByteArray& line, const FilePhoto& expected) {
  const auto value = json::parse(text_of(line), {4, longest_photo_line});
  auto opened = value ? ObjectReader::open(*value, "", {"sha256", "base64"}) : tl::make_unexpected(value.error());
  if (!opened) {
    return damaged();
  }
  const auto sha256 = opened->string("sha256");
  const auto base64 = opened->string("base64");
  if (!sha256 || !base64 || *sha256 != expected.sha256) {
    return damaged();
  }
  auto content =
      QByteArray::fromBase64Encoding(QByteArray::fromStdString(*base64), QByteArray::AbortOnBase64DecodingErrors);
  if (!content || content.decoded.size() != expected.bytes ||
      record::sha256_hex(text_of(content.decoded)) != expected.sha256) {
    return damaged();
  }
  return std::move(content.decoded);
}

Result<std::string> read_end_line(const QByteArray& line) {
  const auto value = json::parse(text_of(line), {4, 256});
  auto opened = value ? ObjectReader::open(*value, "", {"sha256"}) : tl::make_unexpected(value.error());
  auto sha256 = opened ? opened->string("sha256") : tl::make_unexpected(opened.error());
  if (!sha256) {
    return damaged();
  }
  return sha256;
}

}  // namespace shimwright::store
