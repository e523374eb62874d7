#pragma once

#include <string>
#include <vector>

#include "shimwright/sheet/draft.h"
#include "shimwright/widgets/pick_box.h"

namespace shimwright::workshop {

/// One of a few words. Arrow keys and letters go through them; Enter moves on; the wheel does nothing.
class WordPick : public widgets::PickBox {
  Q_OBJECT

 public:
  explicit WordPick(const QString& name, QWidget* parent = nullptr);
  /// `word` is the one chosen; none where it is not among them.
  void set_choices(const std::vector<sheet::WordChoice>& choices, const std::string& word);
  /// Blank where none is chosen.
  [[nodiscard]] std::string word() const;

 signals:
  void picked(const std::string& word);  ///< by a person
  void entered();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  std::vector<std::string> words_;
};

}  // namespace shimwright::workshop
