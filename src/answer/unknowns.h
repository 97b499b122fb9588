#pragma once
// The open facts of a job in words: what each does to the answer, what hangs on it, whether it is
// worth finding out and how. Page: docs/methods/unknowns.md.

#include "answer/answer.h"
#include "solve/solver.h"

namespace toft::answer {

/// All open facts, those first that are most worth finding out; `found` is the search as things
/// stand.
std::vector<UnknownAnswer> unknowns_of(const solve::Solver& solver, const search::Result& found);

/// What to go and find out, without the design.
struct AskAnswer {
    std::string job;
    bool sound = false;
    bool conditional = false;  ///< not sound, but may be once facts are known
    std::string stands;        ///< the recommended scheme on one line; empty where there is none
    double total = 0;          ///< its price, with tax
    std::vector<UnknownAnswer> unknowns;
    std::vector<std::string> assumed;
    std::vector<std::string> cautions;
};

/// Searches the (valid) job and looks at its open facts.
AskAnswer ask(const Question& question);

}  // namespace toft::answer
