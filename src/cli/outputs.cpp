#include "outputs.h"

#include <QFileInfo>
#include <QString>

#include "shimwright/print/pdf_writing.h"
#include "workshop.h"

namespace shimwright::cli {

namespace {

/// The file itself where names lead to the same one.
std::string own_place(const std::string& path) {
  const QFileInfo file(QString::fromStdString(absolute(path)));
  const QString there = file.canonicalFilePath();
  return there.isEmpty() ? absolute(path) : there.toStdString();
}

Result<void> check_record_place(const std::string& path) {
  if (print::is_free_for(path, R"({"format":"shimwright.record")")) {
    return {};
  }
  return refuse(
      "file_in_the_way", path,
      SHIMWRIGHT_TEXT("cli",
                      "Something other than an older record lies there and is not written over; choose another name."));
}

}  // namespace

Result<void> check_outputs(const Arguments& arguments) {
  std::set<std::string> taken;
  if (const auto store = arguments.options.find("store"); store != arguments.options.end()) {
    taken.insert(own_place(store->second));
  }
  for (const char* option : {"pdf", "slip", "record", "json"}) {
    const auto out = arguments.options.find(option);
    if (out == arguments.options.end()) {
      continue;
    }
    if (out->second == "-") {
      return refuse("no_place", std::string("--") + option,
                    SHIMWRIGHT_TEXT("cli", "“-” is no place for a file: name one."));
    }
    if (!taken.insert(own_place(out->second)).second) {
      return refuse("same_place", std::string("--") + option,
                    SHIMWRIGHT_TEXT("cli", "This place is named twice; choose one for each file."));
    }
    const std::string path = absolute(out->second);
    if (auto free = out->first == "json" ? check_record_place(path) : print::check_pdf_place(path); !free) {
      return free;
    }
  }
  return {};
}

}  // namespace shimwright::cli
