#include "blank_sheet.h"

#include <QLocale>

#include "shimwright/print/page_painter.h"
#include "shimwright/print/pdf.h"
#include "shimwright/record/blank_sheet.h"
#include "shimwright/store/registers.h"
#include "shimwright/widgets/say.h"

namespace shimwright::workshop {

Result<void> save_blank_sheet(store::Store& store, const sheet::JobSheet& sheet, const std::string& path,
                              record::PaperSize paper) {
  const auto fonts = print::load_fonts();
  if (!fonts) {
    return tl::make_unexpected(fonts.error());
  }
  const auto workshop = store.registers().workshop();
  if (!workshop) {
    return tl::make_unexpected(workshop.error());
  }
  record::PaperHead head;
  if (const std::optional<store::Workshop>& known = *workshop) {
    head = {known->name, known->address};
  }
  const record::PaperLanguage language{QLocale().name().section(QLatin1Char('_'), 0, 0).toStdString(),
                                       [](const Message& message) { return widgets::plain(widgets::say(message)); }};
  auto pages = record::lay_out_blank_sheet(sheet, head, language, paper, print::FontMeasure(*fonts));
  return print::write_pdf({sheet.title.in(language.code), std::move(pages)}, path, paper, *fonts);
}

}  // namespace shimwright::workshop
