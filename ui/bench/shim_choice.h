#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QFrame>

#include "shimwright/job/context.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::bench {

/// Which shim of the tray, by one press: the sizes side by side, the advised one marked.
class ShimChoice : public QFrame {
  Q_OBJECT

 public:
  explicit ShimChoice(QWidget* parent = nullptr);
  void show_tray(const QString& question, const QString& text, const std::vector<job::TrayShim>& tray,
                 const std::optional<std::string>& advised);
  void take_focus();

 signals:
  void chosen(const std::string& shim);
  void left();  ///< closed without a choice

 private:
  void add_sizes(const std::vector<job::TrayShim>& tray, const std::optional<std::string>& advised);

  QVBoxLayout* column_;
  widgets::Text* question_;
  widgets::Text* text_;
  QWidget* sizes_ = nullptr;
  widgets::Button* first_ = nullptr;
};

}  // namespace shimwright::bench
