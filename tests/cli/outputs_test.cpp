#include "outputs.h"

#include <catch2/catch.hpp>

#include <QFile>
#include <QTemporaryDir>

using namespace shimwright;

namespace {

struct Folder {
  QTemporaryDir folder;

  std::string path(const char* name) const { return folder.filePath(QLatin1String(name)).toStdString(); }
  std::string put(const char* name, const QByteArray& content) const {
    QFile file(folder.filePath(QLatin1String(name)));
    REQUIRE(file.open(QIODevice::WriteOnly));
    REQUIRE(file.write(content) == content.size());
    return path(name);
  }
};

std::string refused(const std::map<std::string, std::string>& options) {
  const auto checked = cli::check_outputs({{}, options, {}});
  return checked ? "free" : checked.error().code;
}

}  // namespace

TEST_CASE("a file is written over by one of its own kind alone") {
  const Folder it;
  const std::string pdf = it.put("a.pdf", "%PDF-1.4 …");
  const std::string record = it.put("a.json", R"({"format":"shimwright.record","min_reader":1})");
  const std::string store = it.put("a.shimwright", "SQLite format 3");
  for (const char* option : {"pdf", "slip", "record"}) {
    CHECK(refused({{option, pdf}}) == "free");
    CHECK(refused({{option, record}}) == "file_in_the_way");
    CHECK(refused({{option, store}}) == "file_in_the_way");
    CHECK(refused({{option, it.put("empty", "")}}) == "free");
    CHECK(refused({{option, it.path("new")}}) == "free");
    CHECK(refused({{option, "-"}}) == "no_place");
  }
  CHECK(refused({{"json", record}}) == "free");
  CHECK(refused({{"json", pdf}}) == "file_in_the_way");
  CHECK(refused({{"json", store}}) == "file_in_the_way");
}

TEST_CASE("each file has a place of its own, and none is the store's") {
  const Folder it;
  CHECK(refused({{"store", it.path("w")}, {"record", it.path("w")}}) == "same_place");
  CHECK(refused({{"pdf", it.path("r")}, {"json", it.path("./r")}}) == "same_place");
  CHECK(refused({{"pdf", it.path("r")}, {"json", it.path("s")}, {"store", it.path("w")}}) == "free");
  const std::string pdf = it.put("a.pdf", "%PDF-1.4");
  REQUIRE(QFile::link(QString::fromStdString(pdf), QString::fromStdString(it.path("link.pdf"))));
  CHECK(refused({{"pdf", pdf}, {"slip", it.path("link.pdf")}}) == "same_place");
}
