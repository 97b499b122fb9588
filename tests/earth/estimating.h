#pragma once
// Closed forms worked out at both depths, beside the same electrodes as fields of wires.

#include "base/ledger.h"
#include "earth/estimate.h"
#include "support/grounds.h"
#include "support/working.h"

#include <gtest/gtest.h>

namespace toft::earth {

using namespace field;

/// A figure that the test states.
template <class L, class T>
ValueIn<L, T> given(L& ledger, const char* symbol, T value) {
    return ledger.stated({symbol, ""}, value, "survey");
}

/// What `form` (of any ledger) answers, once its written working has been found to hold.
template <class Form>
double worked(const Form& form) {
    Silent silent;
    Recording recording;
    const double figure = form(silent).number();
    EXPECT_EQ(form(recording).value.number(), figure);
    for (const std::string& wrong : support::wrong_lines(recording.lines())) {
        ADD_FAILURE() << wrong;
    }
    return figure;
}

}  // namespace toft::earth
