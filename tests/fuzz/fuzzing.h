#pragma once
// What the programs of this folder share.

#include "codec/answer.h"
#include "tables/embedded.h"

#include <nlohmann/json.hpp>

#include <cstdio>
#include <cstdlib>
#include <string>

namespace toft::fuzz {

/// Stops the fuzzer, which then keeps the input.
inline void require(bool holds, const char* what) {
    if (holds) return;
    std::fprintf(stderr, "does not hold: %s\n", what);
    std::abort();
}

inline const tables::Catalogue& catalogue() {
    static const auto loaded = tables::load_catalogue(tables::embedded_files());
    require(loaded.has_value(), "the tables load");
    return *loaded;
}

inline bool is_json(const std::string& text) {
    return nlohmann::json::parse(text, nullptr, false).is_object();
}

}  // namespace toft::fuzz
