#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <sqlite3.h>

/// A disk between SQLite and the real one, and between our own file layer and the system: it fails on demand and writes
/// down what reaches it.
namespace shimwright::store::test {

enum class Fault {
  no_space,
  broken,
  read_only,
  not_permitted,
  removed,  ///< from then on everything fails, reading as well
};

struct DiskEvent {
  enum class Kind { write, truncate, sync, remove };
  Kind kind = Kind::write;
  std::string file;
  std::int64_t offset = 0;  ///< of a truncation: the new size
  std::string bytes;
};

/// Is the default of SQLite in this program while it lives. Does not bring anything to the real disk: what a power cut
/// would leave is worked out from the events.
class FaultyDisk {
 public:
  FaultyDisk();
  ~FaultyDisk();
  FaultyDisk(const FaultyDisk&) = delete;
  FaultyDisk& operator=(const FaultyDisk&) = delete;

  /// The nth call from now on that opens, writes, shortens, syncs, deletes, renames or makes something fails.
  void fail_at(int nth, Fault fault);
  void heal() {
    left_ = 0;
    broken_ = false;
  }
  /// How many calls the one that shall fail is still away.
  [[nodiscard]] int still_to_come() const { return left_; }
  /// Whether a call has failed since fail_at().
  [[nodiscard]] bool has_failed() const { return has_failed_; }

  void record() { recording_ = true; }
  void stop_recording() { recording_ = false; }
  [[nodiscard]] const std::vector<DiskEvent>& events() const { return events_; }

  /// For the calls that pass through. Whether this one fails.
  [[nodiscard]] bool fails();
  [[nodiscard]] bool is_gone() const { return broken_; }
  [[nodiscard]] Fault fault() const { return fault_; }
  void write_down(DiskEvent event);
  [[nodiscard]] sqlite3_vfs* real() const { return real_; }

  /// The one that lives; nothing where none does.
  [[nodiscard]] static FaultyDisk* current();

 private:
  sqlite3_vfs vfs_{};
  sqlite3_vfs* real_;
  int left_ = 0;
  Fault fault_ = Fault::broken;
  bool broken_ = false;
  bool has_failed_ = false;
  bool recording_ = false;
  std::vector<DiskEvent> events_;
};

}  // namespace shimwright::store::test
