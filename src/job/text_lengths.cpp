#include "shimwright/job/text_lengths.h"

#include <utility>

#include "shimwright/sheet/names.h"

namespace shimwright::job {

namespace {

/// One overload a command, so that a new one does not compile before its texts are looked at.
class Measured {
 public:
  [[nodiscard]] Result<void> take() { return std::move(told_); }

  void operator()(const OpenJob& command) {
    line("number", command.number);
    line("vehicle", command.vehicle_typed);
    line("odometer", command.odometer);
    line("gearbox_serial", command.gearbox_serial);
    line("build_date", command.build_date);
    line("language", command.language);
    text("chassis_reason", command.chassis_reason.value_or(""));
    line("plate", command.plate.value_or(PrivateText()).text);
    line("customer_reference", command.customer_reference.value_or(PrivateText()).text);
    text("complaint", command.complaint.value_or(PrivateText()).text);
  }
  void operator()(const DoStep& /*command*/) {}
  void operator()(const CheckStep& command) { text(command.step, command.finding); }
  void operator()(const ChooseAnswer& command) { line(command.step, command.choice); }
  void operator()(const EnterReadings& command) {
    for (const TypedReading& each : command.readings) {
      reading(command.step, each);
    }
  }
  void operator()(const EnterPeak& command) { reading(command.step, command.reading); }
  void operator()(const FitParts& command) {
    for (const PartFitted& each : command.parts) {
      line(command.step, each.part);
      line(command.step, each.number);
      line(command.step, each.batch);
    }
  }
  void operator()(const AddPhoto& command) {
    line(command.step, command.sha256);
    line(command.step, command.media_type);
    line(command.step, command.caption);
  }
  void operator()(const WriteText& command) { text(command.step, command.text); }
  void operator()(const TryShim& command) { line(command.step, command.shim); }
  void operator()(const EnterDepths& command) {
    for (const std::string& each : command.readings) {
      line(command.step, each);
    }
    line(command.step, command.reference);
    line(command.step, command.stamp);
  }
  void operator()(const EnterFloatRun& command) {
    line(command.step, command.rest);
    line(command.step, command.lifted);
    line(command.step, command.zero_after);
  }
  void operator()(const BeginSeries& /*command*/) {}
  void operator()(const Confirm& command) {
    line(command.step, command.question);
    text(command.step, command.remark);
  }
  void operator()(const ChooseShim& command) {
    line(command.step, command.shim);
    text(command.step, command.reason);
  }
  void operator()(const TryTeachIn& command) {
    for (const TypedAttemptValue& each : command.values) {
      line(command.step + "/" + each.channel, each.before);
      line(command.step + "/" + each.channel, each.after);
    }
    line(command.step, command.code);
    text(command.step, command.reason);
  }
  void operator()(const Sign& /*command*/) {}
  void operator()(const Deviate& command) { text(command.step, command.reason); }
  void operator()(const SayNotRequired& command) { text(command.step, command.reason); }
  void operator()(const Withdraw& command) { text("reason", command.reason); }
  void operator()(const Note& command) { text(command.step.value_or("note"), command.text); }
  void operator()(const Park& command) {
    line("waits_for", command.waits_for);
    line("due", command.due);
  }
  void operator()(const TakeUp& /*command*/) {}
  void operator()(const HandOver& command) { text("remark", command.remark); }
  void operator()(const BeginAssembly& command) { text("reason", command.reason); }
  void operator()(const SealJob& /*command*/) {}
  void operator()(const AddAddendum& command) {
    text("reason", command.reason);
    text("text", command.text);
  }

 private:
  void reading(const std::string& step, const TypedReading& typed) { line(step + "/" + typed.channel, typed.text); }
  void line(const std::string& place, const std::string& text) {
    measure(place, text, longest_line);
    if (told_ && sheet::has_control_character(text)) {
      told_ = refuse("control_character", place,
                     SHIMWRIGHT_TEXT("job",
                                     "There is a line break or another character in this that does not print: write it "
                                     "without."));
    }
  }
  void text(const std::string& place, const std::string& text) { measure(place, text, longest_text); }

  void measure(const std::string& place, const std::string& text, std::size_t longest) {
    if (const std::size_t count = sheet::character_count(text); told_ && count > longest) {
      told_ = refuse("text_too_long", place,
                     SHIMWRIGHT_TEXT("job", "This has {0} characters, at most {1} are kept: say it in fewer."),
                     {std::to_string(count), std::to_string(longest)});
    }
  }

  Result<void> told_;
};

}  // namespace

Result<void> check_text_lengths(const Command& command) {
  Measured measured;
  std::visit(measured, command);
  return measured.take();
}

}  // namespace shimwright::job
