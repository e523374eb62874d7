#pragma once

#include <memory>
#include <optional>

#include <QLockFile>
#include <QString>

#include "shimwright/store/store.h"

namespace shimwright::store {

/// The right to write in a store, for as long as it lives. A second program is told who has it. A lock left by a
/// program of this machine that is gone is taken over; one left by another machine stays until a person breaks it.
class WriterLock {
 public:
  /// Code: `locked`, `cannot_open`.
  [[nodiscard]] static Result<std::unique_ptr<WriterLock>> take(const QString& store_path, const std::string& person,
                                                                std::int64_t now_ms);
  ~WriterLock();
  WriterLock(const WriterLock&) = delete;
  WriterLock& operator=(const WriterLock&) = delete;

 private:
  WriterLock(const QString& lock_path, QString note_path);

  QLockFile lock_;
  QString note_path_;
};

[[nodiscard]] std::optional<LockHolder> holder_of(const QString& store_path);
[[nodiscard]] Result<void> break_lock_of(const QString& store_path, const LockHolder& shown);

}  // namespace shimwright::store
