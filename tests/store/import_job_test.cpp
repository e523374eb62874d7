#include "exchange.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/store/job_record.h"

namespace shimwright::store {

using namespace test;

namespace {

std::map<std::string, std::string> initials_in(Workbench& bench) {
  std::map<std::string, std::string> names;
  for (const Person& each : got(bench.store().registers().persons())) {
    names[each.id] = each.initials;
  }
  return names;
}

std::map<std::string, std::string> fold_hashes(Workbench& bench) {
  std::map<std::string, std::string> hashes;
  for (const JobSummary& each : got(bench.store().jobs())) {
    hashes[each.id] = record::fold_hash(got(bench.store().load(each.id)).entries, initials_in(bench));
  }
  return hashes;
}

void send_all(Workbench& from, Workbench& to) {
  for (const JobSummary& each : got(from.store().jobs())) {
    static_cast<void>(imported(to, exported(from, each.id)));
  }
}

std::vector<std::string> told(const ImportReport& report) {
  std::vector<std::string> sentences;
  for (const Message& each : report.told) {
    sentences.push_back(each.in_english());
  }
  return sentences;
}

}  // namespace

TEST_CASE("two stores merged both ways hold every job of both with equal fold hashes, and are in order") {
  Workbench one;
  Workbench other;
  const std::string sealed = sealed_job_with_photos(one, "10");
  TestJob open_one(one, "20", "2026-0201");
  open_one.open();
  assemble(open_one, 1, 1250, 700);
  TestJob open_other(other, "30", "2026-0201", "TESTVN0020A000123");
  open_other.open("HL-RT 7", "Brook");
  const std::string sealed_other = sealed_job_with_photos(other, "40");
  // One that was begun here and went on there.
  TestJob wandering(one, "50", "2026-0203", "TESTVN0020A000999");
  wandering.open();
  static_cast<void>(imported(other, exported(one, wandering.id())));
  const auto sheets = sheets_from(shipped("sheets/dry-pack-renewal.json"), shipped("specs/D7-2.json"));
  job::JobState state = job::fold(sheets, got(other.store().load(wandering.id())).entries);
  const job::Entry more{state.next_seq(), by_mk(5).moment, mk, job::Noted{std::nullopt, "Went on elsewhere"}};
  went(other.store().append(wandering.id(), {more}, {}, job::evolve(state, more)));

  send_all(one, other);
  send_all(other, one);
  CHECK(fold_hashes(one).size() == 5);
  CHECK(fold_hashes(one) == fold_hashes(other));
  for (const std::string& job : {sealed, sealed_other, open_one.id(), open_other.id(), wandering.id()}) {
    CHECK(got(one.store().load(job)).stored == got(other.store().load(job)).stored);
    CHECK(got(one.store().load(job)).private_texts == got(other.store().load(job)).private_texts);
  }
  for (Workbench* each : {&one, &other}) {
    const CheckReport report = got(check(each->store()));
    CHECK(report.in_order());
    CHECK(report.sealed_elsewhere == 1);
    each->close();
    each->open();
  }
  const std::string before = content_of_store(one);
  send_all(other, one);
  CHECK(content_of_store(one) == before);
}

TEST_CASE("the same file twice changes nothing, and a longer one adds what is new") {
  Workbench from;
  Workbench to;
  TestJob job(from, "10", "2026-0147");
  job.open();
  const ImportReport first = imported(to, exported(from, job.id()));
  CHECK(first.entries_new == 1);
  CHECK(first.entries_there == 0);
  CHECK(first.number == "2026-0147");
  CHECK(told(first).empty());
  const std::string before = content_of_store(to);
  CHECK(imported(to, exported(from, job.id())).entries_new == 0);
  CHECK(content_of_store(to) == before);
  job.add(job::Done{{"battery-off", 1}});
  const ImportReport second = imported(to, exported(from, job.id()));
  CHECK(second.entries_there == 1);
  CHECK(second.entries_new == 1);
  CHECK(got(to.store().load(job.id())).stored == got(from.store().load(job.id())).stored);
  CHECK(got(to.store().search("HLMK412")).size() == 1);
  CHECK(got(check(to.store())).in_order());
}

TEST_CASE("a job that went on in both places is refused and stays") {
  Workbench from;
  Workbench to;
  TestJob job(from, "10", "2026-0147");
  job.open();
  static_cast<void>(imported(to, exported(from, job.id())));
  job.add(job::Done{{"battery-off", 1}});
  job::JobState state = job::fold(job.state().sheets, got(to.store().load(job.id())).entries);
  const job::Entry here{2, by_mk(5).moment, mk, job::Noted{std::nullopt, "Here"}};
  went(to.store().append(job.id(), {here}, {}, job::evolve(state, here)));
  const std::string before = content_of_store(to);
  const auto refused = import_job(to.path(), exported(from, job.id()), by_mk());
  CHECK(code_of(refused) == "job_forked");
  CHECK(refused.error().in_english().find("From entry 2 on") != std::string::npos);
  CHECK(content_of_store(to) == before);
}

TEST_CASE("equal job numbers and other names of a person are told, and ours stay") {
  Workbench from;
  Workbench to;
  TestJob theirs(from, "10", "2026-0147");
  theirs.open();
  TestJob ours(to, "20", "2026-0147", "TESTVN0020A000123");
  ours.open();
  went(to.store().registers().put(Person{mk, "Mara Kern-Holt", "MKH", std::nullopt, true}, by_mk()));
  const auto sentences = told(imported(to, exported(from, theirs.id())));
  REQUIRE(sentences.size() == 2);
  CHECK(sentences[0] == "“Mara Kern” of the file is “Mara Kern-Holt” here; the name here stays.");
  CHECK(sentences[1].find("has the number 2026-0147 as well") != std::string::npos);
  CHECK(initials_in(to).at(mk) == "MKH");
}

TEST_CASE("who worked on the job elsewhere is known by name and offered at no bench") {
  Workbench from;
  Workbench to;
  const std::string stranger = "01930000-0000-7000-8000-000000000077";
  went(from.store().registers().put(Person{stranger, "Ines Vale", "IV", std::nullopt, true}, by_mk()));
  TestJob job(from, "10", "2026-0147");
  job.open();
  job.add(job::HandedOver{stranger, "late shift"});
  static_cast<void>(imported(to, exported(from, job.id())));
  const auto persons = got(to.store().registers().persons());
  const auto found =
      std::find_if(persons.begin(), persons.end(), [&](const Person& each) { return each.id == stranger; });
  REQUIRE(found != persons.end());
  CHECK(found->name == "Ines Vale");
  CHECK_FALSE(found->active);
  CHECK(got(check(to.store())).in_order());
}

TEST_CASE("a text erased here is not brought back, and one erased there stays here") {
  Workbench from;
  Workbench to;
  TestJob job(from, "10", "2026-0147");
  job.open();
  const auto opened = std::get<job::Opened>(job.state().entries.front().body);
  static_cast<void>(imported(to, exported(from, job.id())));
  went(to.store().erase_private_text(opened.plate->id, by_mk()));
  went(from.store().erase_private_text(opened.customer_reference->id, by_mk()));
  job.add(job::Done{{"battery-off", 1}});
  static_cast<void>(imported(to, exported(from, job.id())));
  const auto texts = got(to.store().load(job.id())).private_texts;
  CHECK_FALSE(texts.at(opened.plate->id));
  CHECK(texts.at(opened.customer_reference->id) == "Miller/77");
  CHECK(got(to.store().search("HLMK412")).empty());
  CHECK(got(check(to.store())).in_order());
}

TEST_CASE("a sealed job keeps its seal, which stands for the store it came from") {
  Workbench from;
  Workbench to;
  const std::string job = sealed_job_with_photos(from, "10");
  const ImportReport report = imported(to, exported(from, job));
  CHECK(report.sealed);
  CHECK(report.photos_new >= 1);
  const auto record = got(record_of(to.store(), job));
  REQUIRE(record.seal);
  CHECK(record.seal->check.standing == record::SealStanding::key_unknown);
  // The keys stay with their workshop: a file could bring any.
  CHECK(code_of(verify_job(to.store(), job)) == "unknown_key");
  CHECK(got(signing_keys(to.store())).empty());
  CHECK(got(check(to.store())).in_order());
  // Without the note that it came from elsewhere it would be a store that was changed.
  to.sabotage("DROP TRIGGER register_change_is_not_deleted; DELETE FROM register_change WHERE register = 'job'");
  const auto findings = got(check(to.store())).findings;
  CHECK(std::any_of(findings.begin(), findings.end(), [](const auto& each) { return each.code == "store_changed"; }));
}

TEST_CASE("a sealed job that comes back to its own keys says where it was sealed") {
  Workbench from;
  const std::string job = sealed_job_with_photos(from, "10");
  const std::string file = exported(from, job);
  Workbench to;
  for (const PersonsKey& each : got(signing_keys(from.store()))) {
    went(to.store().connection().execute(
        "INSERT INTO signing_key (public_key, person, made_at_ms, passes, memory_bytes) VALUES (?, ?, 0, 1, 8192)",
        {each.public_key, each.person}));
  }
  static_cast<void>(imported(to, file));
  CHECK(code_of(verify_job(to.store(), job)) == "sealed_elsewhere");
  CHECK(code_of(verify_job(from.store(), job)) == "no refusal");
}

TEST_CASE("sheets that came with a job are kept for it and offered for no other") {
  Workbench from;
  Workbench to;
  const std::string name = got(from.store().registers().spec_sheets()).front().name;
  auto changed = nlohmann::json::parse(shipped("specs/D7-2.json"));
  const std::string offered = got(to.store().registers().spec_sheets()).front().hash;
  changed["issue"] = changed["issue"].get<int>() + 40;
  const std::string newer = changed.dump();
  const std::string hash = got(from.store().registers().add_spec_sheet(newer, by_mk()));
  const auto sheets = sheets_from(shipped("sheets/dry-pack-renewal.json"), newer);
  job::test::Bench bench(sheets);
  bench.context.person = mk;
  bench.take(job::test::open_command());
  const std::string job = "01930000-0000-7000-8000-000000001000";
  went(from.store().append(job, bench.state.entries, {}, bench.state));
  // Here the same issue has other values.
  changed["source"] = "Our own";
  CHECK(got(to.store().registers().add_spec_sheet(changed.dump(), by_mk())) != hash);
  static_cast<void>(imported(to, exported(from, job)));
  CHECK(got(to.store().load(job)).sheets.spec_hash == hash);
  const auto listed = got(to.store().registers().spec_sheets());
  CHECK(std::none_of(listed.begin(), listed.end(), [&](const SheetIssue& each) { return each.hash == hash; }));
  CHECK(got(to.store().registers().spec_sheet(hash)).name == name);
  CHECK(got(check(to.store())).in_order());
  CHECK_FALSE(offered.empty());
}

TEST_CASE("a sheet that came with a job is offered once somebody enters it here") {
  Workbench from;
  Workbench to;
  auto changed = nlohmann::json::parse(shipped("specs/D7-2.json"));
  changed["issue"] = changed["issue"].get<int>() + 40;
  const std::string newer = changed.dump();
  const std::string hash = got(from.store().registers().add_spec_sheet(newer, by_mk()));
  job::test::Bench bench(sheets_from(shipped("sheets/dry-pack-renewal.json"), newer));
  bench.context.person = mk;
  bench.take(job::test::open_command());
  const std::string job = "01930000-0000-7000-8000-000000001000";
  went(from.store().append(job, bench.state.entries, {}, bench.state));
  static_cast<void>(imported(to, exported(from, job)));
  CHECK(got(to.store().registers().add_spec_sheet(newer, by_mk())) == hash);
  CHECK(got(to.store().registers().add_spec_sheet(newer, by_mk())) == hash);
  const auto listed = got(to.store().registers().spec_sheets());
  CHECK(std::any_of(listed.begin(), listed.end(), [&](const SheetIssue& each) {
    return each.hash == hash && each.issue == changed["issue"].get<int>() && each.name.find('\n') == std::string::npos;
  }));
  CHECK(got(check(to.store())).in_order());
}

TEST_CASE("a photo that is missing here is brought by the same file again") {
  Workbench from;
  Workbench to;
  const std::string file = exported(from, closed_job_with_photos(from, "10"));
  static_cast<void>(imported(to, file));
  QDir(QString::fromStdString(to.path()).section('/', 0, -2) + "/photos").removeRecursively();
  CHECK_FALSE(got(check(to.store())).in_order());
  CHECK(imported(to, file).photos_new >= 1);
  CHECK(got(check(to.store())).in_order());
}

}  // namespace shimwright::store
