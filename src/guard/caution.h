#pragma once
// What is to be said against the residual current protection of a scheme, in fixed words, the
// heaviest first. Page: docs/methods/residual-current.md.

#include "guard/chain.h"

namespace toft::guard {

struct Cautions {
    std::array<const char*, 6> says{};
    std::size_t count = 0;
};

Cautions cautions_of(const View& view, const Chain& chain);

}  // namespace toft::guard
