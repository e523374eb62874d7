#pragma once

#include <cerrno>
#include <cstring>
#include <iostream>
#include <string>

#include <QFile>
#include <QTemporaryDir>

#include <catch2/catch.hpp>

#include <fcntl.h>
#include <sys/mount.h>
#include <unistd.h>

namespace shimwright::test {

/// Mounted while it lives; temporary folders lie on it.
class SmallDisk {
 public:
  explicit SmallDisk(int megabytes = 8) : temporary_before_(qgetenv("TMPDIR")) {
    mounted_ =
        ::mount("tmpfs", name().constData(), "tmpfs", 0, ("size=" + std::to_string(megabytes) + "m").c_str()) == 0;
    if (mounted_) {
      qputenv("TMPDIR", name());
    } else {
      // CTest knows by these words that nothing was tested.
      std::cout << "A small file system may not be mounted here: " << std::strerror(errno) << '\n';
    }
  }
  ~SmallDisk() {
    if (mounted_) {
      qputenv("TMPDIR", temporary_before_);
      ::umount(name().constData());
    }
  }
  SmallDisk(const SmallDisk&) = delete;
  SmallDisk& operator=(const SmallDisk&) = delete;

  [[nodiscard]] bool is_mounted() const { return mounted_; }

  void fill() const {
    const int file = ::open(filler().constData(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, S_IRUSR | S_IWUSR);
    REQUIRE(file >= 0);
    const QByteArray page(4096, 'x');
    while (::write(file, page.constData(), size_t(page.size())) > 0) {
    }
    CHECK(errno == ENOSPC);
    ::close(file);
  }
  void make_space() const { REQUIRE(::unlink(filler().constData()) == 0); }

 private:
  [[nodiscard]] QByteArray name() const { return QFile::encodeName(folder_.path()); }
  [[nodiscard]] QByteArray filler() const { return QFile::encodeName(folder_.filePath(QStringLiteral("filler"))); }

  QTemporaryDir folder_;
  QByteArray temporary_before_;
  bool mounted_ = false;
};

}  // namespace shimwright::test
