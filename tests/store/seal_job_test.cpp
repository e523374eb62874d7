#include <random>

#include <QFile>

#include "chain_heads.h"
#include "connection.h"
#include "sealed_job.h"
#include "shimwright/record/record_json.h"
#include "shimwright/store/check.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/store/job_record.h"
#include "shimwright/store/registers.h"

namespace shimwright::store {

using namespace test;

namespace {

std::string sealed_job(Workbench& bench, const std::string& last = "10") {
  if (got(signing_keys(bench.store())).empty()) {
    give_pins(bench);
  }
  const std::string id = closed_job(bench, last);
  got(seal_job(bench.store(), id, both_pins(), by_mk(600), cheap_rules()));
  got(add_addendum(bench.store(), id, "found later", "0.1 l of oil topped up", pin("081542"), by_rt(700),
                   cheap_rules()));
  return id;
}

/// The job's photos were never taken: their files are not there.
bool all_but_photos(const Store& store) {
  const auto findings = got(check(store)).findings;
  return std::all_of(findings.begin(), findings.end(),
                     [](const Finding& each) { return each.code == "photo_missing"; });
}

void drop_triggers(Connection& connection) {
  for (const Row& row : got(connection.rows("SELECT name FROM sqlite_schema WHERE type = 'trigger'"))) {
    went(connection.run_script("DROP TRIGGER " + QByteArray::fromStdString(text_in(row, 0))));
  }
}

/// One cell of a table, changed behind the rules and put back.
class Cell {
 public:
  Cell(Connection& connection, std::string table, std::string column, std::string where)
      : connection_(connection), set_("UPDATE " + table + " SET " + column + " = ? WHERE " + where) {
    whole_ = got(connection.value("SELECT " + column + " FROM " + table + " WHERE " + where));
  }
  [[nodiscard]] std::size_t size() const {
    const auto* bytes = std::get_if<Bytes>(&whole_);
    const auto* text = std::get_if<std::string>(&whole_);
    return bytes != nullptr ? bytes->content.size() : text != nullptr ? text->size() : 1;
  }
  void change(std::size_t at) {
    Value changed = whole_;
    if (auto* bytes = std::get_if<Bytes>(&changed)) {
      bytes->content[at] = static_cast<char>(bytes->content[at] ^ 1);
    } else if (auto* text = std::get_if<std::string>(&changed)) {
      (*text)[at] = static_cast<char>((*text)[at] ^ 1);
    } else {
      changed = number_value(std::get<std::int64_t>(changed) ^ 1);
    }
    went(connection_.execute(set_, {changed}));
  }
  void put_back() { went(connection_.execute(set_, {whole_})); }

 private:
  Connection& connection_;
  std::string set_;
  Value whole_;
};

}  // namespace

TEST_CASE("a closed job is sealed by those who signed it, and all of it is whole and ours") {
  Workbench bench;
  give_pins(bench);
  const std::string id = closed_job(bench, "10");
  CHECK(code_of(verify_job(bench.store(), id)) == "not_sealed");
  CHECK(code_of(seal_job(bench.store(), id, {}, by_mk(600), cheap_rules())) == "other_signers");
  std::vector<SealPin> wrong;
  wrong.push_back({mk, pin("4711")});
  wrong.push_back({rt, pin("000000")});
  CHECK(code_of(seal_job(bench.store(), id, wrong, by_mk(600), cheap_rules())) == "wrong_pin");
  CHECK(code_of(verify_job(bench.store(), id)) == "not_sealed");
  const std::string digest = got(seal_job(bench.store(), id, both_pins(), by_mk(600), cheap_rules())).digest;
  CHECK(digest.size() == 64);
  went(verify_job(bench.store(), id));
  CHECK(all_but_photos(bench.store()));
  CHECK(code_of(seal_job(bench.store(), id, both_pins(), by_mk(601), cheap_rules())) == "sealed");
  CHECK(code_of(seal_job(bench.store(), "01930000-0000-7000-8000-00000000ff00", both_pins(), by_mk(), cheap_rules())) ==
        "unknown_job");
}

TEST_CASE("a job that is not at its end is not sealed, and no PIN is asked for it") {
  Workbench bench;
  TestJob job(bench, "11", "2026-0148");
  job.open();
  CHECK(code_of(seal_job(bench.store(), job.id(), both_pins(), by_mk(9), cheap_rules())) == "not_decided");
  CHECK(code_of(add_addendum(bench.store(), job.id(), "why", "what", pin("4711"), by_mk(9), cheap_rules())) ==
        "not_sealed");
}

TEST_CASE("where the checker was left out with a reason the technician seals alone") {
  Workbench bench;
  give_pins(bench);
  const std::string id = closed_job(bench, "12", false);
  std::vector<SealPin> alone;
  alone.push_back({mk, pin("4711")});
  got(seal_job(bench.store(), id, alone, by_mk(600), cheap_rules()));
  went(verify_job(bench.store(), id));
}

TEST_CASE("after sealing there are addenda only, and the sealed part stays as it was whatever the registers say") {
  Workbench bench;
  const std::string id = sealed_job(bench);
  const auto before = got(signed_record_of(bench.store(), id));
  auto hand = got(JobInHand::load(bench.store(), id));
  CHECK(code_of(hand.execute(job::Note{std::nullopt, "late"}, got(hand.context(by_mk(701))))) == "sealed");
  went(bench.store().registers().put(Person{mk, "Another Name", "AN", std::nullopt, true}, by_mk(702)));
  went(
      bench.store().registers().put(Workshop{"01930000-0000-7000-8000-0000000000aa", "Sold", "Elsewhere"}, by_mk(703)));
  CHECK(code_of(add_addendum(bench.store(), id, "", "what", pin("4711"), by_mk(704), cheap_rules())) ==
        "reason_missing");
  got(add_addendum(bench.store(), id, "again", "a second one", pin("4711"), by_mk(705), cheap_rules()));
  const auto record = got(record_of(bench.store(), id));
  CHECK(record::sealed_part(record) == before.record);
  REQUIRE(record.seal);
  CHECK(record.seal->groups.size() == 24);
  REQUIRE(record.addenda.size() == 2);
  CHECK(record.addenda[0].text == "0.1 l of oil topped up");
  CHECK(record.addenda[0].initials == "RT");
  went(verify_job(bench.store(), id));
  CHECK(all_but_photos(bench.store()));
}

TEST_CASE("the job file lies in the backup folder and is whole by itself") {
  Workbench bench;
  const std::string id = sealed_job(bench);
  const std::string folder = bench.file("backup").toStdString();
  const std::string path = got(write_job_file(bench.store(), id, folder));
  QFile file(QString::fromStdString(path));
  REQUIRE(file.open(QIODevice::ReadOnly));
  const auto read = got(record::read_signed_record(file.readAll().toStdString()));
  went(record::check_signed_record(read));
  went(record::check_keys(read, got(known_keys(bench.store()))));
  CHECK(read.addenda.size() == 1);
  CHECK(got(write_job_file(bench.store(), id, folder)) == path);
  QFile blocked(bench.file("file"));
  REQUIRE(blocked.open(QIODevice::WriteOnly));
  CHECK_FALSE(write_job_file(bench.store(), id, bench.file("file").toStdString()));
}

TEST_CASE("sealing and adding write the file into the folder they are given, and say where they could not") {
  Workbench bench;
  give_pins(bench);
  const std::string id = closed_job(bench, "10");
  const std::string folder = bench.file("backup").toStdString();
  QFile blocked(bench.file("blocked"));
  REQUIRE(blocked.open(QIODevice::WriteOnly));
  const auto sealed = got(seal_job(bench.store(), id, both_pins(), by_mk(600), cheap_rules(), folder));
  CHECK_FALSE(sealed.file.fault);
  const auto addenda_in = [&] {
    QFile file(QString::fromStdString(sealed.file.path));
    REQUIRE(file.open(QIODevice::ReadOnly));
    return got(record::read_signed_record(file.readAll().toStdString())).addenda.size();
  };
  CHECK(addenda_in() == 0);
  const auto unwritten = got(add_addendum(bench.store(), id, "why", "what", pin("4711"), by_mk(700), cheap_rules(),
                                          bench.file("blocked").toStdString()));
  REQUIRE(unwritten.fault);
  CHECK(unwritten.path.empty());
  CHECK(got(signed_record_of(bench.store(), id)).addenda.size() == 1);
  CHECK(addenda_in() == 0);
  got(add_addendum(bench.store(), id, "why", "more", pin("4711"), by_mk(701), cheap_rules(), folder));
  CHECK(addenda_in() == 2);
}

TEST_CASE("any single changed byte in the store is found: seal, signatures, addenda, record and entries") {
  Workbench bench;
  const std::string id = sealed_job(bench);
  Connection& connection = bench.store().connection();
  drop_triggers(connection);
  went(connection.run_script("PRAGMA foreign_keys = OFF"));
  const std::string of_job = "job = '" + id + "'";
  std::mt19937 seeded(20261127);
  std::size_t changes = 0;
  const auto is_found = [&](Cell& cell, std::size_t at) {
    cell.change(at);
    CHECK(code_of(verify_job(bench.store(), id)) != "no refusal");
    cell.put_back();
    ++changes;
  };
  for (const auto& [table, column, where] :
       {std::tuple("seal", "statement", of_job), std::tuple("seal", "code", of_job), std::tuple("seal", "seq", of_job),
        std::tuple("addendum", "statement", of_job), std::tuple("addendum", "seq", of_job),
        std::tuple("signature", "signature", of_job + " AND item = 2"),
        std::tuple("signature", "signature", of_job + " AND item = 1 AND seq = (SELECT seq FROM seal)"),
        std::tuple("signature", "signature", of_job + " AND seq > (SELECT seq FROM seal)")}) {
    Cell cell(connection, table, column, where);
    INFO(table << "." << column);
    for (std::size_t at = 0; at < cell.size(); ++at) {
      is_found(cell, at);
    }
  }
  Cell frozen(connection, "seal", "record", of_job);
  for (int draw = 0; draw < 400; ++draw) {
    is_found(frozen, std::uniform_int_distribution<std::size_t>(0, frozen.size() - 1)(seeded));
  }
  const auto entries = got(connection.rows("SELECT seq FROM entry WHERE " + of_job + " ORDER BY seq"));
  for (const Row& row : entries) {
    const std::string where = of_job + " AND seq = " + std::to_string(number_in(row, 0));
    for (const char* column : {"at_ms", "offset_min", "clock_went_back", "person", "kind", "kind_version", "body",
                               "previous_hash", "hash"}) {
      Cell cell(connection, "entry", column, where);
      INFO(column << " of entry " << number_in(row, 0));
      if (cell.size() > 0) {
        is_found(cell, std::uniform_int_distribution<std::size_t>(0, cell.size() - 1)(seeded));
      }
    }
  }
  CHECK(changes > 2500);
  went(verify_job(bench.store(), id));
}

TEST_CASE("a dropped last entry, a dropped seal and a missing job are found, even with the list of heads made anew") {
  Workbench bench;
  const std::string first = sealed_job(bench, "10");
  const std::string other = closed_job(bench, "11");
  const std::string second = closed_job(bench, "12");
  got(seal_job(bench.store(), second, both_pins(), by_mk(800), cheap_rules()));
  Connection& connection = bench.store().connection();
  drop_triggers(connection);
  went(connection.run_script("PRAGMA foreign_keys = OFF"));
  const auto try_and_take_back = [&](const std::string& sql, const std::string& job, const std::string& code) {
    went(connection.execute("BEGIN"));
    went(connection.run_script(QByteArray::fromStdString(sql)));
    INFO(sql);
    CHECK(code_of(verify_job(bench.store(), job)) == code);
    went(connection.execute("ROLLBACK"));
  };
  const std::string last = "(SELECT max(seq) FROM entry WHERE job = '" + first + "')";
  try_and_take_back("DELETE FROM entry WHERE job = '" + first + "' AND seq = " + last, first, "changed");
  try_and_take_back("DELETE FROM seal WHERE job = '" + first + "'", first, "not_sealed");
  try_and_take_back("DELETE FROM addendum; DELETE FROM signature WHERE seq > (SELECT seq FROM seal WHERE job = '" +
                        first + "') AND job = '" + first + "'",
                    first, "changed");
  try_and_take_back("DELETE FROM entry WHERE job = '" + other + "'; DELETE FROM chain_head WHERE job = '" + other + "'",
                    second, "no refusal");  // the list before its end is looked at by check(), below

  // Somebody drops a job and makes the whole list of heads anew without it: the later seal stands on the old one.
  went(connection.execute("DELETE FROM chain_head WHERE job = '" + other + "'"));
  std::string before;
  std::int64_t position = 0;
  const auto heads = got(connection.rows("SELECT position, job, seq, hash FROM chain_head ORDER BY position"));
  for (const Row& row : heads) {
    before = list_hash(before, ++position, text_in(row, 1), number_in(row, 2), text_in(row, 3));
    went(connection.execute("UPDATE chain_head SET position = ?, list_hash = ? WHERE position = ?",
                            {number_value(position), before, number_value(number_in(row, 0))}));
  }
  CHECK(code_of(verify_job(bench.store(), second)) == "store_changed");
}

TEST_CASE("the check of the store looks at every seal") {
  Workbench bench;
  const std::string id = sealed_job(bench);
  const auto codes = [&] {
    std::string all;
    for (const Finding& each : got(check(bench.store())).findings) {
      all += each.code + " ";
    }
    return all;
  };
  Connection& connection = bench.store().connection();
  drop_triggers(connection);
  went(connection.run_script("PRAGMA foreign_keys = OFF"));
  went(connection.execute("UPDATE signature SET signature = replace(signature, '0', '1') WHERE item = 2"));
  CHECK(codes().find("seal_broken") != std::string::npos);
  went(connection.execute("UPDATE seal SET statement = ?", {Bytes{"{}"}}));
  CHECK(codes().find("seal_damaged") != std::string::npos);
  CHECK(code_of(record_of(bench.store(), id)) == "seal_damaged");
  went(connection.run_script("DELETE FROM signature; DELETE FROM addendum; DELETE FROM seal"));
  CHECK(codes().find("seal_missing") != std::string::npos);
}

TEST_CASE("what was signed with a key that ended before is whole and not ours") {
  Workbench bench;
  const std::string id = sealed_job(bench);
  for (const PersonsKey& each : got(signing_keys(bench.store()))) {
    went(end_key(bench.store(), each.public_key, "2020-01-01", by_mk(900)));
  }
  CHECK(code_of(verify_job(bench.store(), id)) == "unknown_key");
}

TEST_CASE("an addendum taken out of the store with its entry is missed where anything still counts it") {
  Workbench bench;
  const std::string id = sealed_job(bench);
  went(verify_job(bench.store(), id));
  Connection& connection = bench.store().connection();
  drop_triggers(connection);
  const std::string last = std::to_string(got(bench.store().load(id)).entries.back().seq);
  const auto take_out = [&](bool line_of_job) {
    went(connection.run_script(QByteArray::fromStdString(
        "PRAGMA foreign_keys = OFF; DELETE FROM signature WHERE seq = " + last + "; DELETE FROM addendum; " +
        "DELETE FROM chain_head WHERE seq = " + last + "; DELETE FROM entry WHERE seq = " + last + ";" +
        (line_of_job ? "UPDATE job SET last_seq = last_seq - 1;" : ""))));
  };
  SECTION("the line of the job still counts it") {
    take_out(false);
    CHECK(code_of(verify_job(bench.store(), id)) == "store_changed");
  }
  SECTION("what was stored after it has its head before its own") {
    TestJob later(bench, "20", "later");
    later.open();
    take_out(true);
    CHECK(code_of(verify_job(bench.store(), id)) == "store_changed");
  }
}

}  // namespace shimwright::store
