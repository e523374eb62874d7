#pragma once

#include <memory>
#include <optional>

#include "connection.h"
#include "schema.h"
#include "shimwright/store/store.h"

/// The steps of opening a store, each by itself.
namespace shimwright::store {

/// Codes: `path_not_absolute`.
[[nodiscard]] Result<void> check_path(const std::string& path);

/// Whether what lies there can be a whole SQLite file: its first bytes, and as many pages as it says. An empty file
/// passes. Read through the connection: to open and close a store's file beside it gives up the locks SQLite has on it.
/// Codes: `not_a_store`, `store_damaged`, `cannot_open`.
[[nodiscard]] Result<void> check_file(const Connection& connection);

/// A connection to a file that passed check_file().
[[nodiscard]] Result<std::unique_ptr<Connection>> connect_checked(const QString& path, Access access);

enum class Kinship {
  empty,  ///< nothing in it yet
  ours,
  newer,  ///< ours, of a newer program
};

/// Whose file it is. Codes: `not_a_store`, those of database_error().
[[nodiscard]] Result<Kinship> kinship_of(Connection& connection);

/// Every commit reaches the disk before it is acknowledged: write-ahead log, synchronous FULL, both read back.
/// Code: `not_durable`.
[[nodiscard]] Result<void> make_durable(Connection& connection);

/// Takes the steps a store lacks; an older one is copied beside itself before, and the copy found whole.
[[nodiscard]] Result<void> bring_up_to_date(Connection& connection, Kinship kinship,
                                            const std::vector<SchemaStep>& steps);

/// Store::open() on a file system of this name: whether it lies on another machine is asked of the name.
[[nodiscard]] Result<std::unique_ptr<Store>> open_on(const std::string& file_system, const std::string& path,
                                                     const Opening& opening);

/// A connection that writes in a store of today which this program has open for writing already. Code: `look_only`.
[[nodiscard]] Result<std::unique_ptr<Connection>> connect_beside(const QString& path);

/// Gives a store its id, where it has none yet.
[[nodiscard]] Result<void> name_store(Connection& connection, std::int64_t now_ms);

}  // namespace shimwright::store
