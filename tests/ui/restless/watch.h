#pragma once

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <cstdint>
#include <deque>
#include <mutex>
#include <string>
#include <thread>

#include <ctime>

/// Keeps what was done last, and ends the program with it where the window does not answer any more: its thread has
/// worked for that long in one turn of the event loop, or waited for twelve times as long. Made in that thread.
namespace shimwright::test {

class Watch {
 public:
  /// `longest`: what one turn of the event loop may take.
  Watch(std::string about, std::chrono::seconds longest);
  ~Watch();
  Watch(const Watch&) = delete;
  Watch& operator=(const Watch&) = delete;

  /// A turn begins with this.
  void note(const std::string& action);
  /// What was done last, and what run it was.
  void tell() const;
  [[nodiscard]] std::int64_t count() const { return count_; }
  /// Of work.
  [[nodiscard]] std::chrono::milliseconds longest_turn() const { return longest_turn_; }

 private:
  void look();
  [[nodiscard]] std::chrono::nanoseconds worked() const;

  std::string about_;
  std::chrono::seconds longest_;
  mutable std::mutex mutex_;
  std::condition_variable ends_;
  bool over_ = false;
  std::deque<std::string> last_;
  clockid_t work_clock_ = CLOCK_THREAD_CPUTIME_ID;
  std::chrono::steady_clock::time_point since_ = std::chrono::steady_clock::now();
  std::chrono::nanoseconds worked_before_{0};
  std::chrono::milliseconds longest_turn_{0};
  std::atomic<std::int64_t> count_ = 0;
  std::thread thread_;
};

}  // namespace shimwright::test
