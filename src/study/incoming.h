#pragma once
// What a run finds at the board it is fed from where that is not the house's: what the runs before
// it have left of the supply. Figures, not working: theirs stands with the runs before.
// Page: docs/methods/tree.md.

#include "base/units.h"
#include "site/words.h"
#include "study/scheme.h"

#include <optional>
#include <vector>

namespace toft::site {
struct Job;
struct Building;
}  // namespace toft::site

namespace toft::study {

template <class L>
struct Setting;
template <class L>
struct Figures;

struct Incoming {
    site::Earthing system = site::Earthing::tn_c_s;  ///< TT behind a building's own electrode
    bool island = false;  ///< the earth there is a building's own electrode, not the supply's
    int phases = 1;       ///< at that board
    double drop = 0;      ///< per cent of U0, lost up to there
    /// Earth fault loop and line-neutral loop there, the largest: conductors at working
    /// temperature, and as hot as a fault may leave them.
    Ohms ze_working, ze_hot, zn_working, zn_hot;
    Ohms zl_hot;                             ///< of one line alone; three phases only
    Ohms ze_least, zn_least, zl_least;       ///< the smallest
    Ohms ra_most, ra_least;                  ///< the electrode that its earth hangs on (TT)
    Ohms runs;                               ///< line and neutral of the runs before, working
    const tables::Device* device = nullptr;  ///< at the head of the run that feeds the board
    std::optional<HeadResidual> residual;    ///< the nearest in front of the board
};

/// What that run leaves at the board of its building. Needs its figures up to Stage::current.
Incoming left_at_board(const Setting<Silent>& setting, const RunScheme& scheme,
                       const Figures<Silent>& figures);

/// Buildings fed through `building`, at any depth, nearest first; not itself.
std::vector<const site::Building*> fed_through(const site::Job& job,
                                               const site::Building& building);

}  // namespace toft::study
