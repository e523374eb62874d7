#include "shimwright/store/check.h"

#include <algorithm>
#include <set>

#include <QFile>

#include "sample_entries.h"
#include "workbench.h"

namespace shimwright::store {

using namespace test;

namespace {

constexpr const char* without_triggers =
    "DROP TRIGGER entry_is_not_changed; DROP TRIGGER entry_is_not_deleted; DROP TRIGGER chain_head_is_not_changed; "
    "DROP TRIGGER chain_head_is_not_deleted; DROP TRIGGER job_sheet_is_not_changed; "
    "DROP TRIGGER private_text_is_only_erased; DROP TRIGGER private_text_is_not_deleted;";

/// The schema as it was, or every sabotage would be found by its missing triggers.
QByteArray triggers_again() {
  QFile file(SHIMWRIGHT_DATA_DIR "/store/0001_first.sql");
  REQUIRE(file.open(QIODevice::ReadOnly));
  QByteArray script;
  const QByteArray all = file.readAll();
  for (const char* name :
       {"entry_is_not_changed", "entry_is_not_deleted", "chain_head_is_not_changed", "chain_head_is_not_deleted",
        "job_sheet_is_not_changed", "private_text_is_only_erased", "private_text_is_not_deleted"}) {
    const auto from = all.indexOf(QByteArray("CREATE TRIGGER ") + name);
    const auto to = all.indexOf("END;", from) + 4;
    REQUIRE(from >= 0);
    script += all.mid(from, to - from) + "\n";
  }
  return script;
}

/// Two jobs, one of them with an entry of every kind.
struct Filled {
  Workbench bench;
  TestJob first{bench, "10", "2026-0147"};
  TestJob second{bench, "11", "2026-0152", "TESTVN117TB118822"};

  Filled() {
    first.open();
    second.open();
    for (const job::EntryBody& body : job::test::sample_bodies()) {
      const bool apart = std::holds_alternative<job::PhotoTaken>(body) || std::holds_alternative<job::Sealed>(body);
      if (!std::holds_alternative<job::Opened>(body) && !apart) {
        first.add(body);
      }
    }
    second.add(job::Done{{"battery-off", 1}});
    second.add(job::Noted{{}, "Rain"});
  }

  CheckReport after(const QByteArray& sql) {
    bench.sabotage(without_triggers + sql + ";" + triggers_again());
    return got(check(bench.store()));
  }
};

std::set<std::string> codes_of(const CheckReport& report) {
  std::set<std::string> codes;
  for (const Finding& finding : report.findings) {
    codes.insert(finding.code);
  }
  return codes;
}

/// The finding with this code, at this place.
bool found(const CheckReport& report, const std::string& code, const std::string& table, const std::string& job,
           std::optional<std::int64_t> seq) {
  return std::any_of(report.findings.begin(), report.findings.end(), [&](const Finding& finding) {
    return finding.code == code && finding.table == table && finding.job == job && finding.seq == seq;
  });
}

using Codes = std::set<std::string>;

}  // namespace

TEST_CASE("a store as it was written is in order") {
  Filled filled;
  const CheckReport report = got(check(filled.bench.store()));
  CHECK(codes_of(report) == Codes{});
  CHECK(report.in_order());
  CHECK(report.jobs == 2);
  CHECK(report.entries == static_cast<std::int64_t>(filled.first.state().entries.size()) + 3);
  CHECK(report.erased_texts == 0);
  CHECK(filled.after("SELECT 1").in_order());
}

TEST_CASE("an entry whose bytes were changed is found") {
  Filled filled;
  const auto report = filled.after(
      "UPDATE entry SET body = CAST('{\"text\":\"Sun\"}' AS BLOB) WHERE kind = 'noted' AND "
      "seq = 3");
  CHECK(found(report, "entry_changed", "entry", filled.second.id(), 3));
}

TEST_CASE("a flipped letter, another time, another person are found") {
  for (const char* change : {"kind = 'deviated'", "at_ms = at_ms + 1", "person = 'x'", "offset_min = 0",
                             "clock_went_back = 1", "kind_version = 2", "previous_hash = hash"}) {
    Filled filled;
    INFO(change);
    CHECK_FALSE(filled.after("UPDATE entry SET " + QByteArray(change) + " WHERE seq = 2").in_order());
  }
}

TEST_CASE("a changed entry with its hash made anew breaks the chain after it") {
  Filled filled;
  auto forged = got(filled.bench.store().load(filled.second.id())).stored[1];
  forged.body = R"({"assembly":1,"step":"oil-drained"})";
  forged.hash = record::entry_hash(filled.second.id(), forged);
  const auto report = filled.after("UPDATE entry SET body = CAST('" + QByteArray::fromStdString(forged.body) +
                                   "' AS BLOB), hash = '" + QByteArray::fromStdString(forged.hash) +
                                   "' WHERE seq = 2 AND job = '" + QByteArray::fromStdString(filled.second.id()) + "'");
  CHECK(found(report, "chain_broken", "entry", filled.second.id(), 3));
}

TEST_CASE("a last entry replaced with a right hash is found by the list of chain heads") {
  Filled filled;
  auto forged = got(filled.bench.store().load(filled.second.id())).stored[2];
  forged.body = R"({"text":"Sun"})";
  forged.hash = record::entry_hash(filled.second.id(), forged);
  const auto report = filled.after("UPDATE entry SET body = CAST('" + QByteArray::fromStdString(forged.body) +
                                   "' AS BLOB), hash = '" + QByteArray::fromStdString(forged.hash) +
                                   "' WHERE seq = 3 AND job = '" + QByteArray::fromStdString(filled.second.id()) + "'");
  CHECK(found(report, "other_head", "entry", filled.second.id(), 3));
}

TEST_CASE("a dropped tail is found") {
  Filled filled;
  const auto report =
      filled.after("DELETE FROM entry WHERE seq = 3 AND job = '" + QByteArray::fromStdString(filled.second.id()) + "'");
  CHECK(found(report, "dropped_tail", "entry", filled.second.id(), 3));
}

TEST_CASE("a missing entry in the middle is found") {
  Filled filled;
  const auto report =
      filled.after("DELETE FROM entry WHERE seq = 2 AND job = '" + QByteArray::fromStdString(filled.second.id()) + "'");
  CHECK(found(report, "chain_gap", "entry", filled.second.id(), 2));
}

TEST_CASE("a job that is gone with all its rows is found") {
  Filled filled;
  const QByteArray of_job = " WHERE job = '" + QByteArray::fromStdString(filled.second.id()) + "';";
  const auto report =
      filled.after("DELETE FROM entry" + of_job + "DELETE FROM measurement" + of_job +
                   "DELETE FROM search_suffix WHERE term IN (SELECT id FROM search_term" + of_job.chopped(1) +
                   "); DELETE FROM search_term" + of_job + "DELETE FROM job WHERE vehicle = 'TESTVN117TB118822'");
  CHECK(found(report, "missing_job", "entry", filled.second.id(), std::nullopt));
}

TEST_CASE("a job that is gone from the list of chain heads as well leaves a gap there") {
  Filled filled;
  const QByteArray of_job = " WHERE job = '" + QByteArray::fromStdString(filled.second.id()) + "';";
  const HeadsEnd before = got(filled.bench.store().heads_end());
  const auto report = filled.after("DELETE FROM chain_head" + of_job + "DELETE FROM entry" + of_job);
  CHECK(codes_of(report).count("heads_gap") == 1);
  CHECK_FALSE(got(filled.bench.store().holds_end(before)));
}

TEST_CASE("an entry that was put in beside the program is found") {
  Filled filled;
  const auto report = filled.after(
      "INSERT INTO entry SELECT job, seq + 1, at_ms, offset_min, 0, person, kind, 1, body, "
      "hash, hash FROM entry WHERE seq = 3 AND job = '" +
      QByteArray::fromStdString(filled.second.id()) + "'");
  CHECK(found(report, "entry_without_head", "chain_head", filled.second.id(), 4));
}

TEST_CASE("a line of the list of chain heads that was changed is found") {
  Filled filled;
  const auto report = filled.after("UPDATE chain_head SET hash = 'x' WHERE position = 2");
  CHECK(codes_of(report).count("heads_changed") == 1);
}

TEST_CASE("what is derived and was changed is found, in every table") {
  for (const char* change :
       {"UPDATE measurement SET base = base + 1 WHERE channel = 'reference'", "UPDATE shim_trial SET fit = 'loose'",
        "UPDATE float_run SET lifted_um = 1", "UPDATE shim_chosen SET shim = '9'", "DELETE FROM part_fitted",
        "UPDATE deviation SET reason = ''", "DELETE FROM withdrawal", "UPDATE advice SET conclusion = 'keep'",
        "UPDATE job SET next_step = 'sign-checker'", "UPDATE job SET standing = 'closed'",
        "INSERT INTO shim_trial SELECT job, 1, step, assembly, side, shim, fit FROM shim_trial",
        "DELETE FROM search_suffix WHERE term = 1", "UPDATE search_term SET term = 'X' WHERE id = 2"}) {
    Filled filled;
    INFO(change);
    const auto report = filled.after(change);
    CHECK(codes_of(report) == Codes{"projection_differs"});
  }
}

TEST_CASE("a difference is named with table, job and entry") {
  Filled filled;
  const auto report = filled.after("UPDATE float_run SET lifted_um = 1");
  REQUIRE(report.findings.size() == 1);
  const Finding& finding = report.findings.front();
  CHECK(finding.job == filled.first.id());
  CHECK(finding.place() ==
        "job " + filled.first.id() + ", entry " + std::to_string(*finding.seq) + ", table float_run");
  const auto& entry = filled.first.state().entries[static_cast<std::size_t>(*finding.seq) - 1];
  CHECK(job::kind_of(entry.body) == "float_run");
}

TEST_CASE("a sheet or a schema that was changed is found") {
  Filled sheets;
  CHECK(codes_of(sheets.after("UPDATE job_sheet SET json = CAST(replace(CAST(json AS TEXT), 'battery', 'Battery') AS "
                              "BLOB)"))
            .count("sheet_changed") == 1);
  Filled schema;
  CHECK(codes_of(schema.after("DROP TRIGGER spec_sheet_is_not_deleted")) == Codes{"schema_differs"});
  Filled added;
  CHECK(codes_of(added.after("CREATE TABLE extra (a INTEGER)")) == Codes{"schema_differs"});
}

TEST_CASE("a personal text that was changed or taken away is found, an erased one is in order") {
  Filled changed;
  CHECK(codes_of(changed.after("UPDATE private_text SET text = 'HL-XX 1' WHERE text = 'HL-MK 412'"))
            .count("text_changed") == 1);
  Filled gone;
  CHECK(codes_of(gone.after("DELETE FROM private_text")).count("text_missing") == 1);
  Filled erased;
  went(erased.bench.store().erase_private_text(erased.first.state().opened->plate->id, by_mk()));
  const auto report = got(check(erased.bench.store()));
  CHECK(codes_of(report) == Codes{});
  CHECK(report.erased_texts == 1);
}

TEST_CASE("a damaged page is found by SQLite's own check or refused") {
  Filled filled;
  filled.bench.close();
  QFile file(filled.bench.file("workshop/bench.sqlite"));
  REQUIRE(file.open(QIODevice::ReadWrite));
  const QByteArray content = file.readAll();
  const auto place = content.indexOf("\"step\":\"battery-off\"");
  REQUIRE(place > 0);
  REQUIRE(file.seek(place + 8));
  REQUIRE(file.write("B") == 1);
  file.close();
  filled.bench.open();
  CHECK_FALSE(got(check(filled.bench.store())).in_order());
}

}  // namespace shimwright::store
