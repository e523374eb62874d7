#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include <QObject>

#include "shimwright/store/ids.h"
#include "shimwright/store/job_in_hand.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/store.h"

namespace shimwright::bench {

/// The store, the person at the bench and the job in hand: what pages draw from and send their commands to. What it
/// shows of a job is on the disk.
class Workbench : public QObject {
  Q_OBJECT

 public:
  using Clock = std::function<job::Moment()>;

  /// The store must outlive it.
  Workbench(store::Store& store, Clock clock, store::IdSource ids, QObject* parent = nullptr);

  [[nodiscard]] store::Store& store() const { return *store_; }
  [[nodiscard]] store::IdSource& ids() { return ids_; }
  [[nodiscard]] job::Moment now() const { return clock_(); }
  [[nodiscard]] store::By by() const { return {person_.id, clock_()}; }

  [[nodiscard]] const store::Person& person() const { return person_; }
  void set_person(const store::Person& person);
  /// Initials of a person, known or not.
  [[nodiscard]] QString initials_of(const std::string& person_id) const;
  [[nodiscard]] const std::vector<store::Person>& persons() const { return persons_; }
  /// Reads the persons anew.
  [[nodiscard]] Result<void> read_persons();

  /// Takes a stored job in hand. Nothing is written: a parked job stays parked until TakeUp is sent.
  [[nodiscard]] Result<void> take(const std::string& job_id);
  /// Opens a job on these sheets; it is in hand afterwards.
  [[nodiscard]] Result<void> open_new(const std::string& sheet_hash, const std::string& spec_hash,
                                      const job::OpenJob& command);
  void lay_down();

  [[nodiscard]] bool has_job() const { return hand_ != nullptr; }
  /// Of the job in hand; there must be one.
  [[nodiscard]] const std::string& job_id() const { return hand_->id(); }
  [[nodiscard]] const job::JobState& state() const { return hand_->state(); }
  [[nodiscard]] const job::Context& context() const { return context_; }
  [[nodiscard]] bool looks_only() const { return store_->looks_only(); }

  /// Decides, stores, and only then shows. changed() is sent where entries followed.
  [[nodiscard]] Result<std::vector<job::Entry>> send(const job::Command& command);

 signals:
  void changed();
  void person_changed();

 private:
  [[nodiscard]] Result<void> read_context();

  store::Store* store_;
  Clock clock_;
  store::IdSource ids_;
  store::Person person_;
  std::vector<store::Person> persons_;
  std::unique_ptr<store::JobInHand> hand_;
  job::Context context_;
};

}  // namespace shimwright::bench
