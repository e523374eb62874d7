#include "page_run.h"

#include <QTimer>
#include <utility>

namespace shimwright::past {

void PageRun::begin(PageSteps steps) {
  steps_ = std::move(steps);
  drawn_ = 0;
  ++run_;
  if (steps_->pages > 0) {
    emit came_to(1, steps_->pages);
  }
  later();
}

void PageRun::stop() {
  if (steps_) {
    steps_.reset();
    emit stopped();
  }
}

void PageRun::later() {
  QTimer::singleShot(0, this, [this, run = run_] {
    if (run == run_ && steps_) {
      step();
    }
  });
}

void PageRun::step() {
  const bool last = drawn_ >= steps_->pages;
  const Result<void> did = last ? steps_->finish() : steps_->next();
  if (!did) {
    const Error error = did.error();
    steps_.reset();
    emit failed(error);
    return;
  }
  if (last) {
    steps_.reset();
    emit done();
    return;
  }
  ++drawn_;
  if (drawn_ < steps_->pages) {
    emit came_to(drawn_ + 1, steps_->pages);
  }
  later();
}

}  // namespace shimwright::past
