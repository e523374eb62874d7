#include "restless_user.h"

#include <QAbstractButton>
#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>
#include <QTimer>
#include <QWheelEvent>
#include <algorithm>
#include <array>
#include <utility>

#include "odd_texts.h"
#include "shimwright/bench/surroundings.h"
#include "shimwright/widgets/style.h"
#include "workshop.h"

namespace shimwright::test {

namespace {

std::string name_of(const QWidget& widget) {
  const QString name = widget.objectName();
  return std::string(widget.metaObject()->className()) + (name.isEmpty() ? "" : " " + name.toStdString());
}

/// Those a person could reach now; looked at closer once one was picked.
template <class Kind>
QList<Kind*> in_reach(QWidget& window) {
  QList<Kind*> found;
  for (Kind* each : window.findChildren<Kind*>()) {
    if (each->isVisible() && each->isEnabled()) {
      found.append(each);
    }
  }
  return found;
}

/// Without these in its hand more often than chance would have it, a person would hardly ever get into a job.
QList<QAbstractButton*> that_lead_on(const QList<QAbstractButton*>& buttons) {
  constexpr std::array names = {"take-up", "open-job", "new-job",  "main",     "seal",     "pdf",
                                "export",  "import",   "back-up",  "check",    "workshop", "past-jobs",
                                "record",  "restore",  "settings", "language", "scheme",   "person"};
  QList<QAbstractButton*> found;
  for (QAbstractButton* each : buttons) {
    if (std::any_of(names.begin(), names.end(),
                    [&](const char* name) { return each->objectName().contains(QLatin1String(name)); })) {
      found.append(each);
    }
  }
  return found;
}

}  // namespace

RestlessUser::RestlessUser(QString folder, std::uint64_t seed, std::chrono::seconds long_enough, Watch& watch,
                           print::Fonts fonts)
    : folder_(std::move(folder)),
      chance_(seed),
      long_enough_(long_enough),
      watch_(&watch),
      fonts_(std::move(fonts)),
      settings_(std::make_unique<QSettings>(folder_ + QStringLiteral("/settings.ini"), QSettings::IniFormat)) {}

RestlessUser::~RestlessUser() = default;

shell::StorePlaces RestlessUser::places() const {
  return {(folder_ + QStringLiteral("/own/workshop.shimwright")).toStdString(),
          (folder_ + QStringLiteral("/demo/workshop.shimwright")).toStdString()};
}

void RestlessUser::begin() {
  start_program();
  // A slow disk takes its time to make the demonstration.
  end_ = std::chrono::steady_clock::now() + long_enough_;
  QTimer::singleShot(0, this, &RestlessUser::act);
}

shell::Equipment RestlessUser::equipment() {
  shell::Equipment equipment;
  equipment.clock = [] { return cli::moment_now(); };
  equipment.places = places();
  equipment.choose_folder = [this](QWidget*, const QString&) {
    return below(3) == 0 ? QString() : folder_ + QStringLiteral("/chosen-%1").arg(below(3));
  };
  equipment.choose_photo = [this](QWidget*, const QString&) { return below(4) == 0 ? QString() : a_file(); };
  equipment.after = bench::real_surroundings().after;
  equipment.speak = [](const QString&) {};
  equipment.dress = [this](widgets::Scheme scheme) { widgets::dress(*qApp, scheme, fonts_); };
  equipment.sound = [] {};
  equipment.pages = shell::page_table();
  equipment.signing.cost = {1, 8192};
  return equipment;
}

/// The first time on the demonstration, which has jobs in work; then on what was open last.
void RestlessUser::start_program() {
  program_.reset();
  spoken_.reset();
  spoken_ = std::make_unique<shell::Spoken>(shell::language_to_speak(settings_.language()));
  program_ = std::make_unique<shell::Program>(settings_, equipment());
  connect(program_.get(), &shell::Program::finished, this, [this] { closed_ = true; });
  shell::StartWords words;
  words.demo = windows_opened_ == 0;
  ++windows_opened_;
  closed_ = false;
  program_->start(words);
}

QWidget* RestlessUser::window_in_front() const {
  if (QWidget* popup = QApplication::activePopupWidget()) {
    return popup;
  }
  if (QWidget* dialog = QApplication::activeModalWidget()) {
    return dialog;
  }
  for (QWidget* each : QApplication::topLevelWidgets()) {
    if (each->isVisible() && each->isEnabled()) {
      return each;
    }
  }
  return nullptr;
}

void RestlessUser::act() {
  // Before anything is done: what is done may open a dialog, and the person goes on in that.
  QTimer::singleShot(0, this, &RestlessUser::act);
  ++depth_;
  if (std::chrono::steady_clock::now() >= end_) {
    come_to_an_end();
  } else {
    act_once();
  }
  --depth_;
}

void RestlessUser::come_to_an_end() {
  if (QWidget* dialog = QApplication::activeModalWidget()) {
    watch_->note("closes " + name_of(*dialog));
    dialog->close();
  } else if (QWidget* popup = QApplication::activePopupWidget()) {
    watch_->note("closes " + name_of(*popup));
    popup->close();
  } else if (depth_ == 1 && program_) {
    watch_->note("ends");
    program_.reset();
    spoken_.reset();
    emit done();
  }
}

void RestlessUser::act_once() {
  QWidget* window = window_in_front();
  if (closed_ && depth_ == 1 && QApplication::activeModalWidget() == nullptr) {
    watch_->note("starts the program");
    start_program();
    return;
  }
  if (window == nullptr) {
    watch_->note("waits");
    return;
  }
  if (window == QApplication::activeModalWidget() && below(2) == 0) {
    answer(*window);
    return;
  }
  const int choice = below(100);
  if (choice < 40) {
    click(*window);
  } else if (choice < 65) {
    press_a_key(*window);
  } else if (choice < 78) {
    paste(*window);
  } else if (choice < 90) {
    type_a_burst(*window);
  } else if (choice < 94) {
    turn_the_wheel(*window);
  } else if (choice < 98) {
    resize(*window);
  } else if (below(4) == 0) {
    close(*window);
  } else {
    watch_->note("waits");
  }
}

void RestlessUser::press_a_key(QWidget& window) {
  constexpr std::array keys = {
      Qt::Key_F2,        Qt::Key_F4,     Qt::Key_F6,    Qt::Key_F9,     Qt::Key_Escape,   Qt::Key_Tab,   Qt::Key_Tab,
      Qt::Key_Return,    Qt::Key_Return, Qt::Key_Enter, Qt::Key_Space,  Qt::Key_Up,       Qt::Key_Down,  Qt::Key_Left,
      Qt::Key_Right,     Qt::Key_Home,   Qt::Key_End,   Qt::Key_PageUp, Qt::Key_PageDown, Qt::Key_0,     Qt::Key_1,
      Qt::Key_2,         Qt::Key_3,      Qt::Key_9,     Qt::Key_Comma,  Qt::Key_Period,   Qt::Key_Minus, Qt::Key_Plus,
      Qt::Key_Backspace, Qt::Key_Delete, Qt::Key_A,     Qt::Key_Z,      Qt::Key_V,        Qt::Key_F1,    Qt::Key_Menu};
  constexpr std::array<Qt::KeyboardModifiers::Int, 6> modifiers = {
      Qt::NoModifier, Qt::NoModifier, Qt::NoModifier, Qt::ControlModifier, Qt::ShiftModifier, Qt::AltModifier};
  const Qt::Key key = one_of(keys);
  const auto held = Qt::KeyboardModifiers(one_of(modifiers));
  QWidget* target = QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : &window;
  watch_->note("presses " + QKeySequence(key | held).toString().toStdString() + " in " + name_of(*target));
  QTest::keyClick(target, key, held);
}

/// As a gauge or a scanner types: digits without a pause, and Enter.
void RestlessUser::type_a_burst(QWidget& window) {
  QString digits;
  for (int left = 1 + below(6); left > 0; --left) {
    digits += QLatin1Char(static_cast<char>('0' + below(10)));
  }
  if (below(2) == 0) {
    digits.insert(below(static_cast<int>(digits.size())), below(2) == 0 ? QLatin1Char('.') : QLatin1Char(','));
  }
  watch_->note("types " + digits.toStdString() + " and Enter");
  for (const QChar each : digits) {
    QWidget* target = QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : &window;
    QTest::keyClick(target, each.toLatin1());
  }
  QWidget* target = QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : window_in_front();
  if (target != nullptr) {
    QTest::keyClick(target, Qt::Key_Return);
  }
}

void RestlessUser::click(QWidget& window) {
  const auto buttons = in_reach<QAbstractButton>(window);
  const auto widgets = in_reach<QWidget>(window);
  if (widgets.isEmpty()) {
    watch_->note("finds nothing to click");
    return;
  }
  const auto leading = that_lead_on(buttons);
  QWidget* target = one_of(widgets);
  if (!leading.isEmpty() && below(3) == 0) {
    target = one_of(leading);
  } else if (!buttons.isEmpty() && below(4) > 0) {
    target = one_of(buttons);
  }
  const QRect seen = target->visibleRegion().boundingRect();
  if (seen.isEmpty()) {
    watch_->note("does not see " + name_of(*target));
    return;
  }
  const QPoint place(seen.x() + below(std::max(1, seen.width())), seen.y() + below(std::max(1, seen.height())));
  watch_->note("clicks " + name_of(*target));
  if (below(12) == 0) {
    QTest::mouseDClick(target, Qt::LeftButton, {}, place);
  } else {
    QTest::mouseClick(target, below(25) == 0 ? Qt::RightButton : Qt::LeftButton, {}, place);
  }
}

void RestlessUser::paste(QWidget& window) {
  QList<QWidget*> fields;
  for (QLineEdit* each : in_reach<QLineEdit>(window)) {
    fields.append(each);
  }
  for (QPlainTextEdit* each : in_reach<QPlainTextEdit>(window)) {
    fields.append(each);
  }
  const QString text = below(3) == 0 ? one_of(odd_texts()) : one_of(fitting_texts());
  QWidget* target = fields.isEmpty() ? &window : one_of(fields);
  watch_->note("pastes “" + text.left(20).toStdString() + "” into " + name_of(*target));
  target->setFocus();
  QApplication::clipboard()->setText(text);
  QTest::keyClick(target, Qt::Key_V, Qt::ControlModifier);
}

void RestlessUser::resize(QWidget& window) {
  const QSize size(683 + below(1300), 384 + below(800));
  watch_->note("makes " + name_of(window) + " " + std::to_string(size.width()) + " by " +
               std::to_string(size.height()));
  window.resize(size);
}

void RestlessUser::close(QWidget& window) {
  watch_->note("closes " + name_of(window));
  window.close();
}

void RestlessUser::turn_the_wheel(QWidget& window) {
  const auto widgets = in_reach<QWidget>(window);
  QWidget* target = widgets.isEmpty() ? &window : one_of(widgets);
  watch_->note("turns the wheel over " + name_of(*target));
  const QPointF middle = QRectF(target->rect()).center();
  QWheelEvent wheel(middle, target->mapToGlobal(middle), {}, {0, below(2) == 0 ? 240 : -240}, {}, {}, {}, false);
  QApplication::sendEvent(target, &wheel);
}

/// Files are chosen by their name, as often as not.
void RestlessUser::answer(QWidget& dialog) {
  const auto fields = in_reach<QLineEdit>(dialog);
  if (below(3) == 0 || fields.isEmpty()) {
    watch_->note("leaves " + name_of(dialog));
    dialog.close();
    return;
  }
  const QString file = a_file();
  watch_->note("chooses " + file.toStdString() + " in " + name_of(dialog));
  fields.front()->setText(file);
  QTest::keyClick(fields.front(), Qt::Key_Return);
}

QString RestlessUser::a_file() {
  const QStringList there = QDir(folder_ + QStringLiteral("/files")).entryList(QDir::Files, QDir::Name);
  const int choice = below(static_cast<int>(there.size()) + 3);
  if (choice < there.size()) {
    return folder_ + QStringLiteral("/files/") + there[choice];
  }
  return folder_ + QStringLiteral("/files/new-%1").arg(below(5)) +
         QString(one_of(std::array{QStringLiteral(".pdf"), QStringLiteral(".json"), QString()}));
}

int RestlessUser::below(int end) {
  return static_cast<int>(chance_() % static_cast<std::uint64_t>(std::max(end, 1)));
}

}  // namespace shimwright::test
