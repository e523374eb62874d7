#pragma once

#include <QObject>

#include "shimwright/shell/notices.h"
#include "shimwright/shell/settings.h"
#include "shimwright/store/photo_shelf.h"
#include "shimwright/store/store.h"
#include "shimwright/widgets/background_work.h"

namespace shimwright::shell {

/// Looks beside the window whether every photo of the store lies where it is to lie, tells those that do not, and
/// offers to bring them back from the last backup.
class PhotoWatch : public QObject {
  Q_OBJECT

 public:
  /// The three must outlive it.
  PhotoWatch(const store::Store& store, const Settings& settings, Notices& notices, QObject* parent = nullptr);
  /// While something is under way it does nothing.
  void look();
  [[nodiscard]] bool works() const { return work_->runs(); }

 private:
  void bring_back(const QString& backup);
  void tell_missing(const store::MissingPhotos& found);
  void tell_brought(const store::PhotosBrought& brought);
  void tell(const QString& sentence);

  const store::Store* store_;
  const Settings* settings_;
  Notices* notices_;
  widgets::BackgroundWork* work_;
};

}  // namespace shimwright::shell
