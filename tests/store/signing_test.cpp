#include "shimwright/store/signing.h"

#include <QFile>

#include "sealed_job.h"
#include "shimwright/store/check.h"

namespace shimwright::store {

using namespace test;

namespace {

job::Moment at(std::int64_t seconds) {
  job::Moment moment = by_mk().moment;
  moment.at_ms += seconds * 1000;
  return moment;
}

}  // namespace

TEST_CASE("a person without a PIN signs nothing; one PIN is set, changed by its owner, and used") {
  Workbench bench;
  Store& store = bench.store();
  CHECK(code_of(unlock(store, mk, pin("4711"), at(0), cheap_rules())) == "no_pin");
  CHECK(code_of(set_pin(store, "01930000-0000-7000-8000-0000000000ff", pin("4711"), by_mk(), cheap_rules())) ==
        "unknown_person");
  CHECK(code_of(set_pin(store, mk, pin("47"), by_mk(), cheap_rules())) == "bad_pin");
  CHECK(got(signing_keys(store)).empty());
  went(set_pin(store, mk, pin("4711"), by_mk(), cheap_rules()));
  CHECK(code_of(set_pin(store, mk, pin("1234"), by_mk(), cheap_rules())) == "has_pin");
  const std::string key = got(unlock(store, mk, pin("4711"), at(0), cheap_rules())).public_key();
  CHECK(code_of(change_pin(store, mk, pin("0000"), pin("1234"), by_mk(), cheap_rules())) == "wrong_pin");
  CHECK(code_of(change_pin(store, mk, pin("4711"), pin("1"), by_mk(), cheap_rules())) == "bad_pin");
  went(change_pin(store, mk, pin("4711"), pin("1234"), by_mk(), cheap_rules()));
  CHECK(code_of(unlock(store, mk, pin("4711"), at(0), cheap_rules())) == "wrong_pin");
  CHECK(got(unlock(store, mk, pin("1234"), at(0), cheap_rules())).public_key() == key);
  CHECK(got(check(store)).in_order());
}

TEST_CASE("after wrong PINs even the right one waits; the pause outlives the program and ends by itself") {
  Workbench bench;
  give_pins(bench);
  for (int wrong = 0; wrong < 4; ++wrong) {
    CHECK(code_of(unlock(bench.store(), mk, pin("0000"), at(0), cheap_rules())) == "wrong_pin");
  }
  bench.open();
  CHECK(code_of(unlock(bench.store(), mk, pin("4711"), at(29), cheap_rules())) == "pin_pause");
  CHECK(got(unlock(bench.store(), rt, pin("081542"), at(29), cheap_rules())).public_key().size() == 64);
  CHECK(got(unlock(bench.store(), mk, pin("4711"), at(30), cheap_rules())).public_key().size() == 64);
  CHECK(code_of(unlock(bench.store(), mk, pin("0000"), at(30), cheap_rules())) == "wrong_pin");
  CHECK(got(unlock(bench.store(), mk, pin("4711"), at(30), cheap_rules())).public_key().size() == 64);
}

TEST_CASE("a forgotten PIN makes a new key and leaves the old one what it is known by") {
  Workbench bench;
  CHECK(code_of(forget_pin(bench.store(), mk, pin("1234"), by_mk(), cheap_rules())) == "no_pin");
  give_pins(bench);
  const std::string old = got(unlock(bench.store(), mk, pin("4711"), at(0), cheap_rules())).public_key();
  went(forget_pin(bench.store(), mk, pin("1234"), by_mk(1), cheap_rules()));
  CHECK(got(unlock(bench.store(), mk, pin("1234"), at(0), cheap_rules())).public_key() != old);
  const auto keys = got(signing_keys(bench.store()));
  REQUIRE(keys.size() == 3);
  CHECK(keys.front().public_key == old);
  CHECK_FALSE(keys.front().has_pin);
  CHECK(got(known_keys(bench.store())).size() == 3);
}

TEST_CASE("a key is ended from a day on: then it signs no more, and another can be made") {
  Workbench bench;
  give_pins(bench);
  const std::string key = got(unlock(bench.store(), mk, pin("4711"), at(0), cheap_rules())).public_key();
  for (const char* no_day : {"tomorrow", "2026-99-99", "2026-02-30", ""}) {
    CHECK(code_of(end_key(bench.store(), key, no_day, by_mk())) == "bad_date");
  }
  CHECK(code_of(end_key(bench.store(), "no key", "2026-11-30", by_mk())) == "unknown_key");
  const std::string today = record::date_of(at(0));
  went(end_key(bench.store(), key, today, by_mk()));
  CHECK(code_of(unlock(bench.store(), mk, pin("4711"), at(0), cheap_rules())) == "key_ended");
  went(set_pin(bench.store(), mk, pin("1234"), by_mk(1), cheap_rules()));
  CHECK(got(unlock(bench.store(), mk, pin("1234"), at(60), cheap_rules())).public_key() != key);
}

TEST_CASE("neither PIN nor seed lies in the file, its log or the history in clear") {
  Workbench bench;
  SigningRules rules = cheap_rules();
  auto next = std::make_shared<std::uint8_t>(std::uint8_t{0});
  rules.chance = [next](std::span<std::uint8_t> bytes) {
    for (std::uint8_t& each : bytes) {
      each = (*next)++;
    }
  };
  QByteArray seed;  // the first that is drawn
  for (char each = 0; each < 32; ++each) {
    seed.append(each);
  }
  went(set_pin(bench.store(), mk, pin("471147114711"), by_mk(), rules));
  went(change_pin(bench.store(), mk, pin("471147114711"), pin("815081508150"), by_mk(), rules));
  for (const char* end : {"", "-wal"}) {
    QFile file(QString::fromStdString(bench.path()) + end);
    REQUIRE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    CHECK_FALSE(bytes.contains("471147114711"));
    CHECK_FALSE(bytes.contains("815081508150"));
    CHECK_FALSE(bytes.contains(seed));
    CHECK_FALSE(bytes.contains(seed.toHex()));
  }
}

TEST_CASE("where the store is only looked at, no PIN is tried") {
  Workbench bench;
  give_pins(bench);
  bench.close();
  bench.open(Mode::look_only);
  CHECK(code_of(unlock(bench.store(), mk, pin("4711"), at(0), cheap_rules())) == "look_only");
  CHECK(code_of(set_pin(bench.store(), mk, pin("4711"), by_mk(), cheap_rules())) == "look_only");
  CHECK(code_of(forget_pin(bench.store(), mk, pin("4711"), by_mk(), cheap_rules())) == "look_only");
  CHECK(code_of(end_key(bench.store(), "", "2026-11-30", by_mk())) == "look_only");
}

TEST_CASE("a person signs until the day the key ends, and with another key from then on") {
  const std::vector<PersonsKey> keys{{"a", mk, 0, true, "2026-11-30"}, {"b", rt, 0, false, std::nullopt}};
  CHECK(signing_state(keys, mk, "2026-11-29") == SigningState::signs);
  CHECK(signing_state(keys, mk, "2026-11-30") == SigningState::key_ended);
  CHECK(signing_state(keys, rt, "2026-11-30") == SigningState::no_key);
  CHECK(signing_state({}, mk, "2026-11-30") == SigningState::no_key);
  std::vector<PersonsKey> more = keys;
  more.push_back({"c", mk, 1, true, std::nullopt});
  CHECK(signing_state(more, mk, "2026-12-01") == SigningState::signs);
}

TEST_CASE("an end of a key is brought forward and never put off") {
  Workbench bench;
  give_pins(bench);
  const std::string key = got(unlock(bench.store(), mk, pin("4711"), at(0), cheap_rules())).public_key();
  went(end_key(bench.store(), key, "2099-01-01", by_mk()));
  CHECK(code_of(end_key(bench.store(), key, "2099-06-01", by_mk())) == "already_ended");
  CHECK(code_of(end_key(bench.store(), key, "2099-01-01", by_mk())) == "already_ended");
  went(end_key(bench.store(), key, "2020-01-01", by_mk()));
  CHECK(code_of(end_key(bench.store(), key, "2099-01-01", by_mk())) == "already_ended");
  CHECK(code_of(unlock(bench.store(), mk, pin("4711"), at(0), cheap_rules())) == "key_ended");
}

TEST_CASE("all keys of a person are ended, one with a later end and one whose PIN was forgotten too") {
  Workbench bench;
  give_pins(bench);
  went(forget_pin(bench.store(), mk, pin("1234"), by_mk(1), cheap_rules()));
  const std::string now = got(unlock(bench.store(), mk, pin("1234"), at(0), cheap_rules())).public_key();
  went(end_key(bench.store(), now, "2099-01-01", by_mk(2)));
  CHECK(code_of(end_keys(bench.store(), mk, "tomorrow", by_mk(3))) == "bad_date");
  went(end_keys(bench.store(), mk, "2020-01-01", by_mk(4)));
  for (const PersonsKey& each : got(signing_keys(bench.store()))) {
    CHECK(each.invalid_from == (each.person == mk ? std::optional<std::string>("2020-01-01") : std::nullopt));
  }
  CHECK(code_of(end_keys(bench.store(), mk, "2020-01-01", by_mk(5))) == "already_ended");
  CHECK(code_of(end_keys(bench.store(), "nobody", "2020-01-01", by_mk(6))) == "no_pin");
}

TEST_CASE("no first PIN makes a second key while one of the person is still valid") {
  Workbench bench;
  give_pins(bench);
  const std::string key = got(unlock(bench.store(), mk, pin("4711"), at(0), cheap_rules())).public_key();
  went(end_key(bench.store(), key, "2099-01-01", by_mk()));
  CHECK(code_of(set_pin(bench.store(), mk, pin("1234"), by_mk(1), cheap_rules())) == "has_pin");
  CHECK(got(unlock(bench.store(), mk, pin("4711"), at(0), cheap_rules())).public_key() == key);
}

}  // namespace shimwright::store
