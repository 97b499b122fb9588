#pragma once
// Jobs where a cable lies already.

#include "support/jobs.h"
#include "tables/catalogue.h"

namespace toft::support {

/// That cable, found sound, with 200 MΩ and the resistance its length gives.
inline site::Existing sound_cable(const tables::Cable& cable, double length_m) {
    site::Existing e;
    e.family = tables::family_word(cable.family);
    e.cores = cable.cores;
    e.live = cable.section;
    e.condition = site::Condition::sound;
    e.insulation = measured(ohms(200e6));
    const double line = cable.r20.value.number();
    const double armour = cable.armour_r20.value.number();
    const double core = cable.cpc_r20.value.number();
    const bool both = armour > 0 && core > 0;
    const double path = both ? armour * core / (armour + core) : armour + core;
    e.r1_r2 = measured(ohms((line + path) * length_m));
    return e;
}

/// The job's first run with that cable, sound and reading well, where its legs name no other.
inline site::Job with_cable_there(site::Job job, const tables::Cable& cable) {
    double length = 0;
    for (site::Leg& leg : job.runs[0].legs) {
        leg.family.clear();
        leg.cores.reset();
        leg.live.reset();
        length += leg.length.low.number();
    }
    job.runs[0].existing = sound_cable(cable, length);
    return job;
}

/// The same fed today from a way of the board by a type B breaker.
inline site::Job fed_from_a_way(site::Job job, double rating) {
    site::Existing& e = *job.runs[0].existing;
    e.device = site::NamedDevice{"BS EN 60898", "B", amperes(rating)};
    e.fed_from = site::FedFrom::spare_way;
    return job;
}

}  // namespace toft::support
