#pragma once
// Parts of the diagram drawn on a ladder of their own, and conditions for choosing schemes.

#include "diagram/ladder.h"
#include "picture/looking.h"
#include "picture/stage.h"
#include "symbol/shapes.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace toft::diagram {

using picture::count_kind;
using picture::Example;
using picture::example;
using picture::find_kind;
using picture::says;

/// What `draw` puts on an empty sheet.
template <class Draw>
drawing::Items drawn(Draw draw, double width = paper_wide) {
    Ladder ladder(columns_for(width), 0);
    draw(ladder);
    return ladder.take();
}

/// All example jobs, and those of cables and supplies that no example has.
inline std::vector<std::string> all_examples() {
    std::vector<std::string> names = support::example_names();
    names.push_back("own-rod-greenhouse");
    for (const std::string& name : picture::drawn_job_names()) names.push_back(name);
    return names;
}

/// Calls `check(example, scheme)` for each scheme of each example; returns how many there were.
template <class Check>
int each_scheme(Check check) {
    int count = 0;
    for (const std::string& name : all_examples()) {
        const Example& one = example(name);
        for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
            SCOPED_TRACE(name + " " + scheme.key);
            check(one, scheme);
            ++count;
        }
    }
    return count;
}

}  // namespace toft::diagram
