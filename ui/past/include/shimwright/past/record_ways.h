#pragma once

#include <functional>
#include <string>

#include <QLocale>
#include <QString>

#include "shimwright/record/page.h"
#include "shimwright/store/signing.h"

class QPrinter;

namespace shimwright::past {

/// Who signs, how, and where the signed file goes.
struct SealWays {
  std::function<store::By()> by = {};  ///< none: nothing is sealed here
  store::SigningRules rules = {};
  /// Where backups go; blank: nowhere.
  std::function<std::string()> folder = [] { return std::string(); };
};

/// What the record's page takes from outside, so that a test can fix it.
struct RecordWays {
  /// Lets a person say where the file goes; blank: nowhere.
  std::function<QString(const QString& suggestion)> choose_file;
  /// Lets a person set the printer up; false: not now.
  std::function<bool(QPrinter& printer)> choose_printer;
  record::PaperSize paper = record::PaperSize::a4;
  SealWays seal = {};
};

/// Letter where people there print on it, else A4.
[[nodiscard]] record::PaperSize paper_of(const QLocale& locale);

/// The dialogs of the toolkit, and the paper of this machine's country.
[[nodiscard]] RecordWays usual_record_ways();

}  // namespace shimwright::past
