#include "sheets.h"

#include <QDir>
#include <QFile>
#include <QStringList>

namespace shimwright::cli {

namespace {

Result<std::string> shipped(const char* folder, const std::string& name) {
  const QDir all(QStringLiteral(":/shimwright/data/") + QLatin1String(folder));
  const QString wanted = QString::fromStdString(name) + QLatin1String(".json");
  QStringList names;
  for (const QString& each : all.entryList(QDir::Files, QDir::Name)) {
    if (each == wanted) {
      QFile file(all.filePath(each));
      if (file.open(QIODevice::ReadOnly)) {
        return file.readAll().toStdString();
      }
    }
    names << each.chopped(5);
  }
  return refuse("unknown_sheet", name, SHIMWRIGHT_TEXT("cli", "There is no such sheet; there are {0}."),
                {names.join(QLatin1String(", ")).toStdString()});
}

}  // namespace

Result<std::string> shipped_job_sheet(const std::string& name) {
  return shipped("sheets", name);
}

Result<std::string> shipped_spec_sheet(const std::string& name) {
  return shipped("specs", name);
}

}  // namespace shimwright::cli
