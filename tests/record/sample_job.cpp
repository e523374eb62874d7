#include "sample_job.h"

#include "shimwright/record/hash.h"

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <memory>

#include "shimwright/job/evolve.h"

namespace shimwright::record_test {

namespace {

using job::ReadingVerdict;

std::string file_text(const std::string& path) {
  std::ifstream file(std::string(SHIMWRIGHT_DATA_DIR) + "/" + path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

template <class Value>
Value found(const Result<Value>& result) {
  if (!result) {
    std::abort();
  }
  return *result;
}

constexpr std::int64_t first_moment_ms = 1795421400000;  // 23 Nov 2026 08:10 UTC

}  // namespace

TypedNumber typed(std::string_view text, Unit unit) {
  return found(quantity::read_number(text, unit));
}

job::InstrumentUsed instrument(const std::string& name) {
  return {"instrument-" + name, name, 10, 10, "2027-03-31", false};
}

job::Reading reading(const std::string& channel, std::string_view text, Unit unit) {
  job::Reading made;
  made.channel = channel;
  made.number = typed(text, unit);
  return made;
}

job::Reading judged(job::Reading made, ReadingVerdict verdict, std::optional<std::string_view> least,
                    std::optional<std::string_view> most) {
  job::LimitUsed limit;
  limit.unit = made.number.unit;
  limit.source = "invented for the demo";
  for (const auto& [text, base] : {std::pair(least, &limit.least), std::pair(most, &limit.most)}) {
    if (text) {
      const TypedNumber number = typed(*text, made.number.unit);
      *base = number.base;
      limit.decimals = number.decimals;
    }
  }
  made.verdict = verdict;
  made.limit = limit;
  return made;
}

Bench& Bench::by(std::string person) {
  person_ = std::move(person);
  return *this;
}

Bench& Bench::at(int minutes) {
  minutes_ = minutes;
  return *this;
}

std::int64_t Bench::add(job::EntryBody body) {
  job::Entry entry;
  entry.seq = static_cast<std::int64_t>(entries_.size()) + 1;
  entry.moment.at_ms = first_moment_ms + std::int64_t{minutes_} * 60000;
  entry.person = person_;
  entry.body = std::move(body);
  entries_.push_back(std::move(entry));
  ++minutes_;
  return entries_.back().seq;
}

void Bench::check(const std::string& step, bool in_order, const std::string& finding) {
  add(job::Checked{here(step), in_order, finding});
}

void Bench::choose(const std::string& step, const std::string& choice, bool accepted) {
  add(job::Chosen{here(step), choice, accepted});
}

void Bench::read(const std::string& step, std::vector<job::Reading> readings) {
  add(job::Read{here(step), std::move(readings), {}});
}

void Bench::peak(const std::string& step, int attempt, job::Reading made, std::optional<int> most) {
  add(job::PeakRead{here(step), attempt, std::move(made), most});
}

void Bench::part(const std::string& step, const std::string& part, const std::string& number, std::int64_t quantity,
                 const std::string& batch) {
  add(job::PartsFitted{here(step), {{part, number, quantity, batch}}});
}

void Bench::trial(const std::string& step, Side side, const std::string& shim, job::Fit fit) {
  add(job::ShimTried{here(step), side, shim, fit});
}

void Bench::choose_shim(const std::string& step, Side side, const std::string& shim, int thickness_um) {
  job::Advised advised;
  advised.at = here(step);
  advised.side = side;
  advised.engine = "1";
  advised.conclusion = job::Conclusion::fit_shim;
  advised.shim = shim;
  advised.reason = {"Fit shim {0}: the trials put the seat there.", {shim}};
  add(advised);
  add(job::ShimChosen{
      here(step), side, shim, quantity::micrometres(thickness_um), 0.003, job::ChosenBy::trials, 93, "", {}});
}

void Bench::runs(const std::string& step, Side side, const std::vector<std::string>& lifted, int series,
                 bool as_found) {
  for (std::size_t at = 0; at < lifted.size(); ++at) {
    job::FloatRun run;
    run.at = here(step);
    run.side = side;
    run.as_found = as_found;
    run.spot = static_cast<int>(at) + 1;
    run.series = series;
    run.rest = typed("0.00");
    run.lifted = typed(lifted[at]);
    run.zero_after = typed("0.00");
    run.instrument = instrument("dial 2");
    add(run);
  }
}

void Bench::advise_float(const std::string& step, Side side, job::Conclusion conclusion,
                         const std::vector<std::int64_t>& floats, ReadingVerdict verdict,
                         std::optional<bool> trials_agree) {
  job::Advised advised;
  advised.at = here(step);
  advised.side = side;
  advised.engine = "1";
  advised.conclusion = conclusion;
  advised.trials_agree = trials_agree;
  advised.spot_floats = floats;
  advised.spot_verdicts.assign(floats.size(), verdict);
  advised.mean = (floats[0] + floats[1] + floats[2]) / 3;
  advised.expanded_u = 20;
  advised.reason = {"All three spots are judged with ± {0} mm.", {"0.02"}};
  add(advised);
}

void Bench::begin_assembly(std::vector<Side> sides, const std::string& reason) {
  ++assembly_;
  add(job::AssemblyBegun{assembly_, std::move(sides), reason});
}

job::Sheets shipped_sheets() {
  job::Sheets sheets;
  sheets.job =
      std::make_shared<const sheet::JobSheet>(found(sheet::read_job_sheet(file_text("sheets/dry-pack-renewal.json"))));
  sheets.spec = std::make_shared<const sheet::SpecSheet>(found(sheet::read_spec_sheet(file_text("specs/D7-2.json"))));
  sheets.job_hash = std::string(64, '1');
  sheets.spec_hash = std::string(64, '2');
  return sheets;
}

record::RecordNames sample_names() {
  record::RecordNames names;
  names.workshop_name = "Hollow Lane Gearboxes";
  names.workshop_address = "4 Hollow Lane · 01000 000 000";
  names.persons = {{"person-mk", {"MK", "M. Kell"}}, {"person-rt", {"RT", "R. Thorne"}}};
  names.texts = {{"text-plate", record::PersonalText{"DEMO 417", "aa"}},
                 {"text-reference", record::PersonalText{"C-0382", "bb"}},
                 {"text-complaint", record::PersonalText{"shudders pulling away, worse when hot", "cc"}}};
  return names;
}

job::Opened opened() {
  job::Opened body;
  body.number = "2041";
  body.vehicle_key = "TESTVN009TA030417";
  body.plate = job::PrivateReference{"text-plate", record::private_digest("aa", "DEMO 417")};
  body.customer_reference = job::PrivateReference{"text-reference", record::private_digest("bb", "C-0382")};
  body.complaint = job::PrivateReference{"text-complaint", record::private_digest("cc", "shudders pulling away, worse when hot")};
  body.odometer = typed("121400", Unit::kilometre);
  body.gearbox = "D7";
  body.gearbox_serial = "7-004417";
  const job::Sheets sheets = shipped_sheets();
  body.sheet_id = sheets.job->id;
  body.spec_id = sheets.spec->id;
  body.language = "en";
  return body;
}

record::Record record_of(const Bench& bench) {
  return record::make_record(job::fold(shipped_sheets(), bench.entries()), sample_names());
}

}  // namespace shimwright::record_test
