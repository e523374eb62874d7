#include "chain_heads.h"

#include "shimwright/record/hash.h"
#include "shimwright/store/store.h"

namespace shimwright::store {

std::string list_hash(const std::string& before, std::int64_t position, const std::string& job, std::int64_t seq,
                      const std::string& hash) {
  return record::sha256_hex("shimwright.heads.1\n" + before + "\n" + std::to_string(position) + "\n" + job + "\n" +
                            std::to_string(seq) + "\n" + hash);
}

Result<HeadsEnd> end_of_heads(Connection& connection) {
  auto last = connection.rows("SELECT position, list_hash FROM chain_head ORDER BY position DESC LIMIT 1");
  if (!last) {
    return passed_on(last);
  }
  return last->empty() ? HeadsEnd() : HeadsEnd{number_in(last->front(), 0), text_in(last->front(), 1)};
}

Result<void> add_head(Connection& connection, const std::string& job, std::int64_t seq, const std::string& hash) {
  auto end = end_of_heads(connection);
  if (!end) {
    return passed_on(end);
  }
  const std::int64_t position = end->position + 1;
  return connection.execute(
      "INSERT INTO chain_head (position, job, seq, hash, list_hash) VALUES (?, ?, ?, ?, ?)",
      {number_value(position), job, number_value(seq), hash, list_hash(end->list_hash, position, job, seq, hash)});
}

Result<bool> heads_hold(Connection& connection, const HeadsEnd& end) {
  if (end == HeadsEnd()) {
    return true;
  }
  auto found = connection.value("SELECT list_hash FROM chain_head WHERE position = ?", {number_value(end.position)});
  if (!found) {
    return passed_on(found);
  }
  return *found == Value(end.list_hash);
}

Result<bool> heads_go_on(Connection& connection, const HeadsEnd& from, const std::string& job, std::int64_t seq,
                         const std::string& hash) {
  constexpr std::int64_t in_one_go = 500;
  HeadsEnd end = from;
  bool ends_there = false;
  bool more = true;
  while (more) {
    auto rows = connection.rows(
        "SELECT position, job, seq, hash, list_hash FROM chain_head WHERE position > ? ORDER BY position LIMIT ?",
        {number_value(end.position), number_value(in_one_go)});
    if (!rows) {
      return passed_on(rows);
    }
    for (const Row& row : *rows) {
      const std::int64_t position = end.position + 1;
      const std::string whose = text_in(row, 1);
      const std::string next = list_hash(end.list_hash, position, whose, number_in(row, 2), text_in(row, 3));
      if (number_in(row, 0) != position || text_in(row, 4) != next) {
        return false;
      }
      ends_there = whose == job ? number_in(row, 2) == seq && text_in(row, 3) == hash : ends_there;
      end = {position, next};
    }
    more = static_cast<std::int64_t>(rows->size()) == in_one_go;
  }
  return ends_there;
}

Result<HeadsEnd> Store::heads_end() const {
  return end_of_heads(*connection_);
}

Result<bool> Store::holds_end(const HeadsEnd& end) const {
  return heads_hold(*connection_, end);
}

}  // namespace shimwright::store
