#include <QFile>
#include <nlohmann/json.hpp>
#include <utility>

#include "arguments.h"
#include "commands.h"
#include "shimwright/job/evolve.h"
#include "shimwright/job/to_decide.h"
#include "shimwright/record/seal_code.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/store/seal.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

/// One PIN to a line, in the order they are needed.
record::Pin next_pin(QFile& input) {
  constexpr qint64 longest = 64;
  QByteArray line = input.readLine(longest);
  std::string typed = line.trimmed().toStdString();
  line.fill('\0');
  return record::Pin::taken_from(typed);
}

Result<std::string> person_named(store::Store& store, const std::string& name) {
  auto persons = store.registers().persons();
  if (!persons) {
    return tl::make_unexpected(persons.error());
  }
  for (const store::Person& each : *persons) {
    if (each.name == name || each.initials == name) {
      return each.id;
    }
  }
  return refuse("unknown_person", name,
                SHIMWRIGHT_TEXT("cli", "This person is not in the workshop's list: write the name or the initials."));
}

Error no_input() {
  return {"cannot_read", "pin", {SHIMWRIGHT_TEXT("cli", "The PIN is read from standard input: give it there."), {}}};
}

/// A store to write in, one of its persons and standard input.
struct Signing {
  std::unique_ptr<store::Store> store;
  std::string person;
};

Result<Signing> signing(const Arguments& arguments) {
  const std::string& name = arguments.options.at("person");
  // Nothing is made here that was not there.
  if (auto there = open_to_look(arguments.options.at("store")); !there) {
    return tl::make_unexpected(there.error());
  }
  auto store = open_to_write(arguments.options.at("store"), name);
  if (!store) {
    return tl::make_unexpected(store.error());
  }
  auto person = person_named(**store, name);
  if (!person) {
    return tl::make_unexpected(person.error());
  }
  return Signing{std::move(*store), *person};
}

Exit whole_or_not(const Result<void>& whole) {
  say(whole ? "whole and ours" : whole.error().in_english());
  return whole ? Exit::done : Exit::off;
}

Result<std::vector<record::KnownKey>> keys_in(const Arguments& arguments) {
  if (const auto file = arguments.options.find("key"); file != arguments.options.end()) {
    auto text = read_file(file->second);
    if (!text) {
      return tl::make_unexpected(text.error());
    }
    std::vector<record::KnownKey> keys;
    for (std::size_t at = text->find("-----BEGIN"); at != std::string::npos; at = text->find("-----BEGIN", at + 1)) {
      keys.push_back({record::public_key_in(std::string_view(*text).substr(at)), {}, {}});
    }
    return keys;
  }
  if (const auto file = arguments.options.find("store"); file != arguments.options.end()) {
    auto store = open_to_look(file->second);
    if (!store) {
      return tl::make_unexpected(store.error());
    }
    return store::known_keys(**store);
  }
  return std::vector<record::KnownKey>{};
}

Exit verify_file(const Arguments& arguments) {
  auto keys = keys_in(arguments);
  if (!keys) {
    return failed(keys.error());
  }
  auto text = read_file(arguments.positional.front());
  if (!text) {
    return failed(text.error());
  }
  const auto read = record::read_signed_record(*text);
  if (!read) {
    return whole_or_not(tl::make_unexpected(read.error()));
  }
  const auto whole = record::check_signed_record(*read);
  return whole_or_not(whole ? record::check_keys(*read, *keys) : whole);
}

Exit verify_in_store(const Arguments& arguments) {
  auto store = open_to_look(arguments.options.at("store"));
  if (!store) {
    return failed(store.error());
  }
  auto job = job_named(**store, arguments.options.at("job"));
  if (!job) {
    return failed(job.error());
  }
  return whole_or_not(store::verify_job(**store, *job));
}

}  // namespace

Exit run_verify(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {0, 1, {"store", "job", "key"}, {}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  const bool in_store = arguments->options.count("store") + arguments->options.count("job") == 2;
  if (arguments->positional.empty() != in_store) {
    return refused(Error{
        "wrong_count", "", {SHIMWRIGHT_TEXT("cli", "Name a signed file, or a store and a job: see its --help."), {}}});
  }
  return in_store ? verify_in_store(*arguments) : verify_file(*arguments);
}

Exit run_pin(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {0, 0, {"store", "person"}, {"store", "person"}, {"forgotten", "key"}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto signing_by = signing(*arguments);
  if (!signing_by) {
    return refused(signing_by.error());
  }
  if (arguments->flags.count("key") == 0) {
    QFile input;
    if (!input.open(stdin, QIODevice::ReadOnly)) {
      return refused(no_input());
    }
    const record::Pin pin = next_pin(input);
    const store::By by{signing_by->person, moment_now()};
    const auto set = arguments->flags.count("forgotten") != 0
                         ? store::forget_pin(*signing_by->store, signing_by->person, pin, by)
                         : store::set_pin(*signing_by->store, signing_by->person, pin, by);
    if (!set) {
      return refused(set.error());
    }
  }
  auto keys = store::signing_keys(*signing_by->store);
  if (!keys) {
    return failed(keys.error());
  }
  for (const store::PersonsKey& each : *keys) {
    if (each.person == signing_by->person) {
      std::string pem = record::pem_of(each.public_key);
      pem.pop_back();
      say(pem);
    }
  }
  return Exit::done;
}

Exit run_sign(const std::vector<std::string>& words) {
  auto arguments = read_arguments(words, {1, 1, {"store", "person", "folder"}, {"store", "person"}, {}});
  if (!arguments) {
    return refused(arguments.error());
  }
  auto by_whom = signing(*arguments);
  if (!by_whom) {
    return refused(by_whom.error());
  }
  auto job = job_named(*by_whom->store, arguments->positional.front());
  auto hand = job ? store::JobInHand::load(*by_whom->store, *job) : tl::make_unexpected(job.error());
  if (!hand) {
    return refused(hand.error());
  }
  QFile input;
  if (!input.open(stdin, QIODevice::ReadOnly)) {
    return refused(no_input());
  }
  const std::vector<std::string> signers = job::signers_of(hand->state());
  std::vector<store::SealPin> pins;
  pins.push_back({by_whom->person, next_pin(input)});
  for (std::size_t at = 1; at < signers.size(); ++at) {
    pins.push_back({signers[at], next_pin(input)});
  }
  auto digest = store::seal_job(*by_whom->store, *job, pins, {by_whom->person, moment_now()});
  if (!digest) {
    return refused(digest.error());
  }
  nlohmann::ordered_json line{{"job", *job}, {"digest", *digest}, {"seal", record::seal_groups(*digest)}};
  if (const auto folder = arguments->options.find("folder"); folder != arguments->options.end()) {
    auto file = store::write_job_file(*by_whom->store, *job, absolute(folder->second));
    if (!file) {
      return failed(file.error());
    }
    line["file"] = *file;
  }
  say(line.dump());
  return Exit::done;
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
  if (!job) {
    return refused(job.error());
  }
  QFile input;
  if (!input.open(stdin, QIODevice::ReadOnly)) {
    return refused(no_input());
  }
  const record::Pin pin = next_pin(input);
  if (auto added = store::add_addendum(*by_whom->store, *job, arguments->options.at("reason"),
                                       arguments->options.at("text"), pin, {by_whom->person, moment_now()});
      !added) {
    return refused(added.error());
  }
  nlohmann::ordered_json line{{"job", *job}};
  if (const auto folder = arguments->options.find("folder"); folder != arguments->options.end()) {
    auto file = store::write_job_file(*by_whom->store, *job, absolute(folder->second));
    if (!file) {
      return failed(file.error());
    }
    line["file"] = *file;
  }
  say(line.dump());
  return Exit::done;
}

}  // namespace shimwright::cli
