#include <string>
#include <string_view>

#include <QFile>

#include <nlohmann/json.hpp>

#include "fuzz_target.h"
#include "fuzz_workshop.h"
#include "script.h"
#include "shimwright/record/hash.h"
#include "shimwright/store/check.h"
#include "shimwright/store/exchange.h"
#include "shimwright/store/job_record.h"
#include "shimwright/store/registers.h"

using namespace shimwright;
using fuzz::require;

namespace {

using Json = nlohmann::json;

const fuzz::FuzzWorkshop& workshop() {
  static const fuzz::FuzzWorkshop made;
  return made;
}

std::string_view first_line(std::string_view& rest) {
  const auto end = std::min(rest.find('\n'), rest.size());
  const auto line = rest.substr(0, end);
  rest.remove_prefix(std::min(end + 1, rest.size()));
  return line;
}

/// `/persons/0/name "x"` puts that in its place, `/persons/0` alone takes it away. Where a text holds JSON, as bodies
/// and seals do, the pointer goes on into it.
void edit(Json& at, std::string_view pointer, const Json* value) {
  const auto end = std::min(pointer.find('/', 1), pointer.size());
  const std::string key(pointer.substr(std::min<std::size_t>(1, pointer.size()), end - std::min<std::size_t>(1, end)));
  if (at.is_string()) {
    Json within = Json::parse(at.get<std::string>(), nullptr, false);
    if (within.is_structured()) {
      edit(within, pointer, value);
      at = within.dump(-1, ' ', false, Json::error_handler_t::replace);
    }
    return;
  }
  const std::size_t index = at.is_array() && !at.empty() ? std::hash<std::string>()(key) % at.size() : 0;
  const std::size_t wanted =
      at.is_array() && !key.empty() && key.size() < 4 && key.find_first_not_of("0123456789") == std::string::npos
          ? std::stoul(key) % std::max<std::size_t>(at.size(), 1)
          : index;
  if (!at.is_structured() || (at.is_array() && at.empty())) {
    return;
  }
  const bool last = end == pointer.size();
  if (at.is_object() && last && value == nullptr) {
    at.erase(key);
  } else if (at.is_array() && last && value == nullptr) {
    at.erase(wanted);
  } else if (last) {
    (at.is_object() ? at[key] : at[wanted]) = *value;
  } else if (at.is_array() || at.contains(key)) {
    edit(at.is_object() ? at[key] : at[wanted], pointer.substr(end), value);
  }
}

/// Anybody can make a chain hold.
void chain_anew(Json& job) {
  if (!job.is_object() || !job["job"].is_string() || !job["entries"].is_array()) {
    return;
  }
  std::string previous;
  std::int64_t seq = 0;
  for (Json& each : job["entries"]) {
    if (!each.is_object() || !each["body"].is_string() || !each["kind"].is_string() || !each["person"].is_string() ||
        !each["kind_version"].is_number_integer() || !each["at_ms"].is_number_integer()) {
      return;
    }
    each["seq"] = ++seq;
    each["previous_hash"] = previous;
    const record::StoredEntry entry{
        seq,
        {each["at_ms"].get<std::int64_t>(), each.value("offset_min", 0), each.value("clock_went_back", false)},
        each["person"],
        each["kind"],
        each["kind_version"],
        each["body"],
        previous,
        ""};
    previous = record::entry_hash(job["job"].get<std::string>(), entry);
    each["hash"] = previous;
  }
}

QByteArray with_end(const QByteArray& lines) {
  const std::string sum = record::sha256_hex({lines.constData(), static_cast<std::size_t>(lines.size())});
  return lines + "{\"sha256\":\"" + QByteArray::fromStdString(sum) + "\"}\n";
}

/// A good job's file, changed line for line as the text says, and made to hold together again.
QByteArray changed_file(std::string_view edits) {
  static const Json good = Json::parse(workshop().job_line().toStdString());
  Json job = good;
  while (!edits.empty()) {
    const std::string_view line = first_line(edits);
    const auto space = line.find(' ');
    if (space == std::string_view::npos) {
      edit(job, line, nullptr);
      continue;
    }
    const Json value = Json::parse(line.substr(space + 1), nullptr, false);
    if (!value.is_discarded()) {
      edit(job, line.substr(0, space), &value);
    }
  }
  try {
    chain_anew(job);
  } catch (const Json::exception&) {
    // A number that is none of ours: the chain stays as it was.
  }
  const std::string text = job.dump(-1, ' ', false, Json::error_handler_t::replace);
  return with_end(QByteArray::fromStdString(text) + '\n' + workshop().photo_lines());
}

QByteArray empty_store() {
  const QString path = workshop().place(QStringLiteral("empty.shimwright"));
  require(store::Store::open(path.toStdString(), {store::Mode::read_write, "fuzz", fuzz::now_ms}).has_value(),
          "an empty store is made");
  QFile file(path);
  require(file.open(QIODevice::ReadOnly), "it can be read");
  return file.readAll();
}

/// What was taken in is a job like any other: it is shown, and the store stays in order.
void look_at(const std::string& path, const std::string& job) {
  const auto store = store::Store::open(path, {store::Mode::look_only, "fuzz", fuzz::now_ms});
  require(store.has_value(), "the store opens after an import");
  static_cast<void>(store::record_of(**store, job));
  const auto report = store::check(**store);
  require(report && report->in_order(), "the store is in order after an import");
}

void try_file(const QByteArray& content) {
  static const QByteArray empty = empty_store();
  static const QString place = workshop().place(QStringLiteral("into.shimwright"));
  static bool fresh = false;
  if (!fresh) {
    workshop().lay(place, empty);
    fresh = true;
  }
  const QString file = workshop().place(QStringLiteral("job.jsonl"));
  workshop().lay(file, content);
  const store::By by{"", {fuzz::now_ms, 60, false}};
  const auto taken = store::import_job(place.toStdString(), file.toStdString(), by);
  if (taken) {
    fresh = false;
    look_at(place.toStdString(), taken->job);
    return;
  }
  const std::string sentence = taken.error().in_english();
  require(!taken.error().code.empty() && taken.error().code != "store_fault", "a refusal has a code of its own");
  require(sentence.find('\n') == std::string::npos && sentence.size() < 2000, "a refusal is one line");
}

void try_script(std::string_view text) {
  const auto script = cli::read_script(text);
  if (!script) {
    require(!script.error().code.empty(), "a refusal has a code");
    require(script.error().in_english().find('\n') == std::string::npos, "a refusal is one line");
  }
}

}  // namespace

/// `e`: edits of a good file; `s`: a script; `f`: the file's lines but the last; else the whole file.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) {
    return 0;
  }
  const auto text = fuzz::text_of(data + 1, size - 1);
  const QByteArray bytes(text.data(), static_cast<qsizetype>(text.size()));
  switch (static_cast<char>(data[0])) {
    case 'e':
      try_file(changed_file(text));
      break;
    case 's':
      try_script(text);
      break;
    case 'f':
      try_file(with_end(bytes));
      break;
    default:
      try_file(bytes);
  }
  return 0;
}
