#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QByteArray>
#include <QTemporaryDir>

#include "shimwright/job/evolve.h"
#include "shimwright/store/registers.h"
#include "shimwright/store/store.h"
#include "workbench_results.h"

/// What the tests of the store work with: a store in a folder of its own, with the shipped sheets and two persons.
namespace shimwright::store::test {

inline constexpr const char* mk = "01930000-0000-7000-8000-000000000031";
inline constexpr const char* rt = "01930000-0000-7000-8000-000000000032";
inline constexpr std::int64_t monday_ms = 1795421400000;

[[nodiscard]] By by_mk(std::int64_t minutes = 0);
[[nodiscard]] std::string shipped(const std::string& name);

class Workbench {
 public:
  Workbench();

  [[nodiscard]] Store& store() { return *store_; }
  [[nodiscard]] std::string path() const;
  [[nodiscard]] QString file(const QString& name) const { return folder_.filePath(name); }
  [[nodiscard]] const std::string& sheet() const { return sheet_; }
  [[nodiscard]] const std::string& spec() const { return spec_; }

  void close() { store_.reset(); }
  void open(Mode mode = Mode::read_write);
  /// Closes, lets somebody without our rules at the file, and opens again. `script` is plain SQL.
  void sabotage(const QByteArray& script);

 private:
  QTemporaryDir folder_;
  std::unique_ptr<Store> store_;
  std::string sheet_;
  std::string spec_;
};

/// A job whose entries are made by hand, one minute apart.
class TestJob {
 public:
  /// `last` keeps the ids of jobs apart; it is two hexadecimal digits.
  TestJob(Workbench& bench, const std::string& last, const std::string& number,
          const std::string& vehicle = "TESTVN009TA030417");

  [[nodiscard]] const std::string& id() const { return id_; }
  [[nodiscard]] const job::JobState& state() const { return state_; }
  [[nodiscard]] const job::Entry& last() const { return state_.entries.back(); }

  /// Opens it; the texts are of plate and customer reference.
  void open(const std::string& plate = "HL-MK 412", const std::string& reference = "Miller/77");
  void add(const job::EntryBody& body);
  [[nodiscard]] Result<void> try_to_add(const std::vector<job::EntryBody>& bodies,
                                        const std::vector<job::PrivateText>& texts = {});

 private:
  Workbench* bench_;
  std::string id_;
  std::string number_;
  std::string vehicle_;
  job::JobState state_;
};

/// One assembly of a side: the shim chosen and the mean float that followed, in micrometre.
void assemble(TestJob& job, int assembly, std::int64_t thickness_um, std::int64_t mean_um);

}  // namespace shimwright::store::test
