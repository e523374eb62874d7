#include "word_pick.h"

#include <QKeyEvent>
#include <QListView>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/keys.h"
#include "shimwright/widgets/say.h"

namespace shimwright::workshop {

WordPick::WordPick(const QString& name, QWidget* parent) : PickBox(name, parent) {
  // A view of our own: the toolkit's takes no height from the style sheet.
  setView(widgets::child_of<QListView>(this));
  setMinimumHeight(54);
  setPlaceholderText(tr("choose"));
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  connect(this, &QComboBox::activated, this, [this] { emit picked(word()); });
}

void WordPick::set_choices(const std::vector<sheet::WordChoice>& choices, const std::string& word) {
  clear();
  words_.clear();
  int chosen = -1;
  for (const sheet::WordChoice& each : choices) {
    chosen = each.word == word ? static_cast<int>(words_.size()) : chosen;
    words_.push_back(each.word);
    addItem(widgets::say(each.shown));
  }
  setCurrentIndex(chosen);
}

std::string WordPick::word() const {
  const int at = currentIndex();
  return at < 0 || at >= static_cast<int>(words_.size()) ? std::string() : words_[static_cast<std::size_t>(at)];
}

void WordPick::keyPressEvent(QKeyEvent* event) {
  if (widgets::is_plain_enter(*event)) {
    emit entered();
    return;
  }
  PickBox::keyPressEvent(event);
}

}  // namespace shimwright::workshop
