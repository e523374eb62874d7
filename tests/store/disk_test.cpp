#include "disk.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include "workbench_results.h"

namespace shimwright::store {

using namespace test;

TEST_CASE("a file system of another machine is known by its name") {
  for (const char* type : {"nfs", "nfs4", "CIFS", "smb3", "fuse.sshfs"}) {
    CHECK(is_network_file_system(type));
  }
  for (const char* type : {"ext4", "btrfs", "xfs", "tmpfs", "overlay", "fuse", ""}) {
    CHECK_FALSE(is_network_file_system(type));
  }
}

TEST_CASE("a folder still to be made lies on the file system of the one above it") {
  const QTemporaryDir folder;
  const QByteArray there = file_system_of(folder.path());
  CHECK_FALSE(there.isEmpty());
  CHECK_FALSE(is_network_file_system(there));
  CHECK(file_system_of(folder.filePath("not/yet")) == there);
  CHECK(file_system_of("/proc/no/such") == "proc");
}

TEST_CASE("what is there already is left as it is") {
  const QTemporaryDir folder;
  QFile file(folder.filePath("a"));
  REQUIRE(file.open(QIODevice::WriteOnly));
  REQUIRE(file.write("kept") == 4);
  file.close();
  went(make_private_file(file.fileName()));
  CHECK(file.size() == 4);
  went(make_private_folder(folder.path()));
  CHECK(QFileInfo::exists(file.fileName()));
}

TEST_CASE("what cannot be made or brought to the disk is told") {
  CHECK(code_of(make_private_file("/proc/no/such/a")) == "cannot_open");
  CHECK(code_of(make_private_folder("/proc/no/such")) == "cannot_open");
  CHECK(code_of(sync_file("/proc/no/such/a")) == "disk_fault");
  CHECK(code_of(sync_folder("/proc/no/such")) == "disk_fault");
  CHECK(code_of(write_whole_file("/proc/no/such/a", "b")) == "disk_fault");
  const QTemporaryDir folder;
  went(sync_folder(folder.path()));
}

TEST_CASE("a file is written whole over what lay there, and nothing else is left") {
  const QTemporaryDir folder;
  const QString path = folder.filePath("a");
  went(write_whole_file(path, "before"));
  went(write_whole_file(path, "after"));
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.readAll() == "after");
  CHECK(QFileInfo(path).permissions().testFlag(QFile::ReadGroup) == false);
  CHECK(QDir(folder.path()).entryList(QDir::Files) == QStringList{"a"});
}

}  // namespace shimwright::store
