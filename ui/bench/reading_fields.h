#pragma once

#include <map>
#include <string>
#include <vector>

#include "instrument_box.h"
#include "kept_line.h"
#include "shimwright/bench/workbench.h"
#include "shimwright/widgets/number_field.h"
#include "signed_field.h"

namespace shimwright::bench {

/// The fields of some channels, with their limits, what is kept of each beside it, and the instruments they are read
/// with. Enter goes to the next field and, at the last one, says that all is typed.
class ReadingFields : public QWidget {
  Q_OBJECT

 public:
  /// The channels must outlive it.
  ReadingFields(Workbench& bench, const std::vector<const sheet::Channel*>& channels, QWidget* parent);

  /// Instruments as they are now; one used before in this job is taken first.
  void refresh();
  /// Beside the field of that channel. A channel of which something is kept may be left blank.
  void show_kept(const std::string& channel, widgets::Mark mark, const QString& words, bool bad);

  [[nodiscard]] bool blank() const;
  /// Every field that is not blank can be read; else the reader's sentence stands below the first that cannot.
  [[nodiscard]] bool readable();
  /// Says at the first field that there is nothing to keep.
  void ask_for_number();
  [[nodiscard]] std::vector<job::TypedReading> typed() const;
  void clear();
  void take_focus();
  /// Into the first blank field, as if typed there and ended with Enter. False: no field is blank.
  [[nodiscard]] bool take_burst(const std::string& text);
  /// A refusal that names a channel stands below its field. False: it names none.
  [[nodiscard]] bool show_refusal(const Error& error);

 signals:
  void edited();
  void completed();  ///< Enter in the last field, and what is not kept yet is typed and can be read

 private:
  struct Row {
    const sheet::Channel* channel = nullptr;
    SignedField* with_sign = nullptr;  ///< nullptr: the number has no sign of its own
    widgets::NumberField* number = nullptr;
    KeptLine* kept = nullptr;
    bool has_kept = false;
  };

  void add_field(const sheet::Channel& channel);
  void add_instrument(const sheet::Channel& channel);
  void go_on_from(std::size_t at);
  void complete();
  [[nodiscard]] std::string last_used(sheet::InstrumentKind kind) const;

  Workbench* bench_;
  QVBoxLayout* column_;
  std::vector<Row> rows_;
  std::map<sheet::InstrumentKind, InstrumentBox*> instruments_;
  bool offered_ = false;
};

}  // namespace shimwright::bench
