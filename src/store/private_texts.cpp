#include "connection.h"
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

}  // namespace

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
  // Its bytes still stand in the log until that is emptied.
  return connection_->run_script("PRAGMA wal_checkpoint(TRUNCATE)");
}

}  // namespace shimwright::store
