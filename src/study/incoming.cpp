#include "study/incoming.h"

#include "study/figures.h"

#include <algorithm>

namespace toft::study {

namespace {

/// The loop that drives so much current, by the voltage factor it was reckoned with.
Ohms loop_of(double c, Volts u0, Amperes current) { return c * u0 / current; }

void loops(const Setting<Silent>& s, const RunScheme& scheme, const Figures<Silent>& f,
           Incoming& in) {
    const auto& at = f.at[scheme.stretches - 1];
    const Volts u0 = s.supply.u0;
    in.zn_working = loop_of(s.supply.c_min, u0, at.working.neutral);
    in.zn_hot = loop_of(s.supply.c_min, u0, at.hot.neutral);
    in.zn_least = loop_of(s.supply.c_max, u0, f.ln_far);
    in.ze_working = loop_of(s.supply.c_min, u0, at.working.earth);
    in.ze_hot = loop_of(s.supply.c_min, u0, at.hot.earth);
    in.ze_least = loop_of(s.supply.c_max, u0, f.le_far);
    if (scheme.phases == 1) return;
    // Line to line is √3/2 of three lines together.
    in.zl_hot = loop_of(s.supply.c_min, u0, f.ll_least * (2 / root(3.0)));
    in.zl_least = loop_of(s.supply.c_max, u0, f.lll_far);
}

/// Behind a building's own electrode earth faults return through the ground, as on TT.
void onto_own_electrode(const Setting<Silent>& s, Incoming& in) {
    in.system = site::Earthing::tt;
    in.island = true;
    in.ra_most = s.building.ra_most;
    in.ra_least = ohms(0);
    in.ze_working = s.building.ra_most + s.catalogue->limits.declared_tt_source.value;
    in.ze_hot = in.ze_working;
    in.ze_least = in.zn_least;  // no earth fault drives more than line to neutral
}

}  // namespace

Incoming left_at_board(const Setting<Silent>& s, const RunScheme& scheme,
                       const Figures<Silent>& f) {
    Incoming in;
    in.system = s.supply.system;
    in.island = s.supply.island;
    in.phases = scheme.phases;
    in.drop = s.drop_before + f.drop_percent;
    in.ra_most = s.supply.ra_most;
    in.ra_least = s.supply.ra_least;
    loops(s, scheme, f, in);
    if (scheme.earthing == BuildingEarthing::own_electrode) onto_own_electrode(s, in);
    in.runs = in.zn_working - s.supply.zn_origin;
    in.device = scheme.device;
    in.residual = residual_at_head(scheme);
    if (!in.residual) in.residual = s.house.residual_before;
    return in;
}

std::vector<const site::Building*> fed_through(const site::Job& job,
                                               const site::Building& building) {
    std::vector<const site::Building*> all{&building};
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (const site::Run& run : job.runs) {
            if (run.from != all[i]->id) continue;
            const site::Building* next = site::find_building(job, run.to);
            if (std::find(all.begin(), all.end(), next) == all.end()) all.push_back(next);
        }
    }
    all.erase(all.begin());
    return all;
}

}  // namespace toft::study
