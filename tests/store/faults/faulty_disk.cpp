#include "faulty_disk.h"

#include <cstring>
#include <new>
#include <utility>

namespace shimwright::store::test {

namespace {

// SQLite and the linker's wrappers call plain functions, so what they look at cannot be handed in.
FaultyDisk*& living() {
  static FaultyDisk* one = nullptr;
  return one;
}

/// SQLite gives the room; the real file follows behind.
struct ShimFile {
  sqlite3_file base;
  FaultyDisk* disk;
  std::string* path;
};

ShimFile& shim(sqlite3_file* file) {
  return *reinterpret_cast<ShimFile*>(file);
}

sqlite3_file* real(sqlite3_file* file) {
  return reinterpret_cast<sqlite3_file*>(&shim(file) + 1);
}

int code_of_fault(Fault fault, int of_the_call) {
  switch (fault) {
    case Fault::no_space:
      return of_the_call == SQLITE_IOERR_WRITE ? SQLITE_FULL : of_the_call;
    case Fault::read_only:
      return of_the_call == SQLITE_CANTOPEN ? of_the_call : SQLITE_READONLY;
    case Fault::not_permitted:
      return of_the_call == SQLITE_CANTOPEN ? of_the_call : SQLITE_PERM;
    default:
      return of_the_call;
  }
}

int close(sqlite3_file* file) {
  delete shim(file).path;
  return real(file)->pMethods == nullptr ? SQLITE_OK : real(file)->pMethods->xClose(real(file));
}

int read(sqlite3_file* file, void* into, int amount, sqlite3_int64 offset) {
  return shim(file).disk->is_gone() ? SQLITE_IOERR_READ : real(file)->pMethods->xRead(real(file), into, amount, offset);
}

int write(sqlite3_file* file, const void* from, int amount, sqlite3_int64 offset) {
  FaultyDisk& disk = *shim(file).disk;
  if (disk.fails()) {
    return code_of_fault(disk.fault(), SQLITE_IOERR_WRITE);
  }
  disk.write_down({DiskEvent::Kind::write, *shim(file).path, offset,
                   std::string(static_cast<const char*>(from), static_cast<std::size_t>(amount))});
  return real(file)->pMethods->xWrite(real(file), from, amount, offset);
}

int truncate(sqlite3_file* file, sqlite3_int64 size) {
  FaultyDisk& disk = *shim(file).disk;
  if (disk.fails()) {
    return code_of_fault(disk.fault(), SQLITE_IOERR_TRUNCATE);
  }
  disk.write_down({DiskEvent::Kind::truncate, *shim(file).path, size, {}});
  return real(file)->pMethods->xTruncate(real(file), size);
}

int sync(sqlite3_file* file, int /*how*/) {
  FaultyDisk& disk = *shim(file).disk;
  if (disk.fails()) {
    return code_of_fault(disk.fault(), SQLITE_IOERR_FSYNC);
  }
  disk.write_down({DiskEvent::Kind::sync, *shim(file).path, 0, {}});
  return SQLITE_OK;
}

int file_size(sqlite3_file* file, sqlite3_int64* size) {
  return shim(file).disk->is_gone() ? SQLITE_IOERR_FSTAT : real(file)->pMethods->xFileSize(real(file), size);
}

int lock(sqlite3_file* file, int kind) {
  return real(file)->pMethods->xLock(real(file), kind);
}

int unlock(sqlite3_file* file, int kind) {
  return real(file)->pMethods->xUnlock(real(file), kind);
}

int check_reserved(sqlite3_file* file, int* out) {
  return real(file)->pMethods->xCheckReservedLock(real(file), out);
}

int control(sqlite3_file* file, int what, void* argument) {
  return real(file)->pMethods->xFileControl(real(file), what, argument);
}

int sector_size(sqlite3_file* file) {
  return real(file)->pMethods->xSectorSize(real(file));
}

// Nothing promised that this disk would not keep: pages may be torn, writes may change places.
int characteristics(sqlite3_file* /*file*/) {
  return 0;
}

int shm_map(sqlite3_file* file, int page, int size, int extend, void volatile** out) {
  // A plain "read only" would mean here that others write and this one looks, which no fault is.
  if (shim(file).disk->fails()) {
    return SQLITE_IOERR_SHMMAP;
  }
  return real(file)->pMethods->xShmMap(real(file), page, size, extend, out);
}

int shm_lock(sqlite3_file* file, int offset, int count, int flags) {
  return real(file)->pMethods->xShmLock(real(file), offset, count, flags);
}

void shm_barrier(sqlite3_file* file) {
  real(file)->pMethods->xShmBarrier(real(file));
}

int shm_unmap(sqlite3_file* file, int remove) {
  return real(file)->pMethods->xShmUnmap(real(file), remove);
}

constexpr sqlite3_io_methods methods = {
    2,         close,          read,    write,       truncate,        sync,    file_size, lock,
    unlock,    check_reserved, control, sector_size, characteristics, shm_map, shm_lock,  shm_barrier,
    shm_unmap, nullptr,        nullptr};

FaultyDisk& disk_of(sqlite3_vfs* vfs) {
  return *static_cast<FaultyDisk*>(vfs->pAppData);
}

int open(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* out_flags) {
  FaultyDisk& disk = disk_of(vfs);
  file->pMethods = nullptr;
  if (disk.fails()) {
    return SQLITE_CANTOPEN;
  }
  std::memset(real(file), 0, sizeof(sqlite3_file));
  const int code = disk.real()->xOpen(disk.real(), name, real(file), flags, out_flags);
  if (code == SQLITE_OK) {
    shim(file).disk = &disk;
    shim(file).path = new std::string(name == nullptr ? "" : name);
    file->pMethods = &methods;
  }
  return code;
}

int remove(sqlite3_vfs* vfs, const char* name, int sync_folder) {
  FaultyDisk& disk = disk_of(vfs);
  if (disk.fails()) {
    return code_of_fault(disk.fault(), SQLITE_IOERR_DELETE);
  }
  disk.write_down({DiskEvent::Kind::remove, name, sync_folder, {}});
  return disk.real()->xDelete(disk.real(), name, 0);
}

}  // namespace

FaultyDisk::FaultyDisk() : real_(sqlite3_vfs_find(nullptr)) {
  vfs_ = *real_;
  vfs_.zName = "faulty";
  vfs_.pNext = nullptr;
  vfs_.pAppData = this;
  vfs_.szOsFile = static_cast<int>(sizeof(ShimFile)) + real_->szOsFile;
  vfs_.xOpen = open;
  vfs_.xDelete = remove;
  vfs_.xAccess = [](sqlite3_vfs* vfs, const char* name, int flags, int* out) {
    return disk_of(vfs).is_gone() ? SQLITE_IOERR_ACCESS
                                  : disk_of(vfs).real()->xAccess(disk_of(vfs).real(), name, flags, out);
  };
  vfs_.xFullPathname = [](sqlite3_vfs* vfs, const char* name, int size, char* out) {
    return disk_of(vfs).real()->xFullPathname(disk_of(vfs).real(), name, size, out);
  };
  sqlite3_vfs_register(&vfs_, 1);
  living() = this;
}

FaultyDisk::~FaultyDisk() {
  sqlite3_vfs_unregister(&vfs_);
  sqlite3_vfs_register(real_, 1);
  living() = nullptr;
}

FaultyDisk* FaultyDisk::current() {
  return living();
}

void FaultyDisk::fail_at(int nth, Fault fault) {
  left_ = nth;
  fault_ = fault;
  broken_ = false;
  has_failed_ = false;
}

bool FaultyDisk::fails() {
  if (broken_) {
    return true;
  }
  if (left_ == 0 || --left_ != 0) {
    return false;
  }
  has_failed_ = true;
  broken_ = fault_ == Fault::removed;
  return true;
}

void FaultyDisk::write_down(DiskEvent event) {
  if (recording_) {
    events_.push_back(std::move(event));
  }
}

}  // namespace shimwright::store::test
