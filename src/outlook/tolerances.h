#pragma once
// A scheme while the figures of the survey are other than stated, as every face of the program
// shows it. Page: docs/methods/tolerance.md.

#include "answer/answer.h"
#include "tolerance/tolerance.h"

namespace toft::outlook {

struct ToleranceAnswer {
    std::string job;
    std::string run;  ///< id
    std::string scheme_key;
    std::string scheme;   ///< on one line
    bool behind = false;  ///< fed behind other runs, whose figures stay as they are
    tolerance::Tolerance found;
    std::vector<std::string> notes;  ///< what the figures do and do not say
    std::vector<std::string> cautions;
};

/// Looks at `scheme` on the question's run.
ToleranceAnswer tolerances(const answer::Question& question, const study::RunScheme& scheme,
                           const tolerance::Wish& wish);

/// A chance in words: "always" for a rule that holds at its worst, "97.1 %", "more than 99.9 %",
/// "less than 0.1 %", "never".
std::string chance_words(const tolerance::Share& share);

/// "31.2 m", "0.35 Ω", "1.2 times": a figure of the survey with its unit.
std::string figure_words(double value, const std::string& unit);

}  // namespace toft::outlook
