#pragma once

#include <functional>
#include <map>

#include <QFrame>
#include <QVBoxLayout>

namespace shimwright::shell {

/// Bars under the top bar, one for each matter: a later sentence takes the place of the earlier one. They tell and stop
/// nothing.
class Notices : public QWidget {
  Q_OBJECT

 public:
  explicit Notices(QWidget* parent = nullptr);
  /// A sentence that is taken away by `Understood`, or one that stays.
  void tell(const QString& matter, const QString& sentence, bool stays = false);
  /// A sentence with something to do about it.
  void offer(const QString& matter, const QString& sentence, const QString& action, std::function<void()> act);
  void clear(const QString& matter);

 private:
  QHBoxLayout* add_bar(const QString& matter, const QString& sentence);
  void show_bar(const QString& matter);

  QVBoxLayout* column_;
  std::map<QString, QFrame*> bars_;
};

}  // namespace shimwright::shell
