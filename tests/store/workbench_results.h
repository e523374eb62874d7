#pragma once

#include <utility>

#include <catch2/catch.hpp>

#include "shimwright/quantity/error.h"

namespace shimwright::store::test {

template <class Content>
Content got(Result<Content> result) {
  if (!result) {
    FAIL(result.error().code << ": " << result.error().in_english());
  }
  return std::move(*result);
}

inline void went(const Result<void>& result) {
  if (!result) {
    FAIL(result.error().code << ": " << result.error().in_english());
  }
}

template <class Content>
std::string code_of(const Result<Content>& result) {
  return result ? std::string("no refusal") : result.error().code;
}

}  // namespace shimwright::store::test
