// No secret key lies anywhere in clear: it is opened here with its PIN, by libsodium alone, and looked for.
#include <sodium.h>

#include "exchange.h"
#include "shimwright/record/record_json.h"
#include "shimwright/store/backup.h"
#include "shimwright/store/job_record.h"
#include "shimwright/store/restore.h"

namespace shimwright::store {

using namespace test;

namespace {

std::string bytes_of_hex(const std::string& hex) {
  return QByteArray::fromHex(QByteArray::fromStdString(hex)).toStdString();
}

const unsigned char* raw(const std::string& bytes) {
  return reinterpret_cast<const unsigned char*>(bytes.data());
}

/// As docs/formats/signed-record.md says a key lies in the store.
std::string seed_of(Connection& connection, const std::string& person, const std::string& pin) {
  const auto row =
      got(connection.rows("SELECT salt, nonce, box, passes, memory_bytes FROM signing_key WHERE person = ?", {person}))
          .front();
  const std::string salt = bytes_of_hex(text_in(row, 0));
  const std::string nonce = bytes_of_hex(text_in(row, 1));
  const std::string box = bytes_of_hex(text_in(row, 2));
  std::string key(crypto_secretbox_KEYBYTES, '\0');
  std::string seed(box.size() - crypto_secretbox_MACBYTES, '\0');
  REQUIRE(crypto_pwhash(reinterpret_cast<unsigned char*>(key.data()), key.size(), pin.data(), pin.size(), raw(salt),
                        static_cast<unsigned long long>(number_in(row, 3)), static_cast<std::size_t>(number_in(row, 4)),
                        crypto_pwhash_ALG_ARGON2ID13) == 0);
  REQUIRE(crypto_secretbox_open_easy(reinterpret_cast<unsigned char*>(seed.data()), raw(box), box.size(), raw(nonce),
                                     raw(key)) == 0);
  return seed;
}

/// As it may lie somewhere: its bytes, in hexadecimal, in base64 from each of the three places it may begin at.
std::vector<QByteArray> spellings(const std::string& secret) {
  const QByteArray bytes = QByteArray::fromStdString(secret);
  std::vector<QByteArray> found = {bytes, bytes.toHex(), bytes.toHex().toUpper()};
  for (int before = 0; before < 3; ++before) {
    for (const auto alphabet : {QByteArray::Base64Encoding, QByteArray::Base64UrlEncoding}) {
      const QByteArray coded = (QByteArray(before, '\0') + bytes).toBase64(alphabet | QByteArray::OmitTrailingEquals);
      found.push_back(coded.mid(before == 0 ? 0 : 4).chopped(2));
    }
  }
  return found;
}

/// Gives the names of all it looked into.
QStringList look_for(const QString& folder, const std::vector<QByteArray>& secrets) {
  QStringList looked;
  QDirIterator files(folder, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
  while (files.hasNext()) {
    const QString path = files.next();
    const QByteArray content = content_of(path.toStdString());
    for (const QByteArray& each : secrets) {
      INFO(path.toStdString());
      CHECK_FALSE(content.contains(each));
    }
    looked.append(QFileInfo(path).fileName());
  }
  return looked;
}

}  // namespace

TEST_CASE("no secret key lies in the store, its log, a backup, an export, a signed file or a record") {
  REQUIRE(sodium_init() >= 0);
  Workbench bench;
  const std::string job = sealed_job_with_photos(bench, "10");
  const std::string folder = bench.file("files").toStdString();
  static_cast<void>(got(write_job_file(bench.store(), job, folder)));
  static_cast<void>(exported(bench, job));
  static_cast<void>(got(back_up(bench.path(), folder + "/monday.sqlite")));
  put_file(bench.file("record.json"),
           QByteArray::fromStdString(record::record_json(got(record_of(bench.store(), job)))));
  std::vector<QByteArray> secrets;
  for (const auto& [person, pin] : {std::pair{mk, "4711"}, std::pair{rt, "081542"}}) {
    const auto found = spellings(seed_of(bench.store().connection(), person, pin));
    secrets.insert(secrets.end(), found.begin(), found.end());
  }
  REQUIRE(secrets.front().size() == 32);
  const QStringList looked = look_for(bench.file(""), secrets);
  for (const char* name : {"bench.sqlite", "bench.sqlite-wal", "monday.sqlite", "record.json"}) {
    CHECK(looked.contains(name));
  }
  bench.close();
  static_cast<void>(got(restore(bench.path(), folder + "/monday.sqlite", {Mode::read_write, "test", monday_ms})));
  CHECK(look_for(bench.file(""), secrets).size() > looked.size() - 3);
}

TEST_CASE("a key that was put under another PIN leaves nothing of itself, nor of the old box") {
  REQUIRE(sodium_init() >= 0);
  Workbench bench;
  give_pins(bench);
  Connection& connection = bench.store().connection();
  const std::string seed = seed_of(connection, mk, "4711");
  const std::string old_box =
      text_in(got(connection.rows("SELECT box FROM signing_key WHERE person = ?", {mk})).front(), 0);
  went(change_pin(bench.store(), mk, pin("4711"), pin("90210"), by_mk(5), cheap_rules()));
  CHECK(seed_of(connection, mk, "90210") == seed);
  bench.close();
  std::vector<QByteArray> secrets = spellings(seed);
  secrets.push_back(QByteArray::fromStdString(old_box));
  look_for(bench.file(""), secrets);
}

}  // namespace shimwright::store
