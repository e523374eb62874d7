#pragma once

#include <functional>

#include <QLocale>
#include <QString>

#include "shimwright/record/page.h"

class QPrinter;

namespace shimwright::past {

/// What the record's page takes from outside, so that a test can fix it.
struct RecordWays {
  /// Lets a person say where the file goes; blank: nowhere.
  std::function<QString(const QString& suggestion)> choose_file;
  /// Lets a person set the printer up; false: not now.
  std::function<bool(QPrinter& printer)> choose_printer;
  record::PaperSize paper = record::PaperSize::a4;
};

/// Letter where people there print on it, else A4.
[[nodiscard]] record::PaperSize paper_of(const QLocale& locale);

/// The dialogs of the toolkit, and the paper of this machine's country.
[[nodiscard]] RecordWays usual_record_ways();

}  // namespace shimwright::past
