#pragma once
// The open facts of a job in words: what each does to the answer, what hangs on it, whether it is
// worth finding out and how. Page: docs/methods/unknowns.md.

#include "answer/answer.h"
#include "solve/run_solver.h"
#include "solve/tree_solver.h"

#include <functional>

namespace toft::answer {

/// Pointers of what nobody said and no range can stand for (the house's electrode, what the house
/// draws, how deep a cable lies), of all runs of a job as built: a rule that reads one is not
/// known, whatever is built. Page: docs/methods/open-facts.md.
std::vector<std::string> unsaid_of(const Question& question);

/// How solutions are told of, and what the first to hope for hangs on where none is sound.
struct Telling {
    /// Of a piece of a fact's range; `first` is the first sound one of it, null for that itself.
    std::function<std::string(const solve::Solution&, const solve::Solution* first)> words;
    std::vector<std::string> hopes_on;
    std::vector<std::string> unsaid;  ///< without which a rule is not known, whatever is built
};

/// All open facts, those first that are most worth finding out.
std::vector<UnknownAnswer> unknowns_told(const solve::Solver& solver, const Telling& telling);

/// Those of a job of one run; `found` is the search as things stand.
std::vector<UnknownAnswer> unknowns_of(const solve::RunSolver& solver, const search::Result& found);

/// All open facts of all runs, each once, those first that are most worth finding out.
std::vector<UnknownAnswer> unknowns_of_tree(const Question& question,
                                            const solve::TreeSolver& solver);

/// On one sentence what the open facts of the whole may come to, without looking at each.
std::string open_in_short(const solve::TreeSolver& solver);

/// None of the open facts can matter: the whole costs the same with all of them well.
bool none_matters(const solve::TreeSolver& solver);

/// What to go and find out, without the design.
struct AskAnswer {
    std::string job;
    bool sound = false;
    bool conditional = false;  ///< not sound, but may be once facts are known
    std::string stands;        ///< the recommended scheme on one line; empty where there is none
    double total = 0;          ///< its price, with tax
    bool proved = true;        ///< of several runs: each solution was proved to be the cheapest
    bool stopped = false;      ///< by who asked: some facts were not looked at
    std::vector<UnknownAnswer> unknowns;
    std::vector<std::string> assumed;
    std::vector<std::string> cautions;
};

/// Searches the (valid) job and looks at its open facts.
AskAnswer ask(const Question& question);

}  // namespace toft::answer
