#include "register_put.h"

#include "register_history.h"
#include "shimwright/sheet/names.h"
#include "shimwright/store/ids.h"

namespace shimwright::store {

namespace {

/// In bytes: more than any name, address or source note of a register needs.
constexpr std::size_t longest_text = 1000;

Result<void> check_lengths(const RegisterItem& item) {
  const nlohmann::json texts = item.body.flatten();
  for (const auto& [place, value] : texts.items()) {
    if (value.is_string() && value.get_ref<const std::string&>().size() > longest_text) {
      return refuse("text_too_long", item.table + place,
                    SHIMWRIGHT_TEXT("store", "This is longer than a register keeps: say it in fewer words."));
    }
  }
  return {};
}

}  // namespace

Result<void> put_item(Connection& connection, const RegisterItem& item, const By& by,
                      const std::function<Result<void>(Connection&)>& write) {
  if (!is_uuid(item.id)) {
    return refuse("bad_id", item.table + "/id",
                  SHIMWRIGHT_TEXT("store", "The id of this is not a UUID; report this fault."));
  }
  if (sheet::is_blank(item.name)) {
    return refuse("bad_item", item.table + "/name", SHIMWRIGHT_TEXT("store", "A name is needed; enter one."));
  }
  if (auto lengths = check_lengths(item); !lengths) {
    return lengths;
  }
  if (connection.looks_only()) {
    return refuse("look_only", "",
                  SHIMWRIGHT_TEXT("store", "The store can only be looked at here; nothing was saved."));
  }
  auto transaction = Transaction::begin(connection);
  if (!transaction) {
    return passed_on(transaction);
  }
  if (auto written = write(connection); !written) {
    return written;
  }
  if (auto added = add_change(connection, item.table, item.id, item.body, by); !added) {
    return added;
  }
  return transaction->commit();
}

Result<void> check_date(const std::string& place, const std::optional<std::string>& day) {
  if (day && !job::is_date(*day)) {
    return refuse("bad_date", place,
                  SHIMWRIGHT_TEXT("store", "“{0}” is no date: write year-month-day, as in 2026-11-30."), {*day});
  }
  return {};
}

Result<void> check_least(const std::string& place, std::int64_t amount, std::int64_t least) {
  if (amount < least) {
    return refuse("bad_amount", place,
                  SHIMWRIGHT_TEXT("store", "This cannot be so small: look at it and enter it again."));
  }
  if (amount > most_amount) {
    return refuse("bad_amount", place,
                  SHIMWRIGHT_TEXT("store", "This cannot be so large: look at it and enter it again."));
  }
  return {};
}

}  // namespace shimwright::store
