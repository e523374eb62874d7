#pragma once

#include <memory>
#include <optional>

#include <QString>

#include "shimwright/store/store.h"

namespace shimwright::store {

/// The right to write in a store, for as long as it lives. A second program is told who has it. A lock left by a
/// program of this machine that is gone is taken over; one left by another machine stays until a person breaks it.
///
/// The right is a lock of the system on the open file `<store>.lock`, so it ends with the program however that ends.
/// The file itself says who, and stays where it is, empty, when nobody writes: what would take it away by its name
/// could take away the next writer's.
class WriterLock {
 public:
  /// Code: `locked`, `cannot_open`, `disk_full`.
  [[nodiscard]] static Result<std::unique_ptr<WriterLock>> take(const QString& store_path, const std::string& person,
                                                                std::int64_t now_ms);
  ~WriterLock();
  WriterLock(const WriterLock&) = delete;
  WriterLock& operator=(const WriterLock&) = delete;

 private:
  explicit WriterLock(int file) : file_(file) {}

  int file_;
};

[[nodiscard]] std::optional<LockHolder> holder_of(const QString& store_path);
[[nodiscard]] Result<void> break_lock_of(const QString& store_path, const LockHolder& shown);

}  // namespace shimwright::store
