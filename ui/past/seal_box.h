#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include <QFrame>

#include "shimwright/past/record_ways.h"
#include "shimwright/store/seal.h"
#include "shimwright/store/store.h"

class QLabel;
class QVBoxLayout;

namespace shimwright::widgets {
class BackgroundWork;
class WordField;
}  // namespace shimwright::widgets

namespace shimwright::past {

/// What can be done about the seal of the job whose record is shown: what stands in its way, the PINs of those who
/// signed, whether a sealed record is whole, and what is added to it. Hidden while the job is not at its end. What
/// takes its time, signing and looking whether a seal holds, is done in threads of their own.
class SealBox : public QFrame {
  Q_OBJECT

 public:
  SealBox(store::Store& store, SealWays ways, QWidget* parent = nullptr);

  void show_job(const std::string& job);

 signals:
  void just_sealed();  ///< the record reads otherwise now, and its next print is the first
  void added_to();     ///< likewise, but what is printed of it is printed again

 private:
  /// Where one of those who signed types a PIN; a second time where it is the first one.
  struct PinFields {
    std::string person;
    widgets::WordField* pin = nullptr;
    widgets::WordField* again = nullptr;
  };

  void begin();
  void build(const job::JobState& state);
  void build_points(const std::vector<QString>& sentences);
  void build_pins(const std::vector<std::string>& signers);
  void build_sealed();
  void build_addendum();
  [[nodiscard]] PinFields pin_fields(const std::string& person, const std::string& name, bool has_pin);
  [[nodiscard]] store::SigningState signing_state(const std::string& person) const;
  /// Says of which persons the key has ended; false: of none.
  [[nodiscard]] bool build_ended_keys(const std::vector<std::string>& persons);
  [[nodiscard]] std::string name_of(const std::string& person) const;

  /// A PIN as it was typed, on its way to where it is used.
  struct TypedPin {
    store::SealPin of;
    bool first = false;  ///< to be kept before
  };
  using TypedPins = std::shared_ptr<std::vector<TypedPin>>;
  using Signing = std::function<Result<store::JobFile>(store::Store& store)>;
  using Signed = std::function<void(const Result<store::JobFile>& file)>;

  void seal();
  void add();
  [[nodiscard]] bool first_pins_agree();
  /// Out of the fields, which are empty then.
  [[nodiscard]] TypedPins taken_pins();
  [[nodiscard]] static Result<void> keep_first_pins(store::Store& store, const std::vector<TypedPin>& pins,
                                                    const store::By& by, const store::SigningRules& rules);
  /// Does it beside the window, with nothing to be pressed meanwhile. `then` is not called where another job is shown
  /// by that time.
  void sign(Signing signing, Signed then);
  void show_signing(bool runs);
  void show_whether_whole(const Result<void>& whole);
  void say(const QString& text, bool good);
  void say_file(const store::JobFile& file, const QString& done);
  void wipe();

  store::Store* store_;
  SealWays ways_;
  std::string job_;
  QVBoxLayout* outer_;
  QWidget* content_ = nullptr;
  QVBoxLayout* column_ = nullptr;
  std::vector<PinFields> pins_;
  widgets::WordField* reason_ = nullptr;
  widgets::WordField* text_ = nullptr;
  QLabel* state_ = nullptr;
  QLabel* said_;
  widgets::BackgroundWork* signing_;
  widgets::BackgroundWork* checking_;
};

}  // namespace shimwright::past
