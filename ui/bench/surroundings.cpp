#include "shimwright/bench/surroundings.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QTimer>
#include <utility>

#include "shimwright/widgets/child.h"

namespace shimwright::bench {

namespace {

void call_after(int milliseconds, std::function<void()> call) {
  auto* timer = widgets::child_of<QTimer>(QCoreApplication::instance());
  timer->setSingleShot(true);
  timer->setTimerType(Qt::PreciseTimer);
  QObject::connect(timer, &QTimer::timeout, timer, [timer, call = std::move(call)] {
    timer->deleteLater();
    call();
  });
  timer->start(milliseconds);
}

}  // namespace

Surroundings real_surroundings() {
  return {call_after, [] {
            return QFileDialog::getOpenFileName(nullptr, QCoreApplication::translate("bench", "Choose a photo"), {},
                                                QCoreApplication::translate("bench", "Photos (*.jpg *.jpeg *.png)"));
          }};
}

}  // namespace shimwright::bench
