#pragma once

#include <utility>
#include <vector>

#include <QByteArray>

#include "ui_bench.h"

namespace shimwright::test {

/// An earlier job on the vehicle of `02-bearing-not-home`, finished, in which the pack was fitted that is found there.
/// Gives its id.
inline std::string fit_the_pack_before(UiBench& bench) {
  return bench.go_through("01-smooth-day", {{"\"2040\"", "\"1588\""},
                                            {"TESTVN006MA021188", "TESTVN009TA030417"},
                                            {"2026-11-20T", "2025-03-03T"},
                                            {"\"98640\"", "\"88150\""},
                                            {"7-003905", "7-004417"},
                                            {"26-1140", "22-0931"}});
}

}  // namespace shimwright::test
