#pragma once

#include <functional>
#include <vector>

#include "kept_line.h"
#include "shimwright/bench/step_page.h"

namespace shimwright::bench {

/// Photos of a step: those kept, and where the next one comes from: a file that is chosen, or one of the newest in the
/// camera's folder.
class PhotoPage final : public StepPage {
  Q_OBJECT

 public:
  PhotoPage(Workbench& bench, const sheet::Step& step, QWidget* parent);

  /// How a file is chosen; blank: none was.
  void set_file_picker(std::function<QString()> picker) { pick_ = std::move(picker); }
  /// Where a camera or a telephone leaves its pictures; blank: nowhere.
  void set_camera_folder(const QString& folder);

  void refresh() override;
  [[nodiscard]] std::vector<FootAction> actions() override;
  void take_focus() override;
  [[nodiscard]] bool has_unsent() const override { return !caption_->text().empty(); }
  [[nodiscard]] bool commit() override;
  bool take_burst(const std::string& /*text*/) override { return false; }

 private:
  void choose();
  void keep(const QString& file);
  void show_kept();
  void show_camera();

  std::function<QString()> pick_;
  QString camera_folder_;
  KeptLine* left_out_;
  widgets::Text* count_;
  widgets::WordField* caption_;
  UnsentBox* unsent_;
  widgets::Button* one_more_;  ///< there too where the foot goes on to the next step
  QWidget* kept_place_;
  QWidget* camera_place_;
  QVBoxLayout* kept_column_;
  QVBoxLayout* camera_column_;
  QWidget* kept_ = nullptr;    ///< the pictures shown now
  QWidget* camera_ = nullptr;  ///< likewise
  std::vector<std::int64_t> shown_;
  QStringList shown_files_;
};

}  // namespace shimwright::bench
