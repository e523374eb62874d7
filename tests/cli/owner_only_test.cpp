#include "owner_only.h"

#include <QDir>
#include <QFile>
#include <QSettings>
#include <QTemporaryDir>

#include <catch2/catch.hpp>

#include <sys/resource.h>
#include <sys/stat.h>

using namespace shimwright;

namespace {

/// The mask and the limit of the test program are as before when this goes.
class AsBefore {
 public:
  AsBefore() : mask_(::umask(0)) { ::getrlimit(RLIMIT_CORE, &limit_); }
  ~AsBefore() {
    ::umask(mask_);
    ::setrlimit(RLIMIT_CORE, &limit_);
  }
  AsBefore(const AsBefore&) = delete;
  AsBefore& operator=(const AsBefore&) = delete;

 private:
  mode_t mask_;
  struct rlimit limit_ = {};
};

mode_t rights_of(const QString& path) {
  struct stat seen = {};
  REQUIRE(::stat(QFile::encodeName(path).constData(), &seen) == 0);
  return seen.st_mode & 0777U;
}

}  // namespace

TEST_CASE("what is made from here on is for its owner alone, whatever the mask was") {
  const AsBefore before;
  const QTemporaryDir folder;
  cli::keep_to_owner();
  QFile file(folder.filePath("record.pdf"));
  REQUIRE(file.open(QIODevice::WriteOnly));
  CHECK(rights_of(file.fileName()) == 0600U);
  REQUIRE(QDir().mkpath(folder.filePath("one/two")));
  CHECK(rights_of(folder.filePath("one")) == 0700U);
  CHECK(rights_of(folder.filePath("one/two")) == 0700U);
  QSettings settings(folder.filePath("three/settings.ini"), QSettings::IniFormat);
  settings.setValue("a", 1);
  settings.sync();
  CHECK(rights_of(folder.filePath("three")) == 0700U);
  CHECK(rights_of(folder.filePath("three/settings.ini")) == 0600U);
}

TEST_CASE("a crash leaves no image of the memory") {
  const AsBefore before;
  cli::keep_to_owner();
  struct rlimit limit = {1, 1};
  REQUIRE(::getrlimit(RLIMIT_CORE, &limit) == 0);
  CHECK(limit.rlim_cur == 0);
  CHECK(limit.rlim_max == 0);
}
