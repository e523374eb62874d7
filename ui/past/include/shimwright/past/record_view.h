#pragma once

#include <map>
#include <optional>
#include <string>

#include <QString>
#include <QWidget>

#include "shimwright/past/record_ways.h"
#include "shimwright/print/fonts.h"
#include "shimwright/record/record.h"
#include "shimwright/store/store.h"

class QLabel;
class QScrollArea;

namespace shimwright::widgets {
class BackgroundWork;
class Button;
}  // namespace shimwright::widgets

namespace shimwright::past {

class PageColumn;
class SealBox;
class PageRun;
struct PageSteps;

/// The record of a job as it will be printed, to read through, to save as PDF and to print. A file is written, and
/// photos are read, in threads of their own; printing goes page by page between the events of the window.
class RecordView : public QWidget {
  Q_OBJECT

 public:
  /// The store must outlive it.
  explicit RecordView(store::Store& store, QWidget* parent = nullptr)
      : RecordView(store, usual_record_ways(), parent) {}
  RecordView(store::Store& store, RecordWays ways, QWidget* parent = nullptr);
  ~RecordView() override;

  /// A job that cannot be read is said so in place.
  void show_job(const std::string& job);

 signals:
  void back();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  /// What is said while pages are drawn (`page %1 of %2`) and after.
  struct RunTexts {
    QString page;
    QString done;
    QString stopped;
  };

  void build();
  void show_pages();
  [[nodiscard]] QWidget* bar();
  [[nodiscard]] QWidget* state_line();
  void save();
  void print();
  void print_slip();
  void show_photos(bool shown);
  void read_pictures();
  void put_pictures(bool shown, std::map<std::string, std::string> pictures);
  void save_to(const QString& path);
  void stop();
  void say_end(bool finished);
  void allow(bool printing);
  void show_record(record::Record record);
  /// Whatever is printed from now on is printed again.
  void first_print_is_made();
  [[nodiscard]] QString suggested_file() const;
  void run(PageSteps steps, RunTexts texts);
  void show_run(bool runs);
  void say_result(const QString& text, bool good);
  void say_page();
  void scroll_by_view(int direction);
  void set_fits(bool fits);
  void zoom();

  store::Store* store_;
  Result<print::Fonts> fonts_;
  RecordWays ways_;
  std::optional<record::Record> record_;
  std::string job_;
  SealBox* seal_ = nullptr;
  bool just_sealed_ = false;  ///< what is printed now is no reprint
  PageRun* run_;
  widgets::BackgroundWork* writing_;
  widgets::BackgroundWork* reading_;
  PageColumn* pages_;
  QScrollArea* area_;
  QLabel* title_;
  QLabel* place_;
  QLabel* result_;
  widgets::Button* zoom_;
  widgets::Button* save_;
  widgets::Button* photos_;
  widgets::Button* slip_;
  widgets::Button* print_;
  widgets::Button* stop_;
  bool fits_ = true;
  RunTexts texts_;
};

}  // namespace shimwright::past
