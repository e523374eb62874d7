#include "pin_input.h"

#include <QFile>
#include <cstdio>
#include <utility>

#include "shimwright/store/registers.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

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

}  // namespace

PinInput::PinInput(std::unique_ptr<QFile> file) : file_(std::move(file)) {}
PinInput::PinInput(PinInput&& other) noexcept = default;
PinInput::~PinInput() = default;

Result<PinInput> PinInput::open() {
  auto file = std::make_unique<QFile>();
  if (!file->open(stdin, QIODevice::ReadOnly)) {
    return refuse("cannot_read", "pin", SHIMWRIGHT_TEXT("cli", "The PIN is read from standard input: give it there."));
  }
  return PinInput(std::move(file));
}

record::Pin PinInput::next() {
  constexpr qint64 longest = 64;
  QByteArray line = file_->readLine(longest);
  std::string typed = line.trimmed().toStdString();
  line.fill('\0');
  return record::Pin::taken_from(typed);
}

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

}  // namespace shimwright::cli
