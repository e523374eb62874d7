#include <nlohmann/json.hpp>
#include <utility>

#include "arguments.h"
#include "commands.h"
#include "outputs.h"
#include "pin_input.h"
#include "shimwright/job/evolve.h"
#include "shimwright/job/to_decide.h"
#include "shimwright/print/pdf.h"
#include "shimwright/record/seal_code.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/store/job_record.h"
#include "shimwright/store/seal.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

std::string folder_of(const Arguments& arguments) {
  const auto folder = arguments.options.find("folder");
  return folder == arguments.options.end() ? std::string() : absolute(folder->second);
}

/// The line of what was signed; whether its file was written decides the exit.
Exit say_signed(nlohmann::ordered_json line, const store::JobFile& file) {
  if (!file.path.empty()) {
    line["file"] = file.path;
  }
  say(line.dump());
  return file.fault ? failed(*file.fault) : Exit::done;
}

/// The technician's PIN, then those of the others who signed the job.
Result<std::vector<store::SealPin>> pins_for(const Signing& by_whom, const std::string& job) {
  auto hand = store::JobInHand::load(*by_whom.store, job);
  if (!hand) {
    return tl::make_unexpected(hand.error());
  }
  auto input = PinInput::open();
  if (!input) {
    return tl::make_unexpected(input.error());
  }
  const std::vector<std::string> signers = job::signers_of(hand->state());
  std::vector<store::SealPin> pins;
  pins.push_back({by_whom.person, input->next()});
  for (std::size_t at = 1; at < signers.size(); ++at) {
    pins.push_back({signers[at], input->next()});
  }
  return pins;
}

/// The print that is none again.
Result<void> first_print(store::Store& store, const std::string& job, const std::string& path) {
  auto record = store::record_of(store, job);
  if (!record) {
    return tl::make_unexpected(record.error());
  }
  if (auto& seal = record->seal) {
    seal->reprint = false;
  }
  return print::write_pdf(*record, absolute(path));
}

}  // namespace

Exit run_sign(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {1, 1, {"store", "person", "folder", "pdf"}, {"store", "person"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  if (auto free = check_outputs(*arguments); !free) {
    return refused(free.error());
  }
  auto by_whom = signing(*arguments);
  if (!by_whom) {
    return refused(by_whom.error());
  }
  auto job = job_named(*by_whom->store, arguments->positional.front());
  auto pins = job ? pins_for(*by_whom, *job) : tl::make_unexpected(job.error());
  if (!pins) {
    return refused(pins.error());
  }
  const store::By by{by_whom->person, moment_now()};
  auto sealed = store::seal_job(*by_whom->store, *job, *pins, by, {}, folder_of(*arguments));
  if (!sealed) {
    return refused(sealed.error());
  }
  const Exit kept = say_signed(
      {{"job", *job}, {"digest", sealed->digest}, {"seal", record::seal_groups(sealed->digest)}}, sealed->file);
  if (const auto pdf = arguments->options.find("pdf"); pdf != arguments->options.end()) {
    if (auto printed = first_print(*by_whom->store, *job, pdf->second); !printed) {
      return failed(printed.error());
    }
  }
  return kept;
}

Exit run_addendum(const std::vector<std::string>& words) {
  const std::set<std::string> required{"store", "person", "reason", "text"};
  auto arguments = read_arguments(words, {1, 1, {"store", "person", "reason", "text", "folder"}, required, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto by_whom = signing(*arguments);
  if (!by_whom) {
    return refused(by_whom.error());
  }
  auto job = job_named(*by_whom->store, arguments->positional.front());
  auto input = job ? PinInput::open() : tl::make_unexpected(job.error());
  if (!input) {
    return refused(input.error());
  }
  auto added =
      store::add_addendum(*by_whom->store, *job, arguments->options.at("reason"), arguments->options.at("text"),
                          input->next(), {by_whom->person, moment_now()}, {}, folder_of(*arguments));
  return added ? say_signed({{"job", *job}}, *added) : refused(added.error());
}

}  // namespace shimwright::cli
