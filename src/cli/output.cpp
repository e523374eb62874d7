#include "output.h"

#include <QFile>
#include <QString>
#include <cstdio>

namespace shimwright::cli {

namespace {

void put(std::FILE* stream, std::string_view line) {
  std::string bytes(line);
  bytes += '\n';
  std::fwrite(bytes.data(), 1, bytes.size(), stream);
  std::fflush(stream);
}

}  // namespace

void say(std::string_view line) {
  put(stdout, line);
}

void complain(std::string_view line) {
  put(stderr, line);
}

Exit refused(const Error& error) {
  complain(error.in_english());
  return Exit::refused;
}

Exit failed(const Error& error) {
  complain(error.in_english());
  return Exit::off;
}

Result<std::string> read_file(const std::string& path) {
  QFile file(QString::fromStdString(path));
  const bool open = path == "-" ? file.open(stdin, QIODevice::ReadOnly) : file.open(QIODevice::ReadOnly);
  if (!open) {
    return refuse("cannot_read", path,
                  SHIMWRIGHT_TEXT("cli", "This file cannot be read: look whether it is there and may be read."));
  }
  constexpr qint64 most = qint64{64} * 1024 * 1024;
  const QByteArray bytes = file.read(most + 1);
  if (bytes.size() > most) {
    return refuse("too_large", path, SHIMWRIGHT_TEXT("cli", "This file is larger than 64 MiB: it is none of ours."));
  }
  if (file.error() != QFileDevice::NoError) {
    return refuse("cannot_read", path,
                  SHIMWRIGHT_TEXT("cli", "This file broke off while it was read: look at the disk."));
  }
  return bytes.toStdString();
}

}  // namespace shimwright::cli
