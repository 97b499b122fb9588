#pragma once
// What a run carries with all buildings fed through the one at its end. Nothing is allowed for
// their not drawing their most at the same time. On three lines each single-phase run goes to the
// line that then has least, the largest first. Page: docs/methods/tree.md.

#include "demand/scenario.h"
#include "study/setting.h"

namespace toft::study {

template <class L>
struct PathLoad {
    demand::BuildingDemand<L> load;
    ValueIn<L, Amperes> sent{};  ///< out on one line, by solar and batteries
    bool fed_through = false;    ///< further buildings count in it
};

/// Of the setting's run, with its phases.
template <class L>
PathLoad<L> path_load(L& ledger, const Setting<L>& setting);

/// Of the most loaded line of the house, all runs that leave it together.
template <class L>
ValueIn<L, Amperes> load_of_all_runs(L& ledger, const Setting<L>& setting);

/// Which line of a three-phase intake each run of one phase is reckoned to take, by its place in
/// the job, 1 to 3; 0 for runs on three and where the intake has one phase.
std::vector<int> lines_of_runs(const Setting<Silent>& setting);

/// The phases of a run of a job of several: what it states, else three where something behind it
/// needs them, else one.
int phases_in_tree(const site::Job& job, std::size_t run);

}  // namespace toft::study
