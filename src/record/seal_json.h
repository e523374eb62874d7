#pragma once

#include <cstdint>
#include <string>

#include <nlohmann/json.hpp>

#include "shimwright/record/seal.h"

/// Statements as JSON, and members of JSON from outside taken leniently: who reads so compares afterwards what he would
/// have written.
namespace shimwright::record {

[[nodiscard]] nlohmann::json json_of(const SealStatement& statement);
[[nodiscard]] nlohmann::json json_of(const AddendumStatement& statement);
[[nodiscard]] SealStatement seal_statement_in(const nlohmann::json& object);
[[nodiscard]] AddendumStatement addendum_statement_in(const nlohmann::json& object);

/// Null where there is none.
[[nodiscard]] const nlohmann::json& member(const nlohmann::json& object, const char* key);
/// Empty where it is no text.
[[nodiscard]] std::string text_in(const nlohmann::json& object, const char* key);
/// 0 where it is no whole number.
[[nodiscard]] std::int64_t number_in(const nlohmann::json& object, const char* key);
[[nodiscard]] nlohmann::json json_of(const job::Moment& moment);
[[nodiscard]] job::Moment moment_in(const nlohmann::json& object);
/// Canonical bytes; empty for what is not canonical.
[[nodiscard]] std::string canonical_bytes(const nlohmann::json& value);
/// What the bytes say; null for what is no JSON, or nested deeper than ours is.
[[nodiscard]] nlohmann::json parsed(std::string_view bytes);

}  // namespace shimwright::record
