#pragma once
// How open facts are read. A fact that the survey leaves open, or states as an assumed range, is
// judged at its worse end; other corners tell whether the answer hangs on it.

#include "base/citation.h"
#include "site/fact.h"

#include <string>
#include <utility>
#include <vector>

namespace toft::study {

/// Which end of an open range serves: for each rule the worse, for each rule the better, or one and
/// the same figure everywhere.
enum class End { worse, better, low, high };

/// A part of an open fact's range, in the unit that its OpenFact names.
struct Part {
    std::string pointer;
    double low = 0;
    double high = 0;
};

/// All open facts at one end, but for some named by pointer; some known to lie in a part of their
/// range only.
struct Corner {
    End all = End::worse;
    std::vector<std::pair<std::string, End>> except;
    std::vector<Part> within;

    End at(const std::string& pointer) const {
        for (const auto& [p, end] : except) {
            if (p == pointer) return end;
        }
        return all;
    }

    /// Nothing is taken for granted of the fact: neither a kinder end nor a part of its range.
    bool leaves_open(const std::string& pointer) const {
        return at(pointer) == End::worse && !part_of(pointer);
    }

    /// The part that the fact is known to lie in; null for its whole range.
    const Part* part_of(const std::string& pointer) const {
        for (const Part& part : within) {
            if (part.pointer == pointer) return &part;
        }
        return nullptr;
    }
};

/// A fact with a range: where it stands in the job, the range, and whose range it is.
struct OpenFact {
    std::string pointer;
    std::string says;  ///< what it is, in words
    double low = 0;
    double high = 0;
    std::string unit;
    bool stated = false;                 ///< the survey gave the range; otherwise the rulebook did
    const Citation* citation = nullptr;  ///< of the rulebook's range
};

/// The figures to use where a larger value is worse and where a smaller one is.
template <class Q>
struct Bounds {
    Q most{};
    Q least{};
};

template <class Q>
Bounds<Q> at_end(End end, Q low, Q high) {
    switch (end) {
        case End::better:
            return {low, high};
        case End::low:
            return {low, low};
        case End::high:
            return {high, high};
        case End::worse:
            break;
    }
    return {high, low};
}

}  // namespace toft::study
