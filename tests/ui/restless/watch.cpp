#include "watch.h"

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <cstdlib>

#include <pthread.h>
#include <utility>

// Only where a sanitizer is at work.
extern "C" __attribute__((weak)) void __sanitizer_set_death_callback(void (*callback)());

namespace shimwright::test {

namespace {

constexpr std::size_t kept_actions = 80;

// A sanitizer and a signal hand nothing over.
const Watch* watching = nullptr;

void tell_last() {
  if (const Watch* watch = std::exchange(watching, nullptr); watch != nullptr) {
    watch->tell();
  }
}

void tell_and_die(int signal) {
  tell_last();
  std::signal(signal, SIG_DFL);
  std::raise(signal);
}

}  // namespace

Watch::Watch(std::string about, std::chrono::seconds longest) : about_(std::move(about)), longest_(longest) {
  ::pthread_getcpuclockid(::pthread_self(), &work_clock_);
  worked_before_ = worked();
  thread_ = std::thread([this] { look(); });
  watching = this;
  if (__sanitizer_set_death_callback != nullptr) {
    __sanitizer_set_death_callback(&tell_last);
  } else {
    std::signal(SIGSEGV, &tell_and_die);
  }
  std::signal(SIGABRT, &tell_and_die);
}

Watch::~Watch() {
  watching = nullptr;
  {
    const std::lock_guard lock(mutex_);
    over_ = true;
  }
  ends_.notify_all();
  thread_.join();
}

void Watch::note(const std::string& action) {
  const std::lock_guard lock(mutex_);
  const auto now = worked();
  longest_turn_ = std::max(longest_turn_, std::chrono::duration_cast<std::chrono::milliseconds>(now - worked_before_));
  worked_before_ = now;
  since_ = std::chrono::steady_clock::now();
  ++count_;
  last_.push_back(std::to_string(count_) + " " + action);
  if (last_.size() > kept_actions) {
    last_.pop_front();
  }
}

void Watch::tell() const {
  // Whoever holds it may be the one that hangs.
  const std::unique_lock lock(mutex_, std::try_to_lock);
  std::fprintf(stderr, "%s\nWhat was done last:\n", about_.c_str());
  for (const std::string& each : last_) {
    std::fprintf(stderr, "  %s\n", each.c_str());
  }
}

std::chrono::nanoseconds Watch::worked() const {
  struct timespec time = {};
  ::clock_gettime(work_clock_, &time);
  return std::chrono::seconds(time.tv_sec) + std::chrono::nanoseconds(time.tv_nsec);
}

void Watch::look() {
  std::unique_lock lock(mutex_);
  while (!ends_.wait_for(lock, std::chrono::milliseconds(200), [this] { return over_; })) {
    if (worked() - worked_before_ > longest_ || std::chrono::steady_clock::now() - since_ > 12 * longest_) {
      std::fprintf(stderr, "The window did not answer for %lld s.\n", static_cast<long long>(longest_.count()));
      lock.unlock();
      std::abort();
    }
  }
}

}  // namespace shimwright::test
