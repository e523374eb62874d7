// The linker leads the calls that our own sources make of the system through here (--wrap). SQLite and Qt are not led.
#include <cerrno>
#include <cstdarg>
#include <cstdio>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "faulty_disk.h"

namespace {

using shimwright::store::test::Fault;
using shimwright::store::test::FaultyDisk;

bool fails() {
  FaultyDisk* disk = FaultyDisk::current();
  if (disk == nullptr || !disk->fails()) {
    return false;
  }
  switch (disk->fault()) {
    case Fault::no_space:
      errno = ENOSPC;
      break;
    case Fault::read_only:
      errno = EROFS;
      break;
    case Fault::not_permitted:
      errno = EACCES;
      break;
    default:
      errno = EIO;
      break;
  }
  return true;
}

}  // namespace

extern "C" {

int __real_open(const char* path, int flags, ...);
int __real_mkdir(const char* path, mode_t mode);
int __real_rename(const char* from, const char* to);
int __real_fsync(int file);
int __real_ftruncate(int file, off_t size);
ssize_t __real_write(int file, const void* bytes, size_t count);
ssize_t __real_pwrite(int file, const void* bytes, size_t count, off_t offset);

int __wrap_open(const char* path, int flags, ...) {
  va_list rest;
  va_start(rest, flags);
  const mode_t mode = (flags & O_CREAT) != 0 ? static_cast<mode_t>(va_arg(rest, int)) : 0;
  va_end(rest);
  return fails() ? -1 : __real_open(path, flags, mode);
}
int __wrap_mkdir(const char* path, mode_t mode) {
  return fails() ? -1 : __real_mkdir(path, mode);
}
int __wrap_rename(const char* from, const char* to) {
  return fails() ? -1 : __real_rename(from, to);
}
int __wrap_fsync(int file) {
  if (FaultyDisk::current() == nullptr) {
    return __real_fsync(file);
  }
  return fails() ? -1 : 0;
}
int __wrap_ftruncate(int file, off_t size) {
  return fails() ? -1 : __real_ftruncate(file, size);
}
// A full disk takes a part before it takes nothing.
ssize_t __wrap_write(int file, const void* bytes, size_t count) {
  return fails() ? -1 : __real_write(file, bytes, count > 1 ? count / 2 : count);
}
ssize_t __wrap_pwrite(int file, const void* bytes, size_t count, off_t offset) {
  return fails() ? -1 : __real_pwrite(file, bytes, count, offset);
}
}
