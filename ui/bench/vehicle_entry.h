#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QString>
#include <QWidget>

#include "shimwright/quantity/error.h"

class QFrame;
class QLineEdit;
class QVBoxLayout;

namespace shimwright::widgets {
class Button;
class Text;
class WordField;
}  // namespace shimwright::widgets

namespace shimwright::bench {

/// The number of the vehicle, from keys or a scanner: characters no VIN has are marked, what may have been meant is one
/// button away, and a number that is no VIN is taken with a reason. What is typed stays as it is typed.
class VehicleEntry : public QWidget {
  Q_OBJECT

 public:
  explicit VehicleEntry(QWidget* parent = nullptr);

  void clear(int this_year);
  /// A reason: the number is no VIN.
  void set(const std::string& typed, const std::optional<std::string>& chassis_reason);
  [[nodiscard]] std::string typed() const;
  /// Set where the number is said to be no VIN; may be blank.
  [[nodiscard]] std::optional<std::string> chassis_reason() const;
  /// What the vehicle is filed under; nothing while the number cannot be taken.
  [[nodiscard]] std::optional<std::string> key() const;
  /// The same before a reason is given: what to look for among earlier jobs.
  [[nodiscard]] std::optional<std::string> key_to_look_for() const;
  void show_refusal(const Error& error);
  void take_focus();

 signals:
  void edited();
  void entered();  ///< Enter, and the number can be taken

 private:
  void build_field(QVBoxLayout* column);
  void enter();
  void show_state();
  void say_notice(const QString& sentence, const QString& take);
  void mark_wrong_characters();
  void take_suggestion();
  [[nodiscard]] bool is_chassis() const;

  int this_year_ = 2000;
  bool tried_ = false;  ///< Enter was pressed since the last change: too few characters are said to be so
  std::string suggestion_;
  widgets::Text* title_ = nullptr;
  QFrame* notice_ = nullptr;
  widgets::Text* sentence_ = nullptr;
  widgets::Button* take_ = nullptr;
  QLineEdit* edit_ = nullptr;
  widgets::Button* no_vin_ = nullptr;
  widgets::WordField* reason_ = nullptr;
};

/// `Take 0 for O`: what the suggestion changes, in words a glance takes in.
[[nodiscard]] QString words_for_suggestion(const std::string& typed, const std::string& suggestion);

/// Where characters stand that no VIN has, counted as the toolkit does (UTF-16).
struct WrongPlace {
  int from = 0;
  int length = 1;
  friend bool operator==(const WrongPlace&, const WrongPlace&) = default;
};
[[nodiscard]] std::vector<WrongPlace> wrong_places(const QString& typed);

}  // namespace shimwright::bench
