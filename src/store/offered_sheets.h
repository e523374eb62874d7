#pragma once

/// The issues of a table of sheets that are offered for new jobs, to stand after FROM: those that somebody here
/// entered. An issue that only came with a job has its hash behind its name, on a line of its own (arrival.h); once it
/// is entered here as well, it has a line of history, and its name is read without the hash.
// NOLINTNEXTLINE(cppcoreguidelines-macro-usage): the parts of a fixed statement are joined before the program runs.
#define SHIMWRIGHT_OFFERED(table)                                                                      \
  "(SELECT hash, id, CASE instr(name, char(10)) WHEN 0 THEN name ELSE substr(name, 1, instr(name, "    \
  "char(10)) - 1) END AS name, issue, json, added_at_ms FROM " table                                   \
  " WHERE instr(name, char(10)) = 0 OR EXISTS (SELECT 1 FROM register_change WHERE register = '" table \
  "' AND item = hash))"
