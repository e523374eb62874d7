#include "shimwright/store/scanned_code.h"

#include <QFile>

#include "connection.h"
#include "sealed_job.h"

namespace shimwright::store {

using namespace test;

namespace {

struct SealedBench {
  Workbench bench;
  std::string job;
  std::string code;

  SealedBench() {
    give_pins(bench);
    job = closed_job(bench, "10");
    got(seal_job(bench.store(), job, both_pins(), by_mk(600), cheap_rules()));
    code = got(signed_record_of(bench.store(), job)).code;
  }
};

std::string key_that_sealed(const Store& store, const std::string& job) {
  return got(signed_record_of(store, job)).statement.signers.front().public_key;
}

}  // namespace

TEST_CASE("a scanned code opens the job that was sealed with it and shows what was signed") {
  SealedBench sealed;
  const ScannedCode scanned = got(read_scanned_code(sealed.bench.store(), sealed.code));
  CHECK(scanned.key == KeyStanding::ours);
  CHECK(scanned.signer == "Mara Kern");
  CHECK(scanned.job == sealed.job);
  const auto record = got(signed_record_of(sealed.bench.store(), sealed.job));
  CHECK(scanned.values.digest == record::digest_of(record.statement));
  CHECK(scanned.values.number == record.statement.number);
  CHECK_FALSE(scanned.values.lower.shim.empty());
}

TEST_CASE("what a scanner sends around a code does not count, and what the code itself ends in does") {
  SealedBench sealed;
  CHECK(got(read_scanned_code(sealed.bench.store(), "  " + sealed.code + "\r\n")).job == sealed.job);
  CHECK(looks_like_code("\t" + sealed.code));
  CHECK_FALSE(looks_like_code("WSW1:"));
  CHECK_FALSE(looks_like_code(""));
  CHECK(code_of(read_scanned_code(sealed.bench.store(), sealed.code + " ")) == "changed");
}

TEST_CASE("a code of which any symbol was changed is refused") {
  SealedBench sealed;
  for (std::size_t at = 4; at < sealed.code.size(); ++at) {
    std::string changed = sealed.code;
    changed[at] = changed[at] == '7' ? '8' : '7';
    CHECK(code_of(read_scanned_code(sealed.bench.store(), changed)) == "changed");
  }
  CHECK(code_of(read_scanned_code(sealed.bench.store(), "2041")) == "not_seal_code");
}

TEST_CASE("a genuine code of another workshop is told as such and opens nothing") {
  SealedBench sealed;
  Workbench other;
  const ScannedCode scanned = got(read_scanned_code(other.store(), sealed.code));
  CHECK(scanned.key == KeyStanding::unknown);
  CHECK(scanned.signer.empty());
  CHECK_FALSE(scanned.job);
}

TEST_CASE("a key that was marked as ended holds for what was sealed before that day") {
  SealedBench sealed;
  Store& store = sealed.bench.store();
  const std::string key = key_that_sealed(store, sealed.job);
  went(end_key(store, key, "2099-01-01", by_mk(900)));
  CHECK(got(read_scanned_code(store, sealed.code)).key == KeyStanding::ours);
}

TEST_CASE("a key that had ended when the job was sealed is told as ended") {
  SealedBench sealed;
  Store& store = sealed.bench.store();
  went(end_key(store, key_that_sealed(store, sealed.job), "2020-01-01", by_mk(900)));
  CHECK(got(read_scanned_code(store, sealed.code)).key == KeyStanding::ended);
}

TEST_CASE("a signed file is checked as a whole before its values are shown") {
  SealedBench sealed;
  Store& store = sealed.bench.store();
  const std::string path = got(write_job_file(store, sealed.job, sealed.bench.file("").toStdString()));
  CHECK(got(check_signed_file(store, path)).job == sealed.job);
  CHECK(got(check_signed_file(store, path)).key == KeyStanding::ours);
  Workbench other;
  CHECK(got(check_signed_file(other.store(), path)).key == KeyStanding::unknown);

  QFile file(QString::fromStdString(path));
  REQUIRE(file.open(QIODevice::ReadOnly));
  const QByteArray whole = file.readAll();
  file.close();
  for (qsizetype at = 0; at < whole.size(); at += 9973) {
    QByteArray changed = whole;
    changed[at] = static_cast<char>(changed[at] ^ 1);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(changed);
    file.close();
    CHECK_FALSE(check_signed_file(store, path));
  }
  CHECK(code_of(check_signed_file(store, path + ".gone")) == "cannot_read");
}

TEST_CASE("a file without an addendum that the job here has is older than what is here") {
  SealedBench sealed;
  Store& store = sealed.bench.store();
  const std::string before = got(write_job_file(store, sealed.job, sealed.bench.file("").toStdString()));
  const std::string kept = before + ".kept";
  REQUIRE(QFile::copy(QString::fromStdString(before), QString::fromStdString(kept)));
  const auto added = got(add_addendum(store, sealed.job, "found later", "0.1 l of oil", pin("081542"), by_rt(700),
                                      cheap_rules(), sealed.bench.file("").toStdString()));
  CHECK(code_of(check_signed_file(store, kept)) == "older_than_here");
  CHECK(got(check_signed_file(store, added.path)).key == KeyStanding::ours);
  auto longer = got(signed_record_of(store, sealed.job));
  longer.entries.push_back(longer.entries.back());
  CHECK(code_of(same_as_here(store, longer)) == "differs_here");
  auto other = got(signed_record_of(store, sealed.job));
  other.entries.front().person = rt;
  CHECK(code_of(same_as_here(store, other)) == "differs_here");
  Workbench elsewhere;
  went(same_as_here(elsewhere.store(), other));
}

TEST_CASE("a file sealed before its key ended is ours, whether or not its job is here") {
  SealedBench sealed;
  Store& store = sealed.bench.store();
  const std::string path = got(write_job_file(store, sealed.job, sealed.bench.file("").toStdString()));
  // Of its number there is no job any more: nothing but the file tells the day.
  sealed.bench.sabotage("UPDATE job SET number = 'other'");
  Store& again = sealed.bench.store();
  went(end_key(again, key_that_sealed(again, sealed.job), "2099-01-01", by_mk(900)));
  CHECK(got(check_signed_file(again, path)).key == KeyStanding::ours);
  CHECK_FALSE(got(check_signed_file(again, path)).fault);
}

TEST_CASE("which of those who signed a file has a key that had ended is told") {
  SealedBench sealed;
  Store& store = sealed.bench.store();
  const std::string path = got(write_job_file(store, sealed.job, sealed.bench.file("").toStdString()));
  const auto signers = got(signed_record_of(store, sealed.job)).statement.signers;
  REQUIRE(signers.size() == 2);
  went(end_key(store, signers.back().public_key, "2020-01-01", by_mk(900)));
  const ScannedCode scanned = got(check_signed_file(store, path));
  CHECK(scanned.key != KeyStanding::ours);
  REQUIRE(scanned.fault);
  CHECK(scanned.fault->place == signers.back().name);
  CHECK(scanned.fault->message.in_english().find("2020-01-01") != std::string::npos);
}

TEST_CASE("a damaged seal of another job of that number does not hide the one that was scanned") {
  SealedBench sealed;
  const std::string other = closed_job(sealed.bench, "0f");
  got(seal_job(sealed.bench.store(), other, both_pins(), by_mk(601), cheap_rules()));
  const QByteArray trigger = QByteArray::fromStdString(text_in(
      got(sealed.bench.store().connection().rows("SELECT sql FROM sqlite_schema WHERE name = 'seal_is_not_changed'"))
          .front(),
      0));
  sealed.bench.sabotage(
      "DROP TRIGGER seal_is_not_changed; UPDATE seal SET statement = CAST('{}' AS BLOB) WHERE job = '" +
      QByteArray::fromStdString(other) + "';" + trigger);
  CHECK(got(read_scanned_code(sealed.bench.store(), sealed.code)).job == sealed.job);
}

}  // namespace shimwright::store
