#include "shimwright/store/scanned_code.h"

#include <QFile>

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

}  // namespace shimwright::store
