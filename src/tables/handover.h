#pragma once
// The tests of a new run, in their order: what, how, and where it is asked.

#include "base/citation.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

struct TestStep {
    std::string key;   ///< one word
    bool dead = true;  ///< made with everything isolated
    std::string what;
    std::string how;
    std::string clause;
    const Citation* citation = nullptr;
};

}  // namespace toft::tables
