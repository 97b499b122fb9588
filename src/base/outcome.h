#pragma once
// Errors as values. A Fault says what is wrong, where, and what would be right; an Outcome is a
// result or all the faults found, never just the first.

#include <tl/expected.hpp>

#include <string>
#include <vector>

namespace toft {

/// One thing wrong with an input.
struct Fault {
    std::string code;                  ///< short, closed list: `unknown-key`, `out-of-range`, …
    std::string pointer;               ///< JSON pointer or table place; empty for the whole input
    std::string says;                  ///< a sentence for a person, with the remedy
    std::string nearest;               ///< what was probably meant; may be empty
    std::vector<std::string> allowed;  ///< what would be accepted; may be empty
};

using Faults = std::vector<Fault>;

/// A value, or at least one fault.
template <class T>
using Outcome = tl::expected<T, Faults>;

inline tl::unexpected<Faults> failed(Faults faults) {
    return tl::make_unexpected(std::move(faults));
}

inline tl::unexpected<Faults> failed(Fault fault) {
    return tl::make_unexpected(Faults{std::move(fault)});
}

}  // namespace toft
