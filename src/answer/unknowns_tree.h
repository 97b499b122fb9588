#pragma once
// The open facts of a job of several runs in words. Page: docs/methods/unknowns.md.

#include "answer/unknowns.h"
#include "solve/tree_solver.h"

namespace toft::answer {

/// All open facts of all runs, each once, those first that are most worth finding out.
std::vector<UnknownAnswer> unknowns_of_tree(const Question& question,
                                            const solve::TreeSolver& solver);

/// Solves the (valid) job of several runs and looks at its open facts.
AskAnswer ask_tree(const Question& question);

/// On one sentence what the open facts of the whole may come to, without looking at each.
std::string open_in_short(const solve::TreeSolver& solver);

/// None of the open facts can matter: the whole costs the same with all of them well.
bool none_matters(const solve::TreeSolver& solver);

}  // namespace toft::answer
