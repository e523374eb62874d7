#pragma once

#include <vector>

#include <QWidget>

namespace shimwright::widgets {

enum class StageLook { to_do, done, here, waiting, held };

/// A job's stages as a row of pieces: done blue, waiting amber, held brick, to do pale. Its accessible name says how
/// many are done.
class StageBar : public QWidget {
  Q_OBJECT

 public:
  explicit StageBar(QWidget* parent = nullptr);
  void set_stages(const std::vector<StageLook>& stages);
  [[nodiscard]] QSize sizeHint() const override { return {600, 12}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::vector<StageLook> stages_;
};

}  // namespace shimwright::widgets
