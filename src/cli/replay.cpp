#include "replay.h"

#include <QDir>
#include <QString>
#include <nlohmann/json.hpp>
#include <optional>
#include <utility>

#include "replay_seal.h"
#include "shimwright/record/hash.h"
#include "shimwright/store/job_in_hand.h"
#include "state_line.h"

namespace shimwright::cli {

namespace {

std::string id_of(const std::map<std::string, std::string>& known, const std::string& name) {
  const auto found = known.find(name);
  return found == known.end() ? name : found->second;
}

void give_private_text(std::optional<job::PrivateText>& text, store::IdSource& ids, std::int64_t at_ms) {
  if (text) {
    text = ids.private_text(text->text, at_ms);
  }
}

/// The latest entry of a step that can be taken back.
std::int64_t latest_entry(const job::JobState& state, const std::string& step) {
  std::int64_t latest = 0;
  for (const job::Entry* entry : state.live(step)) {
    if (!std::holds_alternative<job::Advised>(entry->body)) {
      latest = entry->seq;
    }
  }
  return latest;
}

/// Puts ids of this store where the script has names, and keeps a photo before its entry.
class Naming {
 public:
  Naming(store::Store& store, const KnownHere& known, store::IdSource& ids, std::string folder)
      : store_(store), known_(known), ids_(ids), folder_(std::move(folder)) {}

  Result<job::Command> named(const ScriptCommand& scripted, const job::JobState& state, std::int64_t at_ms) {
    job::Command command = scripted.command;
    if (auto* open = std::get_if<job::OpenJob>(&command)) {
      give_private_text(open->plate, ids_, at_ms);
      give_private_text(open->customer_reference, ids_, at_ms);
      give_private_text(open->complaint, ids_, at_ms);
    } else if (auto* readings = std::get_if<job::EnterReadings>(&command)) {
      for (job::TypedReading& each : readings->readings) {
        each.instrument = id_of(known_.instruments, each.instrument);
      }
    } else if (auto* peak = std::get_if<job::EnterPeak>(&command)) {
      peak->reading.instrument = id_of(known_.instruments, peak->reading.instrument);
    } else if (auto* depths = std::get_if<job::EnterDepths>(&command)) {
      depths->instrument = id_of(known_.instruments, depths->instrument);
    } else if (auto* run = std::get_if<job::EnterFloatRun>(&command)) {
      run->instrument = id_of(known_.instruments, run->instrument);
    } else if (auto* handed = std::get_if<job::HandOver>(&command)) {
      handed->to = id_of(known_.people, handed->to);
    } else if (auto* withdraw = std::get_if<job::Withdraw>(&command); withdraw != nullptr && scripted.withdraw_at) {
      withdraw->entry = latest_entry(state, *scripted.withdraw_at);
    } else if (auto* photo = std::get_if<job::AddPhoto>(&command)) {
      return kept_photo(*photo);
    }
    return command;
  }

 private:
  Result<job::Command> kept_photo(job::AddPhoto photo) {
    const QDir folder(QString::fromStdString(folder_));
    auto kept = store_.keep_photo(folder.absoluteFilePath(QString::fromStdString(photo.sha256)).toStdString());
    if (!kept) {
      return tl::make_unexpected(kept.error());
    }
    photo.sha256 = kept->sha256;
    photo.media_type = kept->media_type;
    photo.bytes = kept->bytes;
    return photo;
  }

  store::Store& store_;
  const KnownHere& known_;
  store::IdSource& ids_;
  std::string folder_;
};

job::Moment moment_of(const ScriptCommand& scripted, const job::JobState& state) {
  job::Moment moment = scripted.at ? *scripted.at : moment_now();
  moment.clock_went_back = !state.entries.empty() && moment.at_ms < state.entries.back().moment.at_ms;
  return moment;
}

/// A fault of the disk or the store ends the replay; a refusal of the job logic is an answer like any other.
bool of_the_store(const Error& error) {
  for (const std::string_view code :
       {"disk_full", "disk_fault", "store_busy", "store_damaged", "look_only", "lost_race"}) {
    if (error.code == code) {
      return true;
    }
  }
  return false;
}

std::map<std::string, std::string> initials_by_id(const KnownHere& known) {
  std::map<std::string, std::string> initials;
  for (const auto& [each, id] : known.people) {
    initials[id] = each;
  }
  return initials;
}

std::string vehicle_key_of(const job::Command& command) {
  const auto* open = std::get_if<job::OpenJob>(&command);
  return open == nullptr ? std::string() : vehicle_key(*open);
}

/// The peak's channel is the step's own: a script needs not name it.
void name_peak_channel(job::Command& command, const job::JobState& state) {
  auto* peak = std::get_if<job::EnterPeak>(&command);
  const sheet::Step* step = peak == nullptr ? nullptr : state.sheets.job->find(peak->step);
  const auto* body = step == nullptr ? nullptr : std::get_if<sheet::PeakStep>(&step->body);
  if (body != nullptr) {
    peak->reading.channel = body->channel.id;
  }
}

using Entries = Result<std::vector<job::Entry>>;

Entries carried_out(store::Store& store, store::JobInHand& hand, job::Command& command, const KnownHere& known,
                    const store::By& by) {
  if (needs_pin(command)) {
    return sign_with_pins(store, hand, command, known, by);
  }
  name_peak_channel(command, hand.state());
  auto context = hand.context(by, vehicle_key_of(command));
  return context ? hand.execute(command, *context) : tl::make_unexpected(context.error());
}

}  // namespace

Result<ReplayResult> replay(store::Store& store, const Script& script, const KnownHere& known, store::IdSource& ids,
                            const std::string& script_folder, const std::function<void(const std::string&)>& say_line) {
  auto hand = store::JobInHand::begin(store, ids.id(moment_now().at_ms), known.sheet_hash, known.spec_hash);
  if (!hand) {
    return tl::make_unexpected(hand.error());
  }
  Naming naming(store, known, ids, script_folder);
  ReplayResult result;
  for (std::size_t at = 0; at < script.commands.size(); ++at) {
    const ScriptCommand& scripted = script.commands[at];
    const job::Moment moment = moment_of(scripted, hand->state());
    auto command = naming.named(scripted, hand->state(), moment.at_ms);
    auto entries = command ? carried_out(store, *hand, *command, known, {id_of(known.people, scripted.by), moment})
                           : tl::make_unexpected(command.error());
    if (!entries && of_the_store(entries.error())) {
      return tl::make_unexpected(entries.error());
    }
    result.unexpected += entries.has_value() == scripted.expect_accepted ? 0 : 1;
    say_line(entries ? accepted_line(at, *entries, hand->state()) : refused_line(at, entries.error()));
  }
  result.job = hand->state().opened ? hand->id() : std::string();
  result.sealed = hand->state().sealed.has_value();
  result.entries = static_cast<std::int64_t>(hand->state().entries.size());
  result.fold_hash = record::fold_hash(hand->state().entries, initials_by_id(known));
  return result;
}

}  // namespace shimwright::cli
