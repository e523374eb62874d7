#pragma once

#include <vector>

#include <QFrame>
#include <QString>

#include "shimwright/quantity/error.h"
#include "shimwright/widgets/parts.h"

namespace shimwright::workshop {

/// A card to enter one thing in: fields in body(), below them what is wrong, and the buttons. Ctrl+Enter keeps, Escape
/// asks nothing and leaves. Nothing typed is lost by a refusal.
class FormCard : public QFrame {
  Q_OBJECT

 public:
  FormCard(const QString& heading, QString keep, QWidget* parent = nullptr);
  /// To be called when all fields are there: the buttons come after them in the order of Tab.
  void finish();
  [[nodiscard]] QVBoxLayout* body() const { return body_; }
  /// A field in the body; Enter in it goes to the next one, at the last to the button that keeps. A refusal whose place
  /// ends in `/name` is told at it.
  widgets::WordField* add_word(const QString& title, const QString& name, QBoxLayout* into = nullptr);
  /// The same for what is pressed or picked and needs no way of Enter.
  /// Two fields side by side, below each other where there is no room.
  [[nodiscard]] QBoxLayout* add_pair();
  void add_place(QWidget* field, const QString& name);
  void tell(const Error& error);
  void tell(const QString& sentence, QWidget* field = nullptr);
  void clear_told() { tell(QString()); }
  /// Whether something typed in it would be lost by leaving.
  [[nodiscard]] virtual bool has_unsent() const { return false; }

 signals:
  void keep_wanted();
  void leave_wanted();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  struct Place {
    QString name;
    QWidget* field;
  };

  QString keep_words_;
  QVBoxLayout* body_ = nullptr;
  QLabel* told_ = nullptr;
  widgets::Button* keep_ = nullptr;
  std::vector<Place> places_;
};

}  // namespace shimwright::workshop
