#pragma once

#include <functional>
#include <string>

#include <QObject>

class QKeyEvent;

namespace shimwright::bench {

/// Keys that come while no field has the focus. A burst that ends in Enter is a gauge or a scanner; a digit that no
/// further key follows within 80 ms is a hand. Neither ever presses the button that happens to have the focus.
class Wedge : public QObject {
  Q_OBJECT

 public:
  using After = std::function<void(int milliseconds, std::function<void()> call)>;

  /// Sees the keys of `watched` and all that lies in it.
  Wedge(After after, QWidget* watched);

  bool eventFilter(QObject* object, QEvent* event) override;

 signals:
  void burst(const std::string& text);
  void digit(int digit);

 private:
  [[nodiscard]] bool is_ours(QObject* object) const;
  [[nodiscard]] bool take(const QKeyEvent& key);
  void expire(int generation);

  QWidget* watched_;
  After after_;
  QString keys_;
  int generation_ = 0;
};

}  // namespace shimwright::bench
