#pragma once
// What will be measured when the work is tested: what to expect where, and how far it may go.
// Page: docs/papers/test-sheet.md.

#include "paper/subject.h"

namespace toft::paper {

/// A reading to be taken; as words, and as figures where it has any.
struct Expected {
    std::string where;
    std::string expect;
    std::string limit;
    std::string unit = {};             ///< of the figures; empty where it is no figure
    std::optional<double> value = {};  ///< expected, or the most that is
    std::optional<double> bound = {};  ///< what a reading must keep to
    bool at_least = false;             ///< … from above
};

using Expectations = std::vector<Expected>;

/// Of one step of the tests, over the whole place; empty where it does not apply.
Expectations expected_of(const Subject& subject, const tables::TestStep& step);

/// What that step is made with: "insulation tester".
std::string instrument_of(const tables::TestStep& step);

}  // namespace toft::paper
