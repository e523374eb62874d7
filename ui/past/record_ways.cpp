#include "shimwright/past/record_ways.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QPrintDialog>
#include <QPrinter>
#include <algorithm>
#include <array>

namespace shimwright::past {

record::PaperSize paper_of(const QLocale& locale) {
  constexpr std::array letter = {
      QLocale::UnitedStates, QLocale::Canada,     QLocale::Mexico,     QLocale::Philippines,      QLocale::Chile,
      QLocale::Colombia,     QLocale::Venezuela,  QLocale::PuertoRico, QLocale::CostaRica,        QLocale::Guatemala,
      QLocale::Panama,       QLocale::ElSalvador, QLocale::Nicaragua,  QLocale::DominicanRepublic};
  return std::find(letter.begin(), letter.end(), locale.territory()) != letter.end() ? record::PaperSize::letter
                                                                                     : record::PaperSize::a4;
}

RecordWays usual_record_ways() {
  return {[](const QString& suggestion) {
            return QFileDialog::getSaveFileName(nullptr, QCoreApplication::translate("past", "Save the record as PDF"),
                                                suggestion, QCoreApplication::translate("past", "PDF (*.pdf)"));
          },
          [](QPrinter& printer) {
            QPrintDialog dialog(&printer);
            dialog.setOption(QAbstractPrintDialog::PrintPageRange);
            return dialog.exec() == QDialog::Accepted;
          },
          paper_of(QLocale::system())};
}

}  // namespace shimwright::past
