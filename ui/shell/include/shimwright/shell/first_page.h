#pragma once

#include <QWidget>

#include "shimwright/shell/choice_row.h"
#include "shimwright/shell/stores.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::shell {

/// What a person has entered so far.
struct FirstTyped {
  Beginning beginning;
  QString logo_name;
};

/// The very first start: try the demonstration, or begin this workshop's own store.
class FirstPage : public QWidget {
  Q_OBJECT

 public:
  explicit FirstPage(QWidget* parent = nullptr);
  /// Where a workshop would begin, and whether the demonstration is offered beside it.
  void set_offer(const QString& path, bool with_demo);
  /// The store is begun and has its workshop; only the first person is asked for. set_offer() takes that back.
  void ask_for_person_only(const QString& workshop);
  void set_fault(const QString& sentence);
  void take_focus();
  /// What is chosen now, by the names of the buttons.
  void show_choices(const QStringList& names);
  /// A picture for the head of the record, and what it is called.
  void set_logo(const std::optional<store::Logo>& logo, const QString& name = {});
  [[nodiscard]] FirstTyped typed() const;
  void put_typed(const FirstTyped& typed);
  void take_focus_at(const QString& choice);

 signals:
  void demo_wanted();
  void begin_wanted(const shimwright::shell::Beginning& beginning);
  void logo_wanted();
  /// Kept at once, whichever workshop is opened then: `language-de`, `length-in` …
  void choice_made(const QString& name);

 private:
  void build_demo(QBoxLayout* row);
  void build_own(QBoxLayout* row);
  void add_choice(const QString& title, const std::vector<ChoiceRow::Choice>& choices, QWidget* parent,
                  QBoxLayout* into);
  void build_choices(QVBoxLayout* column);
  void build_logo(widgets::Box* own);
  void show_workshop_fields(bool shown);
  void begin();

  widgets::Box* demo_ = nullptr;
  widgets::Box* own_ = nullptr;
  widgets::Button* try_ = nullptr;
  QLabel* path_ = nullptr;
  QLabel* fault_ = nullptr;
  widgets::WordField* workshop_ = nullptr;
  widgets::WordField* address_ = nullptr;
  widgets::WordField* person_ = nullptr;
  widgets::WordField* initials_ = nullptr;
  QLabel* logo_told_ = nullptr;
  widgets::Button* choose_logo_ = nullptr;
  widgets::Button* no_logo_ = nullptr;
  std::optional<store::Logo> logo_;
  std::vector<ChoiceRow*> choices_;
};

}  // namespace shimwright::shell
