#include "workbench.h"

#include <fstream>
#include <iterator>

#include <sqlite3.h>

#include "shimwright/record/hash.h"

namespace shimwright::store::test {

namespace {

job::PrivateText private_text(const std::string& job, char last, const std::string& text) {
  job::PrivateText made;
  made.id = job.substr(0, 35) + last;
  made.salt = std::string(31, '0') + last;
  made.text = text;
  made.digest = record::private_digest(made.salt, text);
  return made;
}

job::Sheets sheets_of(Workbench& bench) {
  job::Sheets sheets;
  auto sheet = got(sheet::read_job_sheet(shipped("sheets/dry-pack-renewal.json")));
  auto spec = got(sheet::read_spec_sheet(shipped("specs/D7-2.json")));
  sheets.job = std::make_shared<const sheet::JobSheet>(std::move(sheet));
  sheets.job_hash = bench.sheet();
  sheets.spec = std::make_shared<const sheet::SpecSheet>(std::move(spec));
  sheets.spec_hash = bench.spec();
  return sheets;
}

}  // namespace

By by_mk(std::int64_t minutes) {
  return {mk, {monday_ms + minutes * 60000, 60, false}};
}

std::string shipped(const std::string& name) {
  std::ifstream file(std::string(SHIMWRIGHT_DATA_DIR "/") + name, std::ios::binary);
  REQUIRE(file);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

Workbench::Workbench() {
  REQUIRE(folder_.isValid());
  open();
  Registers& registers = store_->registers();
  went(registers.put(Person{mk, "Mara Kern", "MK", std::nullopt, true}, by_mk()));
  went(registers.put(Person{rt, "Rui Tavares", "RT", std::nullopt, true}, by_mk()));
  sheet_ = got(registers.add_job_sheet(shipped("sheets/dry-pack-renewal.json"), by_mk()));
  spec_ = got(registers.add_spec_sheet(shipped("specs/D7-2.json"), by_mk()));
}

std::string Workbench::path() const {
  return folder_.filePath(QStringLiteral("workshop/bench.sqlite")).toStdString();
}

void Workbench::open(Mode mode) {
  store_.reset();
  store_ = got(Store::open(path(), {mode, "Mara Kern", monday_ms}));
}

void Workbench::sabotage(const QByteArray& script) {
  close();
  sqlite3* database = nullptr;
  REQUIRE(sqlite3_open(path().c_str(), &database) == SQLITE_OK);
  const int code = sqlite3_exec(database, script.constData(), nullptr, nullptr, nullptr);
  const std::string said = sqlite3_errmsg(database);
  sqlite3_close(database);
  INFO(said);
  REQUIRE(code == SQLITE_OK);
  open();
}

TestJob::TestJob(Workbench& bench, const std::string& last, const std::string& number, const std::string& vehicle)
    : bench_(&bench),
      id_("01930000-0000-7000-8000-00000000" + last + "00"),
      number_(number),
      vehicle_(vehicle),
      state_(job::begin(sheets_of(bench))) {}

void TestJob::open(const std::string& plate, const std::string& reference) {
  job::Opened opened;
  opened.number = number_;
  opened.vehicle_key = vehicle_;
  std::vector<job::PrivateText> texts;
  for (const auto& [member, text, last] :
       {std::tuple(&job::Opened::plate, plate, 'a'), std::tuple(&job::Opened::customer_reference, reference, 'b')}) {
    texts.push_back(private_text(id_, last, text));
    opened.*member = job::PrivateReference{texts.back().id, texts.back().digest};
  }
  opened.odometer = quantity::TypedNumber{148210000, 0, quantity::Unit::kilometre};
  opened.gearbox = "D7";
  opened.gearbox_serial = "D7-20931";
  opened.sheet_id = state_.sheets.job->id;
  opened.sheet_hash = bench_->sheet();
  opened.spec_id = state_.sheets.spec->id;
  opened.spec_hash = bench_->spec();
  opened.language = "en";
  went(try_to_add({opened}, texts));
}

void TestJob::add(const job::EntryBody& body) {
  went(try_to_add({body}));
}

Result<void> TestJob::try_to_add(const std::vector<job::EntryBody>& bodies,
                                 const std::vector<job::PrivateText>& texts) {
  job::JobState after = state_;
  std::vector<job::Entry> entries;
  for (const job::EntryBody& body : bodies) {
    const std::int64_t seq = after.next_seq();
    entries.push_back({seq, by_mk(seq).moment, mk, body});
    after = job::evolve(std::move(after), entries.back());
  }
  auto appended = bench_->store().append(id_, entries, texts, after);
  if (appended) {
    state_ = std::move(after);
  }
  return appended;
}

void assemble(TestJob& job, int assembly, std::int64_t thickness_um, std::int64_t mean_um) {
  if (assembly > 1) {
    job.add(job::AssemblyBegun{assembly, {job::Side::lower}, "Float off"});
  }
  job::ShimChosen chosen;
  chosen.at = {"large-gauge-fit", assembly};
  chosen.shim = std::to_string(thickness_um);
  chosen.thickness = quantity::Length(thickness_um);
  chosen.u_mm = 0.0025;
  job.add(chosen);
  job::Advised advised;
  advised.at = {"lower-float", assembly};
  advised.engine = "1";
  advised.conclusion = job::Conclusion::keep;
  advised.mean = mean_um;
  job.add(advised);
}

}  // namespace shimwright::store::test
