#include "shimwright/shell/hindrance_page.h"

#include <QDir>

#include "shimwright/widgets/child.h"
#include "shimwright/widgets/say.h"
#include "shimwright/widgets/turning_row.h"

namespace shimwright::shell {

HindrancePage::HindrancePage(QWidget* parent) : QWidget(parent) {
  scroll_ = widgets::child_of<widgets::Scroll>(this);
  widgets::lay<QVBoxLayout>(this)->addWidget(scroll_);
  QWidget* const page = scroll_->content();
  QVBoxLayout* const column = scroll_->column();
  column->setSpacing(14);
  column->setContentsMargins(28, 20, 28, 20);
  column->addWidget(widgets::child_of<widgets::Text>(page, tr("The store does not open"), "title"));
  sentence_ = widgets::child_of<widgets::Text>(page, QString(), "large");
  sentence_->setObjectName(QStringLiteral("hindrance"));
  column->addWidget(sentence_);
  path_ = widgets::child_of<widgets::Text>(page, QString(), "soft");
  column->addWidget(path_);
  refused_ = widgets::child_of<widgets::Text>(page, QString(), "error");
  refused_->setObjectName(QStringLiteral("hindrance-refused"));
  column->addWidget(refused_);
  auto* row = widgets::lay_in<widgets::TurningRow>(column, 10);
  const auto add = [page](widgets::Button*& button, const QString& text, const char* name, QBoxLayout* into,
                          widgets::Button::Kind kind = widgets::Button::Kind::plain) {
    button = widgets::child_of<widgets::Button>(page, text, kind);
    button->setObjectName(QLatin1String(name));
    into->addWidget(button, 0, Qt::AlignLeft);
  };
  add(retry_, tr("Try again"), "button-retry", row, widgets::Button::Kind::main);
  add(retry_beside_backup_, tr("Try again"), "button-retry-plain", row);
  add(look_, tr("Open for looking only"), "button-look", row);
  add(break_, tr("Break the lock of a program that is gone"), "button-break-lock", row);
  row->addStretch();
  question_ = widgets::child_of<widgets::Box>(page, QString(), QString(), "question");
  question_->setObjectName(QStringLiteral("break-question"));
  question_->body()->setSpacing(12);
  column->addWidget(question_);
  auto* answers = widgets::lay_in<widgets::TurningRow>(question_->body(), 10);
  add(keep_, tr("Leave the lock"), "button-keep-lock", answers);
  add(really_, tr("That program is gone: break its lock"), "button-break-really", answers);
  answers->addStretch();
  rescue_ = widgets::child_of<widgets::Box>(page, tr("The last backup"), QString(), "notice");
  rescue_->setObjectName(QStringLiteral("rescue"));
  rescue_->body()->setSpacing(12);
  column->addWidget(rescue_);
  add(put_back_, tr("Put this backup in its place"), "button-put-back", rescue_->body(), widgets::Button::Kind::main);
  rescue_->setFocusPolicy(Qt::TabFocus);
  rescue_->hide();
  retry_beside_backup_->hide();
  column->addStretch();
  connect_buttons();
}

void HindrancePage::connect_buttons() {
  for (const widgets::Button* each : {retry_, retry_beside_backup_}) {
    connect(each, &QPushButton::clicked, this, &HindrancePage::retry_wanted);
  }
  connect(look_, &QPushButton::clicked, this, &HindrancePage::look_wanted);
  connect(break_, &QPushButton::clicked, this, &HindrancePage::ask_to_break);
  connect(put_back_, &QPushButton::clicked, this, [this] { emit rescue_wanted(backup_); });
  connect(keep_, &QPushButton::clicked, this, [this] {
    question_->hide();
    take_focus();
  });
  connect(really_, &QPushButton::clicked, this, [this] {
    if (holder_) {
      emit break_wanted(store::LockHolder(*holder_));
    }
  });
}

void HindrancePage::show_search(const QString& folder) {
  rescue_->set_text(tr("Looking for the last whole backup in %1.").arg(QDir::toNativeSeparators(folder)));
  offer_backup(false);
  rescue_->show();
  const bool on_retry = focusWidget() == retry_;
  searches_ = true;
  if (on_retry) {
    take_focus();
  }
}

/// One button is the main one: the backup where there is one, or else another try.
void HindrancePage::offer_backup(bool offered) {
  put_back_->setVisible(offered);
  retry_->setVisible(!offered);
  retry_beside_backup_->setVisible(offered);
}

void HindrancePage::show_offer(const Result<std::optional<store::BackupOffer>>& found, const QString& folder) {
  searches_ = false;
  const bool waited = focusWidget() == rescue_ || focusWidget() == put_back_;
  offer_backup(found && found->has_value());
  if (!found) {
    rescue_->set_text(widgets::say(found.error()));
  } else if (const std::optional<store::BackupOffer>& offer = *found) {
    backup_ = widgets::qt(offer->file);
    QStringList told{widgets::say(offer->told()), tr("The damaged store is kept as a file beside it.")};
    if (const auto photos = offer->told_of_photos()) {
      told.insert(1, widgets::say(*photos));
    }
    rescue_->set_text(told.join(QLatin1Char('\n')));
  } else {
    rescue_->set_text(tr("There is no whole backup of this store in %1. Bring the folder of your backups back, and try "
                         "again; keep the damaged file as it is.")
                          .arg(QDir::toNativeSeparators(folder)));
  }
  if (waited) {
    take_focus();
  }
}

void HindrancePage::show_hindrance(const Error& error, const QString& path,
                                   const std::optional<store::LockHolder>& holder) {
  holder_ = holder;
  sentence_->setText(widgets::say(error));
  path_->setText(QDir::toNativeSeparators(path));
  const bool locked = error.code == "locked" || error.code == "lock_changed";
  look_->setVisible(locked);
  break_->setVisible(locked && holder.has_value());
  question_->hide();
  rescue_->hide();
  searches_ = false;
  offer_backup(false);
  refused_->hide();
}

void HindrancePage::tell_refused(const Error& error) {
  refused_->setText(tr("The backup was not put there. %1").arg(widgets::say(error)));
  refused_->show();
}

void HindrancePage::ask_to_break() {
  if (!holder_) {
    return;
  }
  const QString since = widgets::day_and_time(holder_->since_ms);
  const QString person = holder_->person.empty() ? tr("Somebody") : widgets::qt(holder_->person);
  question_->set_heading(tr("%1, on %2, since %3").arg(person, widgets::qt(holder_->host), since));
  question_->set_text(
      tr("Program number %1 holds the lock. Ask there first: where two programs write in one store, entries are "
         "lost. Break the lock only where that program or its machine is gone.")
          .arg(holder_->process));
  question_->show();
  keep_->setFocus();
  scroll_->show_child(question_);
}

/// While a backup is looked for the focus is on no button: the next one may be another than was meant.
void HindrancePage::take_focus() {
  if (!put_back_->isHidden()) {
    put_back_->setFocus();
    scroll_->show_child(rescue_);
  } else if (searches_) {
    rescue_->setFocus();
  } else {
    retry_->setFocus();
  }
}

}  // namespace shimwright::shell
