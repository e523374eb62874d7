#include "page_run.h"

#include <utility>

namespace shimwright::past {

PageRun::PageRun(QObject* parent) : QObject(parent) {
  next_.setSingleShot(true);
  connect(&next_, &QTimer::timeout, this, &PageRun::step);
}

void PageRun::begin(PageSteps steps) {
  const int pages = steps.pages;
  steps_ = std::move(steps);
  drawn_ = 0;
  if (pages > 0) {
    emit came_to(1, pages);
  }
  next_.start(0);
}

void PageRun::stop() {
  if (steps_) {
    steps_.reset();
    next_.stop();
    emit stopped();
  }
}

void PageRun::step() {
  if (!steps_) {
    return;
  }
  const int pages = steps_->pages;
  const bool last = drawn_ >= pages;
  const Result<void> did = last ? steps_->finish() : steps_->next();
  if (!did) {
    steps_.reset();
    emit failed(did.error());
    return;
  }
  if (last) {
    steps_.reset();
    emit done();
    return;
  }
  ++drawn_;
  if (drawn_ < pages) {
    emit came_to(drawn_ + 1, pages);
  }
  next_.start(0);
}

}  // namespace shimwright::past
