#include "shimwright/record/hash.h"

#include <catch2/catch.hpp>

namespace shimwright::record {

namespace {

constexpr const char* job_id = "01930000-0000-7000-8000-000000000001";

job::Entry entry(std::int64_t seq, job::EntryBody body) {
  return {seq, {1764000000000 + seq, 60, false}, "01930000-0000-7000-8000-000000000031", std::move(body)};
}

std::vector<job::Entry> sample_job() {
  job::Opened opened;
  opened.number = "2026-0147";
  opened.vehicle_key = "TESTVN009TA030417";
  opened.plate = job::PrivateReference{"01930000-0000-7000-8000-0000000000aa", std::string(64, '1')};
  job::FloatRun run;
  run.at = {"float-lower", 1};
  run.lifted = {720, 2, quantity::Unit::millimetre};
  run.instrument = job::InstrumentUsed{"01930000-0000-7000-8000-0000000000bb", "Dial gauge 2", 10, 13, {}, false};
  return {entry(1, opened), entry(2, run),
          entry(3, job::HandedOver{"01930000-0000-7000-8000-000000000032", "Float is left to do"})};
}

std::vector<StoredEntry> chain_of(const std::vector<job::Entry>& entries) {
  std::vector<StoredEntry> chain;
  for (const job::Entry& each : entries) {
    chain.push_back(chained(job_id, each, chain.empty() ? "" : chain.back().hash));
  }
  return chain;
}

const std::map<std::string, std::string> names = {{"01930000-0000-7000-8000-000000000031", "MK"},
                                                  {"01930000-0000-7000-8000-000000000032", "RT"}};

}  // namespace

TEST_CASE("SHA-256 gives the values of its standard") {
  CHECK(sha256_hex("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  CHECK(sha256_hex("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  CHECK(sha256_hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

TEST_CASE("an entry's hash is that of its parts, each led by its length") {
  const StoredEntry stored{7, {1764000000000, -60, true}, "p", "noted", 1, R"({"text":"a"})", "f0", ""};
  std::string bytes;
  for (const std::string& part : std::vector<std::string>{"shimwright.entry.1", "j", "7", "f0", "1764000000000", "-60",
                                                          "1", "p", "noted", "1", R"({"text":"a"})"}) {
    bytes += std::string(7, '\0') + static_cast<char>(part.size()) + part;
  }
  CHECK(entry_hash("j", stored) == sha256_hex(bytes));
}

TEST_CASE("the hash changes with every member but the hash itself") {
  const StoredEntry stored = chained(job_id, sample_job()[1], "ab");
  CHECK(entry_hash(job_id, stored) == stored.hash);
  CHECK(entry_hash("01930000-0000-7000-8000-000000000002", stored) != stored.hash);
  const std::vector<void (*)(StoredEntry&)> changes = {
      [](StoredEntry& each) { each.seq = 3; },
      [](StoredEntry& each) { each.moment.at_ms += 1; },
      [](StoredEntry& each) { each.moment.offset_min = 0; },
      [](StoredEntry& each) { each.moment.clock_went_back = true; },
      [](StoredEntry& each) { each.person = "x"; },
      [](StoredEntry& each) { each.kind = "noted"; },
      [](StoredEntry& each) { each.kind_version = 2; },
      [](StoredEntry& each) { each.body[3] = '7'; },
      [](StoredEntry& each) { each.previous_hash = "ac"; },
  };
  for (const auto& change : changes) {
    StoredEntry changed = stored;
    change(changed);
    CHECK(entry_hash(job_id, changed) != stored.hash);
  }
  StoredEntry renamed = stored;
  renamed.hash = "other";
  CHECK(entry_hash(job_id, renamed) == stored.hash);
}

TEST_CASE("parts of other lengths with the same letters have another hash") {
  StoredEntry left;
  left.person = "ab";
  left.kind = "c";
  StoredEntry right;
  right.person = "a";
  right.kind = "bc";
  CHECK(entry_hash("j", left) != entry_hash("j", right));
}

TEST_CASE("a whole chain is in order, and reads back") {
  const auto chain = chain_of(sample_job());
  CHECK(check_chain(job_id, chain));
  CHECK(check_chain(job_id, {}));
  for (std::size_t index = 0; index < chain.size(); ++index) {
    const auto read = decoded(chain[index]);
    REQUIRE(read);
    CHECK(*read == sample_job()[index]);
  }
}

TEST_CASE("a chain with a fault is refused at its first faulty entry") {
  auto changed = chain_of(sample_job());
  changed[1].body[3] = '7';
  CHECK(check_chain(job_id, changed).error().code == "entry_changed");
  CHECK(check_chain(job_id, changed).error().place == "entry 2");

  auto rewritten = chain_of(sample_job());
  rewritten[0] = chained(job_id, entry(1, job::Noted{{}, "nothing happened"}), "");
  CHECK(check_chain(job_id, rewritten).error().code == "chain_broken");
  CHECK(check_chain(job_id, rewritten).error().place == "entry 2");

  auto dropped = chain_of(sample_job());
  dropped.erase(dropped.begin() + 1);
  CHECK(check_chain(job_id, dropped).error().code == "chain_gap");
  CHECK(check_chain(job_id, dropped).error().place == "entry 2");

  CHECK(check_chain("another job", chain_of(sample_job())).error().code == "entry_changed");
}

TEST_CASE("an entry of a newer program is named as that") {
  StoredEntry stored = chained(job_id, sample_job()[1], "");
  stored.kind_version = 9;
  CHECK(decoded(stored).error().code == "unknown_kind");
}

TEST_CASE("a digest hides a personal text behind its salt") {
  CHECK(private_digest("00ff", "plate") == sha256_hex("00ffplate"));
  CHECK(private_digest("00fe", "plate") != private_digest("00ff", "plate"));
}

TEST_CASE("two replays have one fold hash, whatever ids and times they were given") {
  auto replay = sample_job();
  for (job::Entry& each : replay) {
    each.moment = {1, 0, true};
    each.person = "m";
  }
  std::get<job::Opened>(replay[0].body).plate = job::PrivateReference{"other", "digest"};
  std::get<job::FloatRun>(replay[1].body).instrument->id = "other";
  std::get<job::HandedOver>(replay[2].body).to = "r";
  CHECK(fold_hash(replay, {{"m", "MK"}, {"r", "RT"}}) == fold_hash(sample_job(), names));
}

TEST_CASE("what happened otherwise has another fold hash") {
  const std::string as_it_was = fold_hash(sample_job(), names);
  const std::vector<void (*)(std::vector<job::Entry>&)> changes = {
      [](auto& entries) { entries.pop_back(); },
      [](auto& entries) { entries[0].person = "01930000-0000-7000-8000-000000000032"; },
      [](auto& entries) { std::get<job::Opened>(entries[0].body).plate.reset(); },
      [](auto& entries) { std::get<job::FloatRun>(entries[1].body).lifted.base = 730; },
      [](auto& entries) { std::get<job::FloatRun>(entries[1].body).instrument->name = "Dial gauge 3"; },
      [](auto& entries) { std::get<job::HandedOver>(entries[2].body).to = entries[2].person; },
      [](auto& entries) { entries[2].body = job::Noted{}; },
  };
  for (const auto& change : changes) {
    auto entries = sample_job();
    change(entries);
    CHECK(fold_hash(entries, names) != as_it_was);
  }
  CHECK(fold_hash(sample_job(), {}) != as_it_was);
}

}  // namespace shimwright::record
