// What comes from outside is believed nothing: each file here is refused with one sentence on one line, and the store
// is as it was.
#include <array>
#include <random>

#include "exchange.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/job_record.h"

namespace shimwright::store {

using namespace test;

namespace {

/// A store, and a good file of a sealed job that is not in it.
class Border {
 public:
  Border() : job_(sealed_job_with_photos(from_, "10")), good_(exported(from_, job_)), before_(content_of_store(to_)) {}

  [[nodiscard]] const std::string& good() const { return good_; }
  [[nodiscard]] Workbench& to() { return to_; }
  [[nodiscard]] const std::string& job() const { return job_; }

  /// Gives the code of the refusal.
  std::string refused(const QByteArray& content) {
    put_file(to_.file("hostile.jsonl"), content);
    return refused_file(to_.file("hostile.jsonl").toStdString());
  }
  std::string refused_file(const std::string& path) {
    const auto taken = import_job(to_.path(), path, by_mk());
    REQUIRE_FALSE(taken);
    const std::string line = taken.error().in_english();
    INFO(line.substr(0, 300));
    CHECK(line.find('\n') == std::string::npos);
    CHECK(line.size() < 1000);
    CHECK(line.back() == '.');
    CHECK(content_of_store(to_) == before_);
    return taken.error().code;
  }

 private:
  Workbench from_;
  Workbench to_;
  std::string job_;
  std::string good_;
  std::string before_;
};

/// Pointers to every member and element below `at`, the first and last elements only of long lists.
void ways_in(const nlohmann::json& value, const nlohmann::json::json_pointer& at,
             std::vector<nlohmann::json::json_pointer>& ways) {
  if (value.is_object()) {
    for (const auto& [key, each] : value.items()) {
      ways.push_back(at / key);
      ways_in(each, at / key, ways);
    }
  } else if (value.is_array() && !value.empty()) {
    ways.push_back(at / (value.size() - 1));
    ways_in(value.back(), at / (value.size() - 1), ways);
  }
}

}  // namespace

TEST_CASE("a file cut off anywhere, or with any byte changed, is refused") {
  Border border;
  const QByteArray whole = content_of(border.good());
  std::mt19937 chance(7);
  for (int round = 0; round < 40; ++round) {
    const auto at = static_cast<qsizetype>(chance() % static_cast<unsigned>(whole.size() - 1));
    border.refused(whole.left(at));
    QByteArray changed = whole;
    changed[at] = static_cast<char>(changed[at] ^ (1 << (chance() % 8)));
    border.refused(changed);
  }
  CHECK(border.refused(whole + "{}\n") == "job_file_damaged");
  CHECK(border.refused({}) == "not_job_file");
  CHECK(border.refused("\n") == "not_job_file");
  CHECK(border.refused_file("/nowhere/at-all.jsonl") == "cannot_read");
  CHECK(border.refused_file(border.to().file("").toStdString()) == "cannot_read");
}

TEST_CASE("a member of another type, missing, unknown or there twice is refused wherever it stands") {
  Border border;
  const FileInParts good(border.good());
  std::vector<nlohmann::json::json_pointer> ways;
  ways_in(good.job, nlohmann::json::json_pointer(), ways);
  REQUIRE(ways.size() >= 40);
  for (const auto& way : ways) {
    INFO(way.to_string());
    for (const nlohmann::json& other :
         {nlohmann::json(), nlohmann::json(1.5), nlohmann::json{{"a", 1}}, nlohmann::json::array({nlohmann::json()})}) {
      FileInParts changed = good;
      changed.job[way] = other;
      border.refused(changed.whole());
    }
    if (way.parent_pointer().empty() || good.job[way.parent_pointer()].is_object()) {
      FileInParts shorter = good;
      shorter.job[way.parent_pointer()].erase(way.back());
      border.refused(shorter.whole());
      FileInParts longer = good;
      longer.job[way.parent_pointer()]["surprise"] = 1;
      border.refused(longer.whole());
    }
  }
  const QByteArray first = QByteArray::fromStdString(good.job.dump());
  CHECK(border.refused(FileInParts::whole("{\"job\":\"x\"," + first.mid(1), good.photos)) == "repeated_field");
}

TEST_CASE("numbers that are too large, and nesting that is too deep, are refused") {
  Border border;
  const FileInParts good(border.good());
  const QByteArray first = QByteArray::fromStdString(good.job.dump());
  for (const char* number : {"1e999", "99999999999999999999999999999999", "-9007199254740993", "1.0", "0x10", "NaN"}) {
    QByteArray changed = first;
    const auto at = changed.indexOf("\"at_ms\":") + 8;
    changed.replace(at, changed.indexOf(',', at) - at, number);
    border.refused(FileInParts::whole(changed, good.photos));
  }
  const QByteArray deep = QByteArray(100000, '[') + QByteArray(100000, ']');
  CHECK(border.refused(FileInParts::whole(QByteArray("{\"format\":\"shimwright.job\",\"entries\":") + deep + "}",
                                          {})) == "too_deep");
  FileInParts body = good;
  body.job["entries"][0]["body"] = deep.toStdString();
  body.chain_anew();
  CHECK(border.refused(body.whole()) == "bad_body");
  FileInParts record = good;
  record.job["seal"]["record"] = deep.toStdString();
  CHECK(border.refused(record.whole()) == "too_deep");
}

TEST_CASE("a file that is too large is refused before it is read") {
  Border border;
  const FileInParts good(border.good());
  CHECK(border.refused("{\"format\":\"" + QByteArray(17 * 1024 * 1024, 'x') + "\"}\n") == "too_large");
  FileInParts photo = good;
  photo.photos[0] = "{\"base64\":\"" + QByteArray(29 * 1024 * 1024, 'A') + "\",\"sha256\":\"\"}";
  CHECK(border.refused(photo.whole()) == "job_file_damaged");
}

TEST_CASE("a file of a newer program says so") {
  Border border;
  FileInParts newer(border.good());
  newer.job["min_reader"] = 2;
  newer.job["something"] = "new";
  CHECK(border.refused(newer.whole()) == "newer_format");
  FileInParts kind(border.good());
  kind.job["entries"][3]["kind_version"] = 9;
  kind.chain_anew();
  CHECK(border.refused(kind.whole()) == "unknown_kind");
}

TEST_CASE("what is no file of a job is refused") {
  Border border;
  Workbench another;
  CHECK(border.refused_file(another.path()) == "not_job_file");
  CHECK(border.refused("SQLite format 3" + QByteArray(5000, '\0')) == "not_job_file");
  CHECK(border.refused(QByteArray::fromStdString(shipped("specs/D7-2.json"))) != "");
  CHECK(border.refused("{\"format\":\"shimwright.signed-record\"}\n") == "not_job_file");
  CHECK(border.refused("{\"format\":7}\n") == "not_job_file");
}

TEST_CASE("a photo's name is never a path, and its content is what it says") {
  Border border;
  const FileInParts good(border.good());
  for (const char* name : {"../../../planted", "/planted", "..", "", "ABCDEF", "file:planted"}) {
    FileInParts changed = good;
    for (nlohmann::json& each : changed.job["entries"]) {
      if (each["kind"] == "photo_taken") {
        auto body = nlohmann::json::parse(each["body"].get<std::string>());
        body["sha256"] = name;
        each["body"] = body.dump();
        break;
      }
    }
    changed.job["photos"][0]["sha256"] = name;
    changed.chain_anew();
    CHECK(border.refused(changed.whole()) == "job_file_wrong");
  }
  FileInParts swapped = good;
  swapped.photos[0].replace("base64\":\"", "base64\":\"AAAA");
  CHECK(border.refused(swapped.whole()) == "job_file_damaged");
  FileInParts none = good;
  none.job["photos"] = nlohmann::json::array();
  none.photos.clear();
  CHECK(border.refused(none.whole()) == "job_file_wrong");
}

TEST_CASE("entries, texts, sheets and seals of something else are refused") {
  Border border;
  const FileInParts good(border.good());
  const auto changed = [&](auto change) {
    FileInParts file = good;
    change(file.job);
    file.chain_anew();
    return border.refused(file.whole());
  };
  using nlohmann::json;
  CHECK(changed([](json& job) {
          job["seal"] = nullptr;
          job.erase("seal");
        }) == "job_file_wrong");
  CHECK(changed([](json& job) { job["entries"].erase(job["entries"].size() - 1); }) == "changed");
  CHECK(changed([](json& job) { job["entries"].erase(0); }) == "chain_gap");
  CHECK(changed([](json& job) { job["entries"] = json::array(); }) == "job_file_wrong");
  CHECK(changed([](json& job) {
          job["entries"][1] = job["entries"][0];
          job["entries"][1]["seq"] = 2;
        }) == "job_file_wrong");
  CHECK(changed([](json& job) { job["job"] = "../../planted"; }) == "job_file_wrong");
  CHECK(changed([](json& job) { job["spec_sheet"] = "{}"; }) == "job_file_wrong");
  CHECK(changed([](json& job) { job["persons"].push_back(job["persons"][0]); }) == "job_file_wrong");
  CHECK(changed([](json& job) { job["persons"][0]["id"] = "'; DROP TABLE entry; --"; }) == "job_file_wrong");
  CHECK(changed([](json& job) { job["persons"][0]["name"] = std::string(100000, 'x'); }) == "job_file_wrong");
  CHECK(changed([](json& job) {
          job["personal"].push_back({{"id", "01930000-0000-7000-8000-000000000999"}, {"salt", "00"}, {"text", "x"}});
        }) == "job_file_wrong");
  CHECK(changed([](json& job) { job["entries"][2]["person"] = ""; }) == "changed");
}

TEST_CASE("an assembly no job came to and a text nobody writes are refused, wherever they stand") {
  Border border;
  const FileInParts good(border.good());
  int tried = 0;
  const auto with_body = [&](std::size_t at, const nlohmann::json& body) {
    FileInParts file = good;
    file.job["entries"][at]["body"] = body.dump();
    file.chain_anew();
    ++tried;
    return border.refused(file.whole());
  };
  const auto& entries = good.job["entries"];
  for (std::size_t at = 0; at < entries.size(); at += 5) {
    const auto body = nlohmann::json::parse(entries[at]["body"].get<std::string>());
    for (const auto& [key, value] : body.items()) {
      INFO("entry " << at << ", " << key);
      auto odd = body;
      if (key == "assembly") {
        for (const int assembly : {0, -1, 1000, 2147483647}) {
          odd[key] = assembly;
          CHECK(with_body(at, odd) == "job_file_wrong");
        }
        continue;
      }
      if (key == "number") {
        odd[key] = "20\n26";
        CHECK(with_body(at, odd) == "job_file_wrong");
      }
      if (key == "number" || key == "text") {
        odd[key] = std::string(4001, 'x');
        CHECK(with_body(at, odd) == "job_file_wrong");
      }
    }
  }
  CHECK(tried > 10);
}

TEST_CASE("a job whose entries make no sense is taken without harm: folded, recorded and checked") {
  Border border;
  FileInParts file(border.good());
  file.job.erase("seal");
  auto& entries = file.job["entries"];
  while (entries.back()["kind"] == "sealed" || entries.back()["kind"] == "addendum_added") {
    entries.erase(entries.size() - 1);
  }
  std::mt19937 chance(11);
  constexpr std::array<std::int64_t, 4> odd_numbers = {0, -1, 2147483647, (std::int64_t{1} << 53) - 1};
  int taken_in = 0;
  for (int round = 0; round < 12; ++round) {
    FileInParts odd = file;
    odd.job["job"] = "01930000-0000-7000-8000-0000000088" + std::to_string(10 + round);
    auto& shuffled = odd.job["entries"];
    std::shuffle(shuffled.begin() + 1, shuffled.end(), chance);
    for (std::size_t at = 0; at < shuffled.size(); ++at) {
      shuffled[at]["seq"] = at + 1;
      auto body = nlohmann::json::parse(shuffled[at]["body"].get<std::string>());
      for (auto& [key, each] : body.items()) {
        if (key != "assembly" && at > 0 && round > 2 && each.is_number_integer() && chance() % 30 == 0) {
          each = odd_numbers[static_cast<std::size_t>(round % 4)];
        }
      }
      if (at > 0 && body.contains("step") && chance() % 3 == 0) {
        body["step"] = "no-such-step";
      }
      shuffled[at]["body"] = body.dump();
    }
    odd.chain_anew();
    put_file(border.to().file("odd.jsonl"), odd.whole());
    const auto taken = import_job(border.to().path(), border.to().file("odd.jsonl").toStdString(), by_mk());
    if (taken) {
      ++taken_in;
      static_cast<void>(record_of(border.to().store(), taken->job));
    }
  }
  CHECK(taken_in >= 4);
  CHECK(got(check(border.to().store())).in_order());
}

}  // namespace shimwright::store
