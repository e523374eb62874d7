#include "private_texts.h"

#include "register_history.h"
#include "search_index.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

namespace {

// The salt goes as well: with it a short text such as a plate could be found again by trying all.
Result<void> erase_within(Connection& connection, const std::string& id, const By& by) {
  auto erased = connection.execute("UPDATE private_text SET text = NULL, salt = NULL WHERE id = ?", {id});
  if (!erased) {
    return erased;
  }
  if (connection.changes() == 0) {
    return refuse("unknown_text", id, SHIMWRIGHT_TEXT("store", "This personal text is not in the store."));
  }
  if (auto removed = remove_search_terms_of(connection, id); !removed) {
    return removed;
  }
  return add_change(connection, "private_text", id, nlohmann::json{{"erased", true}}, by);
}

/// What was erased still stands in the log until that is emptied, and it is not while somebody reads there.
Result<void> empty_log(Connection& connection) {
  auto emptied = connection.rows("PRAGMA wal_checkpoint(TRUNCATE)");
  if (!emptied) {
    return passed_on(emptied);
  }
  if (!emptied->empty() && number_in(emptied->front(), 0) != 0) {
    return refuse("erased_in_use", "",
                  SHIMWRIGHT_TEXT("store",
                                  "This is erased, but its bytes stay in the log while another program reads the "
                                  "store; close that and erase once more."));
  }
  return {};
}

Result<std::vector<std::string>> texts_of_vehicle(Connection& connection, const std::string& vehicle_key) {
  auto known = connection.value("SELECT 1 FROM job WHERE vehicle = ?", {vehicle_key});
  if (!known) {
    return passed_on(known);
  }
  if (*known == Value()) {
    return refuse("unknown_vehicle", vehicle_key,
                  SHIMWRIGHT_TEXT("store", "There is no job of this vehicle in the store; look at its number again."));
  }
  auto rows = connection.rows(
      "SELECT private_text.id FROM job JOIN private_text ON private_text.id IN (job.plate, job.customer_reference, "
      "job.complaint) WHERE job.vehicle = ? AND private_text.text IS NOT NULL ORDER BY private_text.id",
      {vehicle_key});
  if (!rows) {
    return passed_on(rows);
  }
  std::vector<std::string> ids;
  for (const Row& row : *rows) {
    ids.push_back(text_in(row, 0));
  }
  return ids;
}

}  // namespace

Result<std::int64_t> Store::erase_vehicle_texts(const std::string& vehicle_key, const By& by) {
  if (auto may = may_write(); !may) {
    return passed_on(may);
  }
  auto transaction = Transaction::begin(*connection_);
  if (!transaction) {
    return passed_on(transaction);
  }
  auto ids = texts_of_vehicle(*connection_, vehicle_key);
  if (!ids) {
    return passed_on(ids);
  }
  for (const std::string& id : *ids) {
    if (auto erased = erase_within(*connection_, id, by); !erased) {
      return passed_on(erased);
    }
  }
  if (auto committed = transaction->commit(); !committed) {
    return passed_on(committed);
  }
  if (auto emptied = empty_log(*connection_); !emptied) {
    return passed_on(emptied);
  }
  return static_cast<std::int64_t>(ids->size());
}

Result<void> Store::erase_private_text(const std::string& id, const By& by) {
  if (auto may = may_write(); !may) {
    return may;
  }
  auto transaction = Transaction::begin(*connection_);
  if (!transaction) {
    return passed_on(transaction);
  }
  if (auto erased = erase_within(*connection_, id, by); !erased) {
    return erased;
  }
  if (auto committed = transaction->commit(); !committed) {
    return committed;
  }
  return empty_log(*connection_);
}

std::vector<Row> erased_here(const QString& store_path) {
  auto connection = Connection::open(store_path, Access::look);
  auto rows =
      connection ? (*connection)->rows("SELECT id FROM private_text WHERE text IS NULL") : Result<std::vector<Row>>();
  return rows ? std::move(*rows) : std::vector<Row>();
}

Result<std::int64_t> erase_again(Connection& copy, const std::vector<Row>& ids, std::int64_t now_ms) {
  auto transaction = Transaction::begin(copy);
  if (!transaction) {
    return passed_on(transaction);
  }
  std::int64_t erased = 0;
  for (const Row& row : ids) {
    const std::string id = text_in(row, 0);
    auto kept = copy.value("SELECT 1 FROM private_text WHERE id = ? AND text IS NOT NULL", {id});
    if (!kept) {
      return passed_on(kept);
    }
    if (*kept == Value()) {
      continue;
    }
    if (auto gone = erase_within(copy, id, By{"", {now_ms, 0, false}}); !gone) {
      return passed_on(gone);
    }
    ++erased;
  }
  auto committed = transaction->commit();
  return committed ? Result<std::int64_t>(erased) : passed_on(committed);
}

}  // namespace shimwright::store
