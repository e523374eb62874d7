#pragma once

#include <functional>
#include <optional>

#include <QObject>
#include <QTimer>

#include "shimwright/quantity/error.h"

namespace shimwright::past {

/// What draws pages, one at a time; it may hold what it draws into.
struct PageSteps {
  int pages = 0;
  std::function<Result<void>()> next;    ///< called once a page
  std::function<Result<void>()> finish;  ///< after the last
};

/// Goes through pages between the events of the window, so that the window stays usable and it can be stopped at any
/// page. What it was given is let go of when it ends, so that it can clean up after itself.
class PageRun : public QObject {
  Q_OBJECT

 public:
  explicit PageRun(QObject* parent = nullptr);

  [[nodiscard]] bool runs() const { return steps_.has_value(); }
  /// One run at a time: there must be none.
  void begin(PageSteps steps);
  /// Ends it before the next page; stopped() follows at once.
  void stop();

 signals:
  void came_to(int page, int of_all);  ///< before the page is drawn
  void done();
  void stopped();
  void failed(const shimwright::Error& error);

 private:
  void step();

  std::optional<PageSteps> steps_;
  int drawn_ = 0;
  QTimer next_;  ///< runs out once the window had its events
};

}  // namespace shimwright::past
