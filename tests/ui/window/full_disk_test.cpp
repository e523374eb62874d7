// A whole job on a disk that is full at every key that could store something: one sentence says so, what was typed
// stays, and the same key does it once there is space.
#include <sqlite3.h>
#include <QLabel>
#include <QLineEdit>
#include <algorithm>
#include <catch2/catch.hpp>

#include "bench_window.h"
#include "qt/small_disk.h"
#include "shimwright/store/check.h"

using namespace shimwright;

namespace {

class OnFullDisk : public test::KeyTechnician {
 public:
  OnFullDisk(test::BenchWindow& bench, const test::SmallDisk& disk)
      : KeyTechnician(bench.window(), bench.rig().workbench(), bench.hands()), bench_(&bench), disk_(&disk) {}

  void key(Qt::Key pressed, Qt::KeyboardModifiers modifiers) override {
    if (pressed != Qt::Key_Return) {
      KeyTechnician::key(pressed, modifiers);
      return;
    }
    twice_where_refused([&] { KeyTechnician::key(pressed, modifiers); });
  }

  [[nodiscard]] int refused() const { return refused_; }

 private:
  void digit(int number, const QString& button) override {
    twice_where_refused([&] { KeyTechnician::digit(number, button); });
  }

  void twice_where_refused(const std::function<void()>& press) {
    const std::size_t before = entries();
    const QStringList typed = texts();
    empty_log();
    disk_->fill();
    press();
    disk_->make_space();
    if (sentences() == 0) {
      return;  // the key only went on to the next field
    }
    ++refused_;
    INFO("at step " << step_id());
    CHECK(sentences() == 1);
    CHECK(entries() == before);
    CHECK(texts().join(QLatin1Char(0x20)).toStdString() == typed.join(QLatin1Char(0x20)).toStdString());
    press();
    CHECK(sentences() == 0);
    CHECK(entries() > before);
  }

  /// A log that was written into the store keeps its room on the disk, and the next entries fit into it.
  void empty_log() {
    sqlite3* store = nullptr;
    REQUIRE(sqlite3_open(bench_->rig().store().path().c_str(), &store) == SQLITE_OK);
    sqlite3_exec(store, "PRAGMA wal_checkpoint(TRUNCATE)", nullptr, nullptr, nullptr);
    sqlite3_close(store);
  }
  [[nodiscard]] std::size_t entries() {
    return bench_->rig().workbench().has_job() ? bench_->rig().workbench().state().entries.size() : 0;
  }
  [[nodiscard]] int sentences() const {
    const auto labels = window().findChildren<QLabel*>();
    return static_cast<int>(std::count_if(labels.begin(), labels.end(), [](const QLabel* label) {
      return label->isVisible() && label->text().contains(QStringLiteral("The disk is full"));
    }));
  }
  /// What stands in the fields that are seen.
  [[nodiscard]] QStringList texts() const {
    QStringList all;
    for (const auto* field : window().findChildren<QLineEdit*>()) {
      if (field->isVisible()) {
        all.append(field->objectName() + QLatin1Char('=') + field->text());
      }
    }
    return all;
  }

  test::BenchWindow* bench_;
  const test::SmallDisk* disk_;
  int refused_ = 0;
};

void do_on_full_disk(const std::string& script) {
  const test::SmallDisk disk(24);
  if (!disk.is_mounted()) {
    return;
  }
  test::BenchWindow bench(script);
  OnFullDisk technician(bench, disk);
  bench.do_whole_job(technician, script);
  const job::JobState& done = bench.rig().workbench().state();
  test::check_as_replayed(done, script);
  INFO(technician.refused() << " keys refused, " << done.entries.size() << " entries");
  CHECK(technician.refused() > static_cast<int>(done.entries.size()) / 2);
  const auto found = store::check(bench.rig().store());
  REQUIRE(found);
  CHECK(found->in_order());
}

}  // namespace

TEST_CASE("a whole job by gauge fit is done though the disk is full at every entry of it, once") {
  do_on_full_disk("02-bearing-not-home");
}

TEST_CASE("a whole job by depth is done though the disk is full at every entry of it, once") {
  do_on_full_disk("03-sum-on-the-border");
}
