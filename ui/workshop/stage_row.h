#pragma once

#include <string>
#include <vector>

#include <QWidget>

#include "shimwright/store/types.h"
#include "shimwright/widgets/parts.h"
#include "word_pick.h"

class QBoxLayout;

namespace shimwright::workshop {

/// Takes a stage over from another job sheet: which sheet, which of its stages, and before which one it is to stand.
class StageRow : public QWidget {
  Q_OBJECT

 public:
  /// `stages` are those of the sheet that is written, by their places; the last is chosen.
  StageRow(std::vector<store::SheetIssue> sheets, const std::vector<sheet::WordChoice>& stages,
           QWidget* parent = nullptr);
  /// What of it cannot be.
  void set_fault(const QString& sentence);

 signals:
  void taken(const std::string& file, const std::string& stage, const std::string& before);

 private:
  [[nodiscard]] WordPick* add_pick(QBoxLayout* rows, const QString& title, const char* name);
  void fill_stages();
  void take();

  std::vector<store::SheetIssue> sheets_;
  WordPick* sheet_ = nullptr;
  WordPick* stage_ = nullptr;
  WordPick* before_ = nullptr;
  widgets::Text* fault_ = nullptr;
};

}  // namespace shimwright::workshop
