#include "shimwright/bench/surroundings.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QTimer>
#include <utility>

namespace shimwright::bench {

Surroundings real_surroundings() {
  return {[](int milliseconds, std::function<void()> call) { QTimer::singleShot(milliseconds, std::move(call)); },
          [] {
            return QFileDialog::getOpenFileName(nullptr, QCoreApplication::translate("bench", "Choose a photo"), {},
                                                QCoreApplication::translate("bench", "Photos (*.jpg *.jpeg *.png)"));
          }};
}

}  // namespace shimwright::bench
